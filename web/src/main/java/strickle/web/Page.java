package strickle.web;

import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The page as files by name, its modules also put together in packs. What is not among them cannot
 * be asked for: names are looked up, never turned into paths.
 */
public final class Page {

  private static final String ROOMS = "rooms/";
  private static final int PRINT_DIGITS = 16;

  /** The page as it was last read, and what the folder looked like then; a jar stays as it is. */
  private record Reading(String stamp, Page page) {}

  private static final AtomicReference<Reading> LAST = new AtomicReference<>();

  private final String print;
  private final Map<String, PageFile> files;
  private final Map<String, Map<Asks, PageFile>> documents = new TreeMap<>();
  private final String policy;

  private Page(String print, Map<String, PageFile> files) {
    this.print = print;
    this.files = files;
    Set<String> rooms = rooms(files.keySet());
    Shell shell = new Shell(files, rooms, "/page/" + print + "/");
    Stream.concat(Stream.of(""), rooms.stream())
        .forEach(
            room -> {
              Map<Asks, PageFile> ways = new EnumMap<>(Asks.class);
              EnumSet.allOf(Asks.class).forEach(asks -> ways.put(asks, shell.document(room, asks)));
              documents.put(room, ways);
            });
    this.policy = policy(shell.inlinePrints());
  }

  /**
   * The page as it is now. Out of a jar it is always the same; out of a folder, as for somebody who
   * is changing it, it is read anew when a file has changed.
   *
   * @throws IllegalStateException if a file is missing, or a module cannot be put into a pack
   * @throws java.io.UncheckedIOException if one cannot be read
   */
  public static Page now() {
    String stamp = OwnFiles.areInAFolder() ? OwnFiles.stamp() : "";
    Reading last = LAST.get();
    return last != null && last.stamp().equals(stamp) ? last.page() : read(stamp);
  }

  /**
   * Begins to read it, beside whatever else there is to do, so that it is at hand when it is first
   * asked for. What goes wrong is told then.
   */
  public static void prepare() {
    Thread reading = new Thread(Page::now, "page");
    reading.setDaemon(true);
    reading.setUncaughtExceptionHandler((thread, toldLater) -> {});
    reading.start();
  }

  // Who asks while it is being read waits for that.
  private static synchronized Page read(String stamp) {
    Reading last = LAST.get();
    if (last == null || !last.stamp().equals(stamp)) {
      last = new Reading(stamp, read());
      LAST.set(last);
    }
    return last.page();
  }

  /**
   * The style sheet that names every colour, size and distance, for light, dark and paper.
   *
   * @return CSS, never empty
   */
  public static String tokens() {
    return new String(OwnFiles.read().get("tokens.css"), StandardCharsets.UTF_8);
  }

  private static Page read() {
    Map<String, byte[]> all = new TreeMap<>(OwnFiles.read());
    all.putAll(Libraries.read());
    Map<String, PageFile> files = new TreeMap<>();
    all.forEach((name, bytes) -> files.put(name, new PageFile(name, bytes)));
    Imports imports = new Imports(files, Shell.named(files));
    Map<String, PageFile> packs = new Packs(imports, rooms(files.keySet())).files();
    files.putAll(packs);
    return new Page(printOf(files), files);
  }

  private static String printOf(Map<String, PageFile> files) {
    String all =
        files.values().stream()
            .map(file -> file.name() + " " + file.print())
            .collect(Collectors.joining("\n"));
    return Prints.hex(all.getBytes(StandardCharsets.UTF_8)).substring(0, PRINT_DIGITS);
  }

  private static Set<String> rooms(Set<String> names) {
    return names.stream()
        .filter(name -> name.startsWith(ROOMS) && name.lastIndexOf('/') >= ROOMS.length())
        .map(name -> name.substring(ROOMS.length(), name.indexOf('/', ROOMS.length())))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  // Nothing from anywhere else, no inline scripts but those known by hash, no strings run as code.
  private static String policy(String inline) {
    return String.join(
        "; ",
        "default-src 'none'",
        "script-src 'self' " + inline,
        "style-src 'self'",
        "img-src 'self' data: blob:",
        "connect-src 'self'",
        "form-action 'none'",
        "base-uri 'none'",
        "frame-ancestors 'none'",
        "require-trusted-types-for 'script'",
        "trusted-types lit-html");
  }

  /** The names of its rooms: each is an address of the page, as {@code /week}. */
  public Set<String> rooms() {
    return new TreeSet<>(documents.keySet().stream().filter(room -> !room.isEmpty()).toList());
  }

  /**
   * The document to show at a room's address.
   *
   * @param room its name, or empty for the first address
   * @param asks what it asks for at once
   */
  public Optional<PageFile> document(String room, Asks asks) {
    return Optional.ofNullable(documents.get(room)).map(ways -> ways.get(asks));
  }

  /** The Content-Security-Policy that its documents need, without anything unsafe. */
  public String policy() {
    return policy;
  }

  /** Where its files stand: it changes with any of them, so that each may be kept for ever. */
  public String print() {
    return print;
  }

  /** All its files by name. */
  public Map<String, PageFile> files() {
    return Map.copyOf(files);
  }

  /** One of its files. */
  public Optional<PageFile> file(String name) {
    return Optional.ofNullable(files.get(name));
  }
}
