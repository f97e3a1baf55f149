package strickle.web;

import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Puts the modules of the page together, so that a browser asks for two files instead of sixty:
 * what the page begins with or several rooms need in one, and what only one room needs in one for
 * each. No module is in two of them, since none may be evaluated twice.
 */
final class Packs {

  /** Where they stand within the page. */
  static final String FOLDER = "pack/";

  /** The one that the page begins with. */
  static final String CORE = FOLDER + "core.js";

  private static final String MAIN = "main.js";

  private final Imports imports;
  private final Map<String, Set<String>> ofRooms = new TreeMap<>();
  private final Set<String> core;

  /**
   * The packs of a page.
   *
   * @param imports its modules
   * @param rooms names of its rooms; one without a module gets no pack
   * @throws IllegalStateException if a module cannot be packed
   */
  Packs(Imports imports, Set<String> rooms) {
    this.imports = imports;
    this.core = new LinkedHashSet<>(imports.closure(MAIN));
    for (String room : rooms) {
      if (imports.has(moduleOf(room))) {
        ofRooms.put(room, imports.closure(moduleOf(room)));
      }
    }
    addShared();
    ofRooms.values().forEach(modules -> modules.removeAll(core));
    refuseWhatIsLeftOver();
  }

  /** The file of a room's pack. */
  static String of(String room) {
    return FOLDER + room + ".js";
  }

  /** The file of the module that is a room. */
  static String moduleOf(String room) {
    return "rooms/" + room + "/" + room + ".js";
  }

  // What two rooms need, with all that it needs itself: both need that as well.
  private void addShared() {
    Map<String, Integer> rooms = new HashMap<>();
    ofRooms
        .values()
        .forEach(modules -> modules.forEach(module -> rooms.merge(module, 1, Integer::sum)));
    ofRooms.values().stream()
        .flatMap(Set::stream)
        .filter(module -> rooms.get(module) > 1)
        .forEach(core::add);
  }

  // A module by itself that asked for one of a pack would get another one of the same.
  private void refuseWhatIsLeftOver() {
    Map<String, String> packed = packOfModules();
    imports.names().stream()
        .filter(name -> name.endsWith(".js") && !name.startsWith(Libraries.FOLDER))
        .filter(name -> !packed.containsKey(name) && !imports.module(name).needed().isEmpty())
        .findFirst()
        .ifPresent(
            name -> {
              throw new IllegalStateException(
                  name + " is in no pack, but asks for " + imports.module(name).needed());
            });
  }

  /** Which module lies in which pack. */
  Map<String, String> packOfModules() {
    Map<String, String> packs = new HashMap<>();
    core.forEach(module -> packs.put(module, CORE));
    ofRooms.forEach((room, modules) -> modules.forEach(module -> packs.put(module, of(room))));
    return packs;
  }

  /** Their files by name. */
  Map<String, PageFile> files() {
    PackText text = new PackText(imports);
    Map<String, PageFile> files = new TreeMap<>();
    add(files, CORE, text.core(core));
    ofRooms.forEach((room, modules) -> add(files, of(room), text.room(modules)));
    return files;
  }

  private static void add(Map<String, PageFile> files, String name, String text) {
    files.put(name, new PageFile(name, text.getBytes(StandardCharsets.UTF_8)));
  }
}
