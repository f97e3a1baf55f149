package strickle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckCommandTest {

  private static final String PIN =
      "\"pins\": [{\"kind\": \"pour\", \"piece\": \"planter-slate\", \"castings\": 1,"
          + " \"start\": \"2027-04-06T09:30\", \"person\": \"ana\"}]";

  @TempDir Path folder;

  @Test
  void aGoodBookIsSaidToBeOne() {
    Path book = Shell.file(folder, "book.json", Shell.example());
    assertEquals(
        book + " can be planned: 1 piece, 1 order, 4 castings to pour.",
        Shell.run("check", book).done().out().strip());
  }

  @Test
  void theDemoIsAGoodBook() {
    String out = Shell.run("check", "demo").done().out();
    assertTrue(out.startsWith("demo can be planned: 9 pieces, 7 orders, "), out);
  }

  @Test
  void aPinIsHeldAgainstTheStartGiven() {
    Path book = Shell.file(folder, "book.json", Shell.example("\"pins\": []", PIN));
    Shell.run("check", book, "--from", "2027-04-05").done();
    Shell.Result late = Shell.run("check", book, "--from", "2027-04-07");
    assertEquals(2, late.code());
    assertTrue(late.err().startsWith("$.pins[0].start: found "), late.err());
  }
}
