package strickle.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import strickle.book.Fault;
import strickle.book.Faulty;

class PlanCoverTest {

  private static final String SEED = "\"seed\": 0,";

  @Test
  void aCoverIsWrittenAndReadWhenThereIsOne() {
    String covered = covered("99.5");
    assertEquals(OptionalDouble.of(99.5), PlanFile.parse(covered).coverPercent());
    assertEquals(covered, PlanFile.write(PlanFile.parse(covered)));
    assertEquals(OptionalDouble.empty(), PlanFile.parse(PlanFileTest.JSON).coverPercent());
  }

  @Test
  void aCoverThatCannotBeIsRefused() {
    Faulty refused = assertThrows(Faulty.class, () -> PlanFile.parse(covered("100")));
    Fault fault =
        new Fault(
            "$.coverPercent", "100.0", "a percentage from 50 to 99.9, or none for the average");
    assertEquals(List.of(fault), refused.faults());
  }

  private static String covered(String percent) {
    return PlanFileTest.JSON.replace(SEED, SEED + "\n  \"coverPercent\": " + percent + ",");
  }
}
