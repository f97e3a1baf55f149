package strickle.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Model.OptionSpec;

/** Runs commands as {@code main} does, with streams that can be read and a clock that stands. */
final class Shell {

  /** Late on 4 April where the example's studio is, but 5 April already in most of the world. */
  static final Instant NOW = Instant.parse("2027-04-05T04:30:00Z");

  private static final Pattern ADDRESS = Pattern.compile("http://localhost:[0-9]+");
  private static final long BREATH_MILLIS = 50;

  private final boolean terminal;

  private Shell(boolean terminal) {
    this.terminal = terminal;
  }

  /**
   * What came of a command.
   *
   * @param code the exit code
   * @param out all of standard output
   * @param err all of standard error
   */
  record Result(int code, String out, String err) {

    /** The lines of standard error. */
    List<String> faults() {
      return err.lines().toList();
    }

    /** Where each fault is. */
    List<String> paths() {
      return faults().stream().map(line -> line.substring(0, line.indexOf(':'))).toList();
    }

    /** This, when the command ended well and quietly. */
    Result done() {
      assertEquals("", err);
      assertEquals(0, code);
      return this;
    }
  }

  /** A shell whose standard error is a file. */
  static Shell quiet() {
    return new Shell(false);
  }

  /** A shell whose standard error is a terminal. */
  static Shell onTerminal() {
    return new Shell(true);
  }

  /** Runs a command in a quiet shell. */
  static Result run(Object... arguments) {
    return quiet().call(arguments);
  }

  /** Begins a command that goes on until its thread is interrupted. */
  static Thread begin(ByteArrayOutputStream out, Object... arguments) {
    return begin(out, new ByteArrayOutputStream(), arguments);
  }

  /** The same with what goes to standard error. */
  static Thread begin(ByteArrayOutputStream out, ByteArrayOutputStream err, Object... arguments) {
    String[] words = List.of(arguments).stream().map(Object::toString).toArray(String[]::new);
    Surroundings here = quiet().surroundings(out, err);
    return Thread.ofPlatform().start(() -> Main.run(here, words));
  }

  /** Where a service serves, once it has said so; the test's own limit ends a wait in vain. */
  static String address(ByteArrayOutputStream out) throws InterruptedException {
    while (true) {
      Matcher address = ADDRESS.matcher(out.toString(UTF_8));
      if (address.find()) {
        return address.group();
      }
      Thread.sleep(BREATH_MILLIS);
    }
  }

  /** Runs a command; arguments may be paths. */
  Result call(Object... arguments) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    String[] words = List.of(arguments).stream().map(Object::toString).toArray(String[]::new);
    int code = Main.run(surroundings(out, err), words);
    return new Result(code, out.toString(UTF_8), err.toString(UTF_8));
  }

  private Surroundings surroundings(ByteArrayOutputStream out, ByteArrayOutputStream err) {
    return new Surroundings(
        Clock.fixed(NOW, ZoneOffset.UTC),
        new PrintStream(out, true, UTF_8),
        new PrintStream(err, true, UTF_8),
        () -> terminal,
        new Interruption());
  }

  /** The names of all commands of the program. */
  static Set<String> commands() {
    return Main.commands();
  }

  /** The options of each command of the program, by their longest names. */
  static Map<String, List<String>> options() {
    Map<String, List<String>> options = new TreeMap<>();
    Main.commandLine(quiet().surroundings(new ByteArrayOutputStream(), new ByteArrayOutputStream()))
        .getSubcommands()
        .forEach(
            (name, command) ->
                options.put(
                    name,
                    command.getCommandSpec().options().stream()
                        .map(OptionSpec::longestName)
                        .toList()));
    return options;
  }

  /** The example book's text. */
  static String example() {
    try (InputStream in = Shell.class.getResourceAsStream("/example-book.json")) {
      return new String(in.readAllBytes(), UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** The example book with one part replaced by another; the part must stand there just once. */
  static String example(String part, String other) {
    String json = example();
    assertNotEquals(-1, json.indexOf(part), part);
    assertEquals(json.indexOf(part), json.lastIndexOf(part), "twice: " + part);
    return json.replace(part, other);
  }

  /** A file with this text. */
  static Path file(Path folder, String name, String text) {
    try {
      return Files.writeString(folder.resolve(name), text, UTF_8);
    } catch (IOException unwritable) {
      throw new UncheckedIOException(unwritable);
    }
  }

  /** The folder of the whole project. */
  static Path root() {
    Path folder = Path.of("").toAbsolutePath();
    while (!Files.isDirectory(folder.resolve("solver"))) {
      folder = folder.getParent();
    }
    return folder;
  }
}
