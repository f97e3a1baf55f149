package strickle.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class RightToLeftTest {

  // What is expected is written with escapes, as editors turn such texts round themselves.
  private static final String AB = "\u05D0\u05D1";
  private static final String BA = "\u05D1\u05D0";
  private static final String CD = "\u05D2\u05D3";
  private static final String DC = "\u05D3\u05D2";

  @Test
  void lettersAreTurnedRound() {
    assertEquals("2 x " + BA + " (L1)", RightToLeft.drawn("2 x " + AB + " (L1)"));
  }

  @Test
  void numbersKeepTheirDigitsAndTakeTheirPlace() {
    assertEquals(DC + " 12 " + BA, RightToLeft.drawn(AB + " 12 " + CD));
  }

  @Test
  void bracketsBetweenThemAreMirrored() {
    assertEquals(
        "(" + BA + ") " + DC,
        RightToLeft.drawn(CD + " (" + AB + ")\u200F").strip().replace("\u200F", ""));
  }

  @Test
  void aMarkStaysWithItsLetter() {
    assertEquals("\u05D1\u05D0\u05B8", RightToLeft.drawn("\u05D0\u05B8\u05D1"));
  }

  @Test
  void otherTextsStayAsTheyAre() {
    for (String text : new String[] {"", "a (b) 12", "Ж < Ω"}) {
      assertEquals(text, RightToLeft.drawn(text));
    }
  }
}
