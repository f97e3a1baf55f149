package strickle.web;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Makes the document of a room out of {@code index.html}: the place where the files stand is put
 * in, the import map sends each room's module to its pack, the packs that the room needs are named
 * at once, and where a studio is open its script asks for that studio before anything else.
 */
final class Shell {

  private static final String PLACE = "{page}";
  private static final String ROOM = "{room}";
  private static final String PRELOADS = "<!-- modules -->";
  private static final String ASKING = "<!-- asking -->\n";
  private static final String ASKING_FILE = "asking.js";
  private static final Pattern IMPORT_MAP =
      Pattern.compile("<script type=\"importmap\">(.*?)</script>", Pattern.DOTALL);
  private static final Pattern LINE_OF_ROOM = Pattern.compile("\n[^\n]*\\{room\\}[^\n]*");

  private final String template;
  private final String place;
  private final Map<String, PageFile> files;

  /**
   * A shell.
   *
   * @param files all files of the page by name, the packs too
   * @param rooms names of the rooms
   * @param place where they stand, as {@code /page/0123456789abcdef/}
   */
  Shell(Map<String, PageFile> files, Set<String> rooms, String place) {
    this.files = files;
    this.place = place;
    this.template = ofRooms(index(files), rooms).replace(PLACE, place);
  }

  private static String index(Map<String, PageFile> files) {
    return text(files, "index.html");
  }

  private static String text(Map<String, PageFile> files, String name) {
    return new String(files.get(name).bytes(), StandardCharsets.UTF_8);
  }

  /** What the import map names besides rooms: to files and folders of the page. */
  static Map<String, String> named(Map<String, PageFile> files) {
    return Imports.entries(importMap(ofRooms(index(files), Set.of())), PLACE);
  }

  // The one line that speaks of {room} stands for one of each, with a comma between.
  private static String ofRooms(String index, Set<String> rooms) {
    Matcher line = LINE_OF_ROOM.matcher(index);
    if (!line.find()) {
      throw new IllegalStateException("index.html has no line for " + ROOM + " in its import map");
    }
    String lines =
        rooms.stream()
            .map(room -> line.group().replace(ROOM, room))
            .collect(Collectors.joining(","));
    return index.substring(0, line.start()) + lines + index.substring(line.end());
  }

  private static String importMap(String document) {
    Matcher found = IMPORT_MAP.matcher(document);
    if (!found.find()) {
      throw new IllegalStateException("index.html has no import map");
    }
    return found.group(1);
  }

  /** What the policy of its answer must let through: the import map and the script, by hash. */
  String inlinePrints() {
    return Prints.policy(importMap(template)) + " " + Prints.policy(text(files, ASKING_FILE));
  }

  /**
   * The document of a room.
   *
   * @param room its name, or empty for none
   * @param asks what it asks for; a studio must be open for that
   */
  PageFile document(String room, Asks asks) {
    String links =
        Stream.of(Packs.CORE, Packs.of(room))
            .filter(files::containsKey)
            .map(name -> "<link rel=\"modulepreload\" href=\"" + place + name + "\">")
            .collect(Collectors.joining("\n"));
    String asking = asks.element(text(files, ASKING_FILE));
    String text = template.replace(ASKING, asking).replace(PRELOADS, links);
    return new PageFile("index.html", text.getBytes(StandardCharsets.UTF_8));
  }
}
