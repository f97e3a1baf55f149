package strickle.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShowTest {

  @ParameterizedTest
  @CsvSource({
    "5.0, 5",
    "-0.25, -0.25",
    "0, 0",
    "1e15, 1.0E15",
    "123456789012345, 123456789012345",
    "NaN, not a number",
    "Infinity, an infinite number",
    "-Infinity, a negative infinite number"
  })
  void aNumberIsShownAsAPersonWouldWriteIt(double value, String shown) {
    assertEquals(shown, Show.number(value));
  }

  @ParameterizedTest
  @CsvSource({"64.00, 64.00", "1e3, 1000", "1e999999999, 1E+999999999", "1e-30, 1E-30"})
  void aDecimalIsShownAsWrittenUnlessThatIsVeryLong(BigDecimal value, String shown) {
    assertEquals(shown, Show.number(value));
  }

  @Test
  void aLongValueIsCut() {
    assertEquals("9".repeat(80) + "…", Show.number(new BigDecimal("9".repeat(500))));
    assertEquals("\"" + "😀".repeat(80) + "…\"", Show.text("😀".repeat(500)));
    assertEquals("\"" + "a".repeat(80) + "\"", Show.text("a".repeat(80)));
  }

  @Test
  void whatCannotBeSeenIsSpeltOut() {
    assertEquals("\"a\\u000ab\\u0000\\ud800\\u2028\"", Show.text("a\nb\0\ud800\u2028"));
  }

  @Test
  void nothingIsCalledNothing() {
    assertEquals("nothing", Show.text(null));
    assertEquals("nothing", Show.number((BigDecimal) null));
    assertEquals("nothing", Show.thing(null));
    assertTrue(Show.thing("a").startsWith("\""));
  }
}
