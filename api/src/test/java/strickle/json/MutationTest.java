package strickle.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.function.Predicate;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.plan.Plan;

/** Whatever is done to a file, reading it gives its record or faults, and nothing else. */
@Tag("slow")
class MutationTest {

  private static final int ROUNDS = 2500;

  @Test
  void whateverIsDoneToABookGivesABookOrFaultsWithPaths() {
    String whole =
        ExampleBook.with(
            "\"volumeMl\": 1180",
            "\"shape\": [{\"solid\": \"box\", \"lengthMm\": 90, \"widthMm\": 80, \"heightMm\": 60},"
                + " {\"solid\": \"torus\", \"ringRadiusMm\": 20, \"tubeRadiusMm\": 9,"
                + " \"subtract\": true}]");
    mutate(whole, 20270405, MutationTest::isBook);
  }

  @Test
  void whateverIsDoneToAPlanGivesAPlanOrFaultsWithPaths() {
    mutate(PlanFileTest.JSON, 20270406, MutationTest::isPlan);
  }

  private static void mutate(String whole, long seed, Predicate<byte[]> reading) {
    Mutator mutator = new Mutator(seed);
    int read = 0;
    for (int i = 0; i < ROUNDS; i++) {
      read += reading.test(mutator.mutated(whole)) ? 1 : 0;
    }
    // Neither may be so rare that the rounds show nothing.
    assertTrue(read > ROUNDS / 50 && read < ROUNDS / 2, read + " were read");
  }

  private static boolean isBook(byte[] json) {
    try {
      Book book = BookFile.parse(json, Meshes.in(ExampleBook.NOWHERE));
      assertEquals(book, ExampleBook.parse(BookFile.write(book)));
      return true;
    } catch (Faulty faulty) {
      assertTellsWhere(faulty);
      return false;
    }
  }

  private static boolean isPlan(byte[] json) {
    try {
      Plan plan = PlanFile.parse(new String(json, StandardCharsets.UTF_8));
      String written = PlanFile.write(plan);
      assertEquals(written, PlanFile.write(PlanFile.parse(written)));
      return true;
    } catch (Faulty faulty) {
      assertTellsWhere(faulty);
      return false;
    }
  }

  private static void assertTellsWhere(Faulty faulty) {
    assertFalse(faulty.faults().isEmpty());
    for (Fault fault : faulty.faults()) {
      assertTrue(fault.path().matches("(?s)\\$([.\\[].*)?"), fault.toString());
      assertTrue(fault.found().length() < 400, fault.toString());
    }
  }
}
