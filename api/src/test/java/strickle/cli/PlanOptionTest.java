package strickle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.json.BookFile;
import strickle.json.PlanFile;

/** Which plans a command takes as the present one, and how it refuses others. */
class PlanOptionTest {

  private static final String START = "2027-04-05";

  @TempDir Path folder;

  @Command(name = "any")
  private static final class Any {
    @Mixin private final PlanOption option = new PlanOption();
  }

  private static PlanOption option(Path plan) {
    Any any = new Any();
    new CommandLine(any).parseArgs("--plan", plan.toString());
    return any.option;
  }

  private Book book() {
    return BookFile.read(bookFile());
  }

  private Path bookFile() {
    return Shell.file(folder, "book.json", Shell.example());
  }

  private Path planFile() {
    Path file = folder.resolve("plan.json");
    Shell.run("plan", bookFile(), "--from", START, "--schedules", "20", "--out", file).done();
    return file;
  }

  private static List<Fault> faults(Path plan, Book book) {
    return assertThrows(Faulty.class, () -> option(plan).read(book)).faults();
  }

  @Test
  void thePlanIsTheOneInTheFile() {
    Path file = planFile();
    assertEquals(PlanFile.read(file), option(file).read(book()));
  }

  @Test
  void aPlanThatIsNotThereOrIsNoneIsToldUnderTheOption() {
    Path missing = folder.resolve("nowhere.json");
    assertEquals("--plan $", faults(missing, book()).get(0).path());
    assertTrue(faults(missing, book()).get(0).found().startsWith("no file"));
    assertEquals("--plan $.format", faults(bookFile(), book()).get(0).path());
  }

  @Test
  void aPlanOfAnotherBookIsRefusedWithWhatIsWrong() {
    Path plan = planFile();
    Path other =
        Shell.file(folder, "book.json", Shell.example("\"setHours\": 20", "\"setHours\": 21"));
    List<Fault> faults = faults(plan, BookFile.read(other));
    assertEquals("--plan", faults.get(0).path());
    assertTrue(faults.get(0).found().contains("rule "), faults.toString());
    assertTrue(faults.size() <= 10, faults.toString());
  }
}
