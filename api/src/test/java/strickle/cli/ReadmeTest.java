package strickle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.book.Book;
import strickle.demo.Demo;
import strickle.demo.Generator;
import strickle.demo.Size;
import strickle.json.BookFile;

/** What the README shows works: its book, and every command, in the order they stand. */
class ReadmeTest {

  private static final Pattern BOOK = Pattern.compile("```json\n(.*?)```", Pattern.DOTALL);
  private static final Pattern COMMAND =
      Pattern.compile("^\\./strickle ([^#\n]*)", Pattern.MULTILINE);
  private static final Pattern FIELD = Pattern.compile("`([a-z][A-Za-z0-9]*)`");

  /** Fields and words of which no book at hand makes use. */
  private static final String OTHERS = "\"shape\" \"mesh\" \"pour\"";

  @TempDir Path folder;
  private String readme;

  @BeforeEach
  void saveTheBook() throws IOException {
    readme = Files.readString(Shell.root().resolve("README.md"));
    List<String> books = BOOK.matcher(readme).results().map(found -> found.group(1)).toList();
    assertEquals(1, books.size());
    Files.writeString(folder.resolve("studio.json"), books.get(0));
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
    commands.stream().filter(command -> !command.equals("verify")).forEach(this::run);
  }

  @Test
  void everyCommandOfTheProgramIsShown() {
    for (String command : List.of("plan", "price", "check", "demo")) {
      assertTrue(readme.contains("\n./strickle " + command + " "), command);
    }
  }

  @Test
  void everyListOfABookIsInTheOverview() {
    for (var component : Book.class.getRecordComponents()) {
      assertTrue(readme.contains("\n| `" + component.getName() + "` |"), component.getName());
    }
  }

  @Test
  void noFieldOfTheOverviewIsMadeUp() {
    String table = readme.substring(readme.indexOf("| list | fields |"));
    String rows = table.substring(0, table.indexOf("\n\n"));
    String known = namesInBooks();
    for (MatchResult name : FIELD.matcher(rows).results().toList()) {
      assertTrue(known.contains('"' + name.group(1) + '"'), name.group(1));
    }
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
      words.add(word.endsWith(".json") ? folder.resolve(word) : word);
    }
    int seconds = words.indexOf("--seconds");
    if (seconds >= 0) {
      words.subList(seconds, seconds + 2).clear();
    }
    if (words.get(0).equals("plan")) {
      words.removeIf("20000"::equals);
      words.remove("--schedules");
      words.addAll(List.of("--schedules", "20"));
    }
    Shell.run(words.toArray()).done();
  }

  private static String namesInBooks() {
    String demo = BookFile.write(Demo.book(Size.MEDIUM));
    return Shell.example() + demo + BookFile.write(Generator.book(60, 1)) + OTHERS;
  }
}
