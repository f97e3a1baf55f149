package strickle.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import strickle.book.Book;
import strickle.book.Draft;

class UnitsTest {

  private static Units three() {
    Book book =
        Draft.of(Studios.tiles()).forms(Studios.form("tray", 3), Studios.form("lid", 1)).book();
    return new Units(book);
  }

  @Test
  void theLowestFreeNumbersAreTaken() {
    Units units = three();
    assertEquals(List.of(1), units.take("tray", 1, 0, 100));
    assertEquals(List.of(2), units.take("tray", 1, 10, 50));
    assertEquals(List.of(2, 3), units.take("tray", 2, 60, 90));
    assertEquals(List.of(1, 2, 3), units.take("tray", 3, 100, 110));
  }

  @Test
  void aUnitIsFreeInTheMinuteItIsGivenBack() {
    Units units = three();
    assertEquals(List.of(1), units.take("lid", 1, 0, 100));
    assertEquals(List.of(1), units.take("lid", 1, 100, 200));
  }

  @Test
  void formsAreCountedEachForItself() {
    Units units = three();
    units.take("tray", 3, 0, 100);
    assertEquals(List.of(1), units.take("lid", 1, 0, 100));
  }

  @Test
  void moreThanAreFreeIsAnErrorThatNamesTheForm() {
    Units units = three();
    units.take("tray", 2, 0, 100);
    IllegalStateException error =
        assertThrows(IllegalStateException.class, () -> units.take("tray", 2, 99, 200));
    assertEquals("form tray: 2 units asked for at minute 99, too few free", error.getMessage());
  }
}
