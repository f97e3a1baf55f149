package strickle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.book.Book;
import strickle.book.MeshFile;
import strickle.book.ShapePart;
import strickle.book.Window;

/** What the README shows works: its book, and every command, in the order they stand. */
class ReadmeTest {

  private static final Pattern BOOK = Pattern.compile("```json\n(.*?)```", Pattern.DOTALL);
  private static final Pattern PROGRESS =
      Pattern.compile(
          "```text\n(\\{\n  \"format\": \"strickle-progress/1\".*?)```", Pattern.DOTALL);

  private static final Pattern TABLE = Pattern.compile("```csv\n(.*?)```", Pattern.DOTALL);
  private static final Pattern COMMAND =
      Pattern.compile("^\\./strickle ([^#\n]*)", Pattern.MULTILINE);
  private static final Pattern FILE = Pattern.compile(".+[.](json|csv|pdf|ics)");
  private static final Pattern FIELD = Pattern.compile("`([a-z][A-Za-z0-9]*)`");

  /** Words of the overview that are no fields but what stands in them. */
  private static final List<String> WORDS = List.of("cure", "rest", "pour");

  /** Fields that are called otherwise in Java. */
  private static final Map<String, String> OTHER_NAMES =
      Map.of("Order.buyer", "for", "After.kind", "wait");

  /** Records that a book writes as a text, or that the README tells of in words. */
  private static final Set<Class<?>> PLAIN = Set.of(Window.class, ShapePart.class, MeshFile.class);

  @TempDir Path folder;
  private String readme;

  @BeforeEach
  void saveTheBook() throws IOException {
    readme = Files.readString(Shell.root().resolve("README.md"));
    List<String> books = BOOK.matcher(readme).results().map(found -> found.group(1)).toList();
    assertEquals(1, books.size());
    Files.writeString(folder.resolve("studio.json"), books.get(0));
    String progress = PROGRESS.matcher(readme).results().findFirst().orElseThrow().group(1);
    Files.writeString(folder.resolve("done.json"), progress);
    List<String> tables = TABLE.matcher(readme).results().map(found -> found.group(1)).toList();
    for (String table : tables) {
      Files.writeString(folder.resolve(nameOf(table)), table);
    }
  }

  private static String nameOf(String table) {
    return table.startsWith("casting,")
        ? "ready.csv"
        : table.startsWith("order,") ? "orders.csv" : "planter.csv";
  }

  @Test
  void theBookCanBePlannedOnTime() {
    Path book = folder.resolve("studio.json");
    String out = Shell.run("plan", book, "--from", "2027-04-05", "--schedules", "100").done().out();
    assertTrue(out.contains("The order is on time."), out);
    assertTrue(out.contains("candle dish, white"), out);
  }

  @Test
  void everyCommandWorks() {
    List<String> commands =
        COMMAND.matcher(readme).results().map(found -> found.group(1).strip()).toList();
    assertTrue(commands.size() > 8, commands.toString());
    // The first runs this very test; the second never ends by itself, and has a test of its own.
    commands.stream()
        .filter(command -> !command.equals("verify") && !command.startsWith("serve "))
        .forEach(this::run);
  }

  @Test
  void everyCommandOfTheProgramIsShown() {
    for (String command : Shell.commands()) {
      assertTrue(readme.contains("\n./strickle " + command + " "), command);
    }
  }

  @Test
  void theOverviewHasEveryFieldOfABookAndNoOther() {
    String table = readme.substring(readme.indexOf("| list | fields |"));
    String rows = table.substring(0, table.indexOf("\n\n"));
    Set<String> shown = new TreeSet<>(WORDS);
    FIELD.matcher(rows).results().forEach(name -> shown.add(name.group(1)));
    Set<String> fields = new TreeSet<>(WORDS);
    addFieldsOf(Book.class, fields);
    assertEquals(fields, shown);
  }

  @Test
  void documentsNameNoPlaceOfASingleMachine() throws IOException {
    for (String name : List.of("README.md", "DEVELOPERS.md", "CHANGELOG.md")) {
      String text = Files.readString(Shell.root().resolve(name));
      for (String place : List.of("/home/", "/tmp", "/root", "/work", "../", "localhost")) {
        assertFalse(text.contains(place), name + " names " + place);
      }
    }
  }

  // Fewer schedules than a maker would wait for, and files in a folder of the test's own.
  private void run(String command) {
    List<Object> words = new ArrayList<>();
    for (String word : command.replaceAll(" > .*", "").split(" ", -1)) {
      words.add(FILE.matcher(word).matches() ? folder.resolve(word) : word);
    }
    int seconds = words.indexOf("--seconds");
    if (seconds >= 0) {
      words.subList(seconds, seconds + 2).clear();
    }
    if (Set.of("plan", "replan").contains(words.get(0))) {
      words.removeIf("20000"::equals);
      words.remove("--schedules");
      words.addAll(List.of("--schedules", "20"));
    }
    if (words.get(0).equals("what-if")) {
      words.addAll(List.of("--schedules", "200"));
    }
    Shell.run(words.toArray()).done();
  }

  private static void addFieldsOf(Class<?> record, Set<String> fields) {
    for (RecordComponent component : record.getRecordComponents()) {
      fields.add(
          OTHER_NAMES.getOrDefault(
              record.getSimpleName() + "." + component.getName(), component.getName()));
      addFields(component.getGenericType(), fields);
    }
  }

  private static void addFields(Type type, Set<String> fields) {
    if (type instanceof ParameterizedType several) {
      Stream.of(several.getActualTypeArguments()).forEach(one -> addFields(one, fields));
    } else if (type instanceof Class<?> one && one.isRecord() && !PLAIN.contains(one)) {
      addFieldsOf(one, fields);
    }
  }
}
