package strickle.web;

import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The modules of the page, and which of them needs which. The import map gives names to libraries
 * (HTML Living Standard, 8.1.6.2).
 */
final class Imports {

  private static final Pattern ENTRY = Pattern.compile("\"([^\"]+)\"\\s*:\\s*\"([^\"]+)\"");

  private final Map<String, PageFile> files;
  private final Map<String, String> names;
  private final Map<String, ModuleText> read = new HashMap<>();

  /**
   * The imports of some files.
   *
   * @param files by name
   * @param importMap the entries of the import map, to names of files or, ending in a slash,
   *     folders
   */
  Imports(Map<String, PageFile> files, Map<String, String> importMap) {
    this.files = files;
    this.names = importMap;
  }

  /** The entries of an import map's text, each address less what stands before the file's name. */
  static Map<String, String> entries(String importMap, String before) {
    Map<String, String> entries = new TreeMap<>();
    Matcher entry = ENTRY.matcher(importMap);
    while (entry.find()) {
      if (entry.group(2).startsWith(before)) {
        entries.put(entry.group(1), entry.group(2).substring(before.length()));
      }
    }
    return entries;
  }

  /** What a relative address in a file means, as a name of the page. */
  static String beside(String file, String address) {
    return URI.create("/" + file).resolve(address).getPath().substring(1);
  }

  /** Whether there is such a file. */
  boolean has(String name) {
    return files.containsKey(name);
  }

  /** The names of all files. */
  Set<String> names() {
    return files.keySet();
  }

  /**
   * A module, taken apart once.
   *
   * @throws IllegalStateException if it is not there or cannot be taken apart
   */
  ModuleText module(String name) {
    ModuleText known = read.get(name);
    if (known == null) {
      known = ModuleReader.read(name, text(name), specifier -> resolve(name, specifier));
      read.put(name, known);
    }
    return known;
  }

  private String text(String name) {
    return Optional.ofNullable(files.get(name))
        .map(file -> new String(file.bytes(), StandardCharsets.UTF_8))
        .orElseThrow(() -> new IllegalStateException(name + " is no file of the page"));
  }

  /**
   * All modules that one needs and itself, each behind those that it needs, as they are evaluated.
   *
   * @throws IllegalStateException if two of them need each other
   */
  Set<String> closure(String name) {
    Set<String> found = new LinkedHashSet<>();
    add(name, found, new LinkedHashSet<>());
    return found;
  }

  private void add(String name, Set<String> found, Set<String> above) {
    if (found.contains(name)) {
      return;
    }
    if (!above.add(name)) {
      throw new IllegalStateException(name + " needs itself, by way of " + above);
    }
    module(name).needed().forEach(next -> add(next, found, above));
    above.remove(name);
    found.add(name);
  }

  private String resolve(String from, String specifier) {
    if (specifier.startsWith(".")) {
      return beside(from, specifier);
    }
    return Optional.ofNullable(names.get(specifier))
        .or(() -> inFolder(specifier))
        .orElseThrow(
            () -> new IllegalStateException(from + " asks for " + specifier + ": nothing is it"));
  }

  private Optional<String> inFolder(String specifier) {
    return names.keySet().stream()
        .filter(folder -> folder.endsWith("/") && specifier.startsWith(folder))
        .max(Comparator.comparingInt(String::length))
        .map(folder -> names.get(folder) + specifier.substring(folder.length()));
  }
}
