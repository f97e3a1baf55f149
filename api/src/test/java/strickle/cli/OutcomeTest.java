package strickle.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletionException;
import org.junit.jupiter.api.Test;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.json.BookFile;
import strickle.json.Meshes;
import strickle.json.PlanFile;
import strickle.plan.Effort;
import strickle.plan.Plan;
import strickle.plan.PlanRequest;
import strickle.plan.Planning;

/** What is said, and with which exit code, when something goes wrong. */
class OutcomeTest {

  private final ByteArrayOutputStream said = new ByteArrayOutputStream();
  private final PrintStream err = new PrintStream(said, true, UTF_8);

  @Test
  void faultsAreOneLineEach() {
    Faulty faulty =
        new Faulty(List.of(new Fault("$.a", "1\n2", "more"), new Fault("$.b", "3", "less")));
    assertEquals(2, Outcome.of(faulty, err));
    assertEquals(
        List.of("$.a: found 1 2; right would be more", "$.b: found 3; right would be less"),
        lines());
  }

  @Test
  void troubleOutsideIsToldAsItIs() {
    assertEquals(1, Outcome.of(new Trouble("--out x: found no folder"), err));
    assertEquals(List.of("strickle: --out x: found no folder"), lines());
  }

  @Test
  void whatMustNeverHappenIsOnePlainLineThatSaysItIsABug() {
    Throwable cause = new IllegalStateException("two\nlines");
    assertEquals(1, Outcome.of(new CompletionException("wrapped", cause), err));
    assertEquals(
        List.of(
            "strickle: this is a bug of Strickle, not of your book: IllegalStateException, two"
                + " lines; please report it with this line and the book"),
        lines());
  }

  @Test
  void aBugWithoutWordsIsToldByItsKind() {
    Outcome.of(new ArithmeticException(), err);
    assertTrue(lines().get(0).contains("book: ArithmeticException; please"), lines().get(0));
  }

  @Test
  void tooLittleMemoryIsNoBug() {
    assertEquals(1, Outcome.of(new OutOfMemoryError("Java heap space"), err));
    assertTrue(lines().get(0).contains("not enough memory"), lines().get(0));
  }

  @Test
  void aPlanThatBreaksARuleIsNeverLetThrough() {
    Book book = BookFile.parse(Shell.example(), Meshes.in(Path.of("none")));
    var from = book.studio().timeZone();
    var start = java.time.LocalDate.parse("2027-04-05").atStartOfDay(from).toOffsetDateTime();
    PlanRequest request = new PlanRequest(start, Effort.ofSchedules(1), 0);
    Plan good = Planning.of(book, request, progress -> {}).run();
    assertEquals(good, Audited.plan(book, good));
    Plan bad = PlanFile.parse(PlanFile.write(good).replace("T09:31-05:00", "T09:30-05:00"));
    Bug bug = assertThrows(Bug.class, () -> Audited.plan(book, bad));
    assertEquals(1, Outcome.of(bug, err));
    assertEquals(1, lines().size());
    assertTrue(lines().get(0).contains("neither shown nor written (rule "), lines().get(0));
  }

  @Test
  void aReaderThatLeavesEarlyIsNoFailure() throws IOException {
    assertEquals(Optional.empty(), failure("Broken pipe"));
  }

  @Test
  void aFullDiskIsAFailure() throws IOException {
    assertEquals(Optional.of("No space left on device"), failure("No space left on device"));
  }

  @Test
  void outputThatIsWrittenIsNoFailure() throws IOException {
    ByteArrayOutputStream written = new ByteArrayOutputStream();
    try (Output output = new Output(written)) {
      output.write('a');
      output.write(new byte[] {'b', 'c'}, 0, 2);
      output.flush();
      assertEquals(Optional.empty(), output.failure());
    }
    assertEquals("abc", written.toString(UTF_8));
  }

  private static Optional<String> failure(String why) throws IOException {
    OutputStream broken =
        new OutputStream() {
          @Override
          public void write(int one) throws IOException {
            throw new IOException(why);
          }
        };
    try (Output output = new Output(broken)) {
      output.write('a');
      output.write('b');
      return output.failure();
    }
  }

  private List<String> lines() {
    return said.toString(UTF_8).lines().toList();
  }
}
