package strickle.web;

import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Which module of the page needs which, so that a browser can be told of all of them at once. The
 * import map gives names to libraries (HTML Living Standard, 8.1.6.2).
 */
final class Imports {

  // What stands after "from" or "import" in a module: not in a call, which is for later.
  private static final Pattern SPECIFIER =
      Pattern.compile(
          "(?:^|[;}\\n])\\s*(?:import|export)\\s*(?:[\\w*{},$\\s]*?\\bfrom\\s*)?[\"']([^\"'\\n]+)[\"']");

  private static final Pattern ENTRY = Pattern.compile("\"([^\"]+)\"\\s*:\\s*\"([^\"]+)\"");

  private final Map<String, PageFile> files;
  private final Map<String, String> names;

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

  /** The names of all modules that one needs, itself first; what is not there is left out. */
  Set<String> closure(String name) {
    Set<String> found = new LinkedHashSet<>();
    add(name, found);
    return found;
  }

  private void add(String name, Set<String> found) {
    PageFile file = files.get(name);
    if (file != null && found.add(name)) {
      needed(file).forEach(next -> add(next, found));
    }
  }

  /** The names of what one module asks for itself; a name that nothing stands for, as it is. */
  Set<String> needed(PageFile file) {
    Matcher specifier = SPECIFIER.matcher(new String(file.bytes(), StandardCharsets.UTF_8));
    Set<String> needed = new LinkedHashSet<>();
    while (specifier.find()) {
      needed.add(resolve(file.name(), specifier.group(1)));
    }
    return needed;
  }

  private String resolve(String from, String specifier) {
    if (specifier.startsWith(".")) {
      return URI.create("/" + from).resolve(specifier).getPath().substring(1);
    }
    return Optional.ofNullable(names.get(specifier))
        .or(() -> inFolder(specifier))
        .orElse(specifier);
  }

  private Optional<String> inFolder(String specifier) {
    return names.keySet().stream()
        .filter(folder -> folder.endsWith("/") && specifier.startsWith(folder))
        .max(Comparator.comparingInt(String::length))
        .map(folder -> names.get(folder) + specifier.substring(folder.length()));
  }
}
