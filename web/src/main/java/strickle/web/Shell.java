package strickle.web;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Makes the document of a room out of {@code index.html}: the place where the files stand is put
 * in, and every module that the room needs is named at once.
 */
final class Shell {

  private static final String MAIN = "main.js";
  private static final String PLACE = "{page}";
  private static final String PRELOADS = "<!-- modules -->";
  private static final Pattern IMPORT_MAP =
      Pattern.compile("<script type=\"importmap\">(.*?)</script>", Pattern.DOTALL);

  private final String template;
  private final String place;
  private final Map<String, PageFile> files;
  private final Imports imports;

  /**
   * A shell.
   *
   * @param files all files of the page by name
   * @param place where they stand, as {@code /page/0123456789abcdef/}
   */
  Shell(Map<String, PageFile> files, String place) {
    this.files = files;
    this.place = place;
    byte[] index = files.get("index.html").bytes();
    this.template = new String(index, StandardCharsets.UTF_8).replace(PLACE, place);
    this.imports = new Imports(files, named());
  }

  private String importMap() {
    Matcher found = IMPORT_MAP.matcher(template);
    if (!found.find()) {
      throw new IllegalStateException("index.html has no import map");
    }
    return found.group(1);
  }

  /** What the import map names, to files and folders of the page. */
  Map<String, String> named() {
    return Imports.entries(importMap(), place);
  }

  /** What a module names itself. */
  Set<String> needed(PageFile module) {
    return imports.needed(module);
  }

  /** What the policy of its answer must let through: the import map, by its hash. */
  String inlinePrint() {
    return Prints.policy(importMap());
  }

  /**
   * The document of a room.
   *
   * @param room its name, or empty for none
   */
  PageFile document(String room) {
    Set<String> modules = new LinkedHashSet<>(imports.closure(MAIN));
    addIfThere(modules, "rooms/" + room + "/" + room + ".js");
    addIfThere(modules, "words/en/" + room + ".js");
    String links =
        modules.stream()
            .map(name -> "<link rel=\"modulepreload\" href=\"" + place + name + "\">")
            .collect(Collectors.joining("\n"));
    String text = template.replace(PRELOADS, links);
    return new PageFile("index.html", text.getBytes(StandardCharsets.UTF_8));
  }

  private void addIfThere(Set<String> modules, String name) {
    if (files.containsKey(name)) {
      modules.addAll(imports.closure(name));
    }
  }
}
