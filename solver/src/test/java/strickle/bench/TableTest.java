package strickle.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static strickle.bench.Refusals.assertRefused;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strickle.book.Faulty;

class TableTest {

  private static final String TEXT = "set,instance,lb,ub,note\nj,one,3,4,x\n\nj,two,5,5,\n";

  private static Table read(String text) {
    return Table.read(Lines.of("best.csv", text), List.of("lb", "ub"));
  }

  @Test
  void aValueStandsInTheRowOfItsInstanceUnderItsColumn() {
    Table table = read(TEXT);
    assertEquals(3, table.value("one", "lb"));
    assertEquals(4, table.value("one", "ub"));
    assertEquals(5, table.value("two", "ub"));
  }

  @Test
  void anInstanceThatIsNotInTheTableIsNamed() {
    Faulty missing = assertThrows(Faulty.class, () -> read(TEXT).value("three", "ub"));
    String right = "a row for it among the best-known values";
    assertEquals(
        "--best-known: found nothing about three; right would be " + right, missing.getMessage());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "ub, | best, | best.csv line 1: found \"set,instance,lb,best,note\"; right would be"
            + " columns",
        "instance | name | right would be columns instance, lb, ub",
        "one,3,4 | one,3,0 | line 2: found \"0\"; right would be a whole number from 1",
        "one,3,4 | one,3,? | line 2: found \"?\"; right would be a whole number",
        "one,3,4, | one,3, | line 2: found \"j,one,3,x\"; right would be a cell for each",
        "two | one | line 4: found \"one\"; right would be each instance once",
      })
  void aTableThatCannotBeReadIsRefused(String right, String wrong, String message) {
    assertRefused(message, TEXT, right, wrong, TableTest::read);
  }
}
