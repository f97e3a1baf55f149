package strickle.paper;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import strickle.book.Book;
import strickle.plan.Lot;
import strickle.plan.Run;
import strickle.plan.Task;
import strickle.plan.TaskKind;
import strickle.plan.Weighed;
import strickle.safety.Caution;

class DaySheetTest {

  private static final byte[] SHEETS = DaySheet.pdf(Papers.BOOK, Papers.PLAN, SheetRequest.ALL);
  private static final List<String> PAGES = Papers.pages(SHEETS);
  private static final Names NAMES = new Names(Papers.BOOK, Papers.PLAN);
  private static final Times TIMES = new Times(Papers.BOOK.studio().timeZone());

  @Test
  void everyFigureToWeighStandsOnTheCardOfItsLotInOrder() {
    for (Task task : Papers.PLAN.tasks()) {
      if (task.kind() == TaskKind.POUR) {
        Lot lot = NAMES.lot(task.lot());
        String card = card(lot);
        int at = 0;
        for (Weighed weighed : lot.weighOut()) {
          String row = NAMES.material(weighed.material()) + " " + Names.grams(weighed.grams());
          at = card.indexOf(row + " g", at);
          assertTrue(at >= 0, row + " in " + card);
        }
        String sum = "wet mix, all together " + Names.grams(lot.wetGrams()) + " g";
        assertTrue(card.indexOf(sum, at) > at, sum + " in " + card);
      }
    }
  }

  @Test
  void everyCardHasItsMouldsAndBallast() {
    for (Lot lot : Papers.PLAN.lots()) {
      String card = card(lot);
      for (Run run : lot.runs()) {
        assertTrue(card.contains(NAMES.pieces(run) + " (" + run.id() + ")"), card);
        assertTrue(card.contains(NAMES.castings(run)), card);
        run.ballastGramsEach()
            .ifPresent(
                grams ->
                    assertTrue(
                        card.contains(grams == 0 ? "needs no ballast" : "Ballast " + grams + " g"),
                        card));
      }
    }
  }

  // From its heading to its end on the same page: a card that was cut has no end there.
  private static String card(Lot lot) {
    String heading = lot.id() + ": " + NAMES.mix(lot) + ", ";
    String page = PAGES.stream().filter(text -> text.contains(heading)).findFirst().orElseThrow();
    String card = Papers.words(page.substring(page.indexOf(heading)));
    int end = card.indexOf("min of mixing.");
    assertTrue(end > 0, card);
    return card.substring(0, end);
  }

  @Test
  void everyTaskStandsOnAPageOfItsPersonAndDay() {
    for (Stint stint : Stint.of(Papers.BOOK, Papers.PLAN, TIMES)) {
      String foot =
          Times.day(stint.date()) + " · " + Papers.BOOK.person(stint.person()).name() + " page";
      String row = TIMES.spell(stint.spell()) + " " + Names.capital(NAMES.what(stint.task()));
      assertTrue(
          PAGES.stream()
              .map(Papers::words)
              .anyMatch(page -> page.contains(foot) && page.contains(row)),
          row + " of " + foot);
    }
  }

  @Test
  void everythingThatBecomesReadyIsSaidOnItsDay() {
    Papers.PLAN
        .ready()
        .forEach(
            ready -> {
              String day = Times.day(TIMES.date(ready.at()));
              String row = NAMES.pieces(NAMES.run(ready.run())) + " (" + ready.run() + ")";
              assertTrue(
                  PAGES.stream()
                      .map(Papers::words)
                      .filter(page -> page.contains(day) && page.contains("Ready today"))
                      .anyMatch(page -> page.contains(row)),
                  row + " on " + day);
            });
  }

  @Test
  void whatBecomesReadyStandsInTheOrderOfTime() {
    for (String page : PAGES) {
      int at = page.indexOf("Ready today");
      List<String> times =
          page.substring(Math.max(at, 0))
              .lines()
              .filter(line -> line.matches("[0-9:]{5} .*"))
              .toList();
      assertEquals(
          times.stream().map(line -> line.substring(0, 5)).sorted().toList(),
          times.stream().map(line -> line.substring(0, 5)).toList(),
          page);
    }
  }

  @Test
  void aLongListOfTasksBeginsUnderItsHeading() {
    for (String page : PAGES) {
      boolean heads = page.lines().anyMatch("Tasks"::equals);
      boolean first = page.lines().anyMatch(line -> line.matches("[0-9:]{5}–[0-9:]{5} .*"));
      assertTrue(!heads || first || page.contains("Nobody has anything to do."), page);
    }
    assertTrue(PAGES.get(0).lines().anyMatch("Tasks"::equals), PAGES.get(0));
  }

  @Test
  void cautionsStandThereOnceAndTheirFollowLineToo() {
    String all = Papers.words(SHEETS);
    assertEquals(2, all.split(java.util.regex.Pattern.quote(Caution.FOLLOW), -1).length);
    assertTrue(all.contains(Names.capital(Caution.WET_CEMENT.brief())), all);
  }

  @Test
  void theRoomStandsThereWhereTheBookKnowsIt() {
    assertTrue(Papers.words(PAGES.get(0)).contains("Dew point "), PAGES.get(0));
    assertTrue(Papers.words(PAGES.get(0)).contains("kg/m²/h"), PAGES.get(0));
  }

  @Test
  void pagesAreNumberedAndNameTheStudio() {
    for (int i = 0; i < PAGES.size(); i++) {
      String number = "page " + (i + 1) + " of " + PAGES.size();
      assertTrue(PAGES.get(i).contains(number), PAGES.get(i));
      assertTrue(PAGES.get(i).contains(Papers.BOOK.studio().name()), PAGES.get(i));
    }
  }

  @Test
  void everyFontIsInTheDocument() throws IOException {
    try (PDDocument document = Loader.loadPDF(SHEETS)) {
      int fonts = 0;
      for (PDPage page : document.getPages()) {
        for (COSName name : page.getResources().getFontNames()) {
          PDFont font = page.getResources().getFont(name);
          assertTrue(font.isEmbedded(), font.getName());
          assertTrue(font.getName().contains("DejaVuSansCondensed"), font.getName());
          fonts++;
        }
      }
      assertTrue(fonts >= document.getNumberOfPages());
    }
  }

  @Test
  void theSamePlanGivesTheSameBytes() {
    assertArrayEquals(SHEETS, DaySheet.pdf(Papers.BOOK, Papers.PLAN, SheetRequest.ALL));
  }

  @Test
  void oneDayAndOnePersonAreAllThereIsWhenAskedFor() {
    Stint one = Stint.of(Papers.BOOK, Papers.PLAN, TIMES).get(0);
    SheetRequest request =
        new SheetRequest(Optional.of(one.date()), Optional.of(one.person()), PageSize.A4);
    List<String> pages = Papers.pages(DaySheet.pdf(Papers.BOOK, Papers.PLAN, request));
    String who = Papers.BOOK.person(one.person()).name();
    pages.forEach(page -> assertTrue(page.contains(Times.day(one.date()) + " · " + who), page));
    assertTrue(pages.size() < PAGES.size());
  }

  @Test
  void somebodyElseIsRefused() {
    SheetRequest nobody = new SheetRequest(Optional.empty(), Optional.of("nobody"), PageSize.A4);
    assertThrows(
        IllegalArgumentException.class, () -> DaySheet.pdf(Papers.BOOK, Papers.PLAN, nobody));
  }

  @Test
  void letterPaperIsOfThatSize() throws IOException {
    SheetRequest letter = new SheetRequest(Optional.empty(), Optional.empty(), PageSize.LETTER);
    byte[] pdf = DaySheet.pdf(Papers.BOOK, Papers.empty(Papers.BOOK), letter);
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDRectangle box = document.getPage(0).getMediaBox();
      assertEquals(PDRectangle.LETTER.getWidth(), box.getWidth(), 0.5);
      assertEquals(PDRectangle.LETTER.getHeight(), box.getHeight(), 0.5);
    }
  }

  @Test
  void aPlanOfNothingAndADayOfNothingSaySo() {
    byte[] none = DaySheet.pdf(Papers.BOOK, Papers.empty(Papers.BOOK), SheetRequest.ALL);
    assertTrue(Papers.words(none).contains("Nothing is planned."));
    LocalDate far = LocalDate.of(2030, 1, 1);
    byte[] day =
        DaySheet.pdf(
            Papers.BOOK,
            Papers.PLAN,
            new SheetRequest(Optional.of(far), Optional.empty(), PageSize.A4));
    assertTrue(Papers.words(day).contains("Nobody has anything to do."));
    assertFalse(Papers.words(day).contains("Take care"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Żółw č ő ğ ı ß æ",
        "Ωμέγα, Щука, № 5",
        "½ ± ≤ √2 ☐ €",
        "<img src=\"http://example.invalid/a.png\"/> & <b>",
        "@import url(http://example.invalid)"
      })
  void namesAreShownAsTheyAre(String name) {
    Book book = Papers.renamed(Papers.BOOK, old -> name);
    String words = Papers.words(DaySheet.pdf(book, Papers.PLAN, SheetRequest.ALL));
    assertTrue(words.contains("x " + name + " ("), name);
    assertTrue(words.contains(name + " · Monday"), name);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "אבג דה",
        "سلام",
        "ok 🪨👩‍🎨",
        "漢字",
        "a\u0301\u200D\uFE0F",
        "\u202Eabc",
        "\uFDD0"
      })
  void signsTheFontsHaveNotAreBoxesAndNoFailure(String name) {
    Book book = Papers.renamed(Papers.BOOK, old -> name);
    byte[] pdf = DaySheet.pdf(book, Papers.PLAN, SheetRequest.ALL);
    assertEquals(PAGES.size(), Papers.pages(pdf).size(), 3);
  }

  @Test
  void aSignThatIsNotThereIsABox() {
    assertEquals("ok ▯▯▯", Fonts.printable("ok 🪨👩‍🎨"));
    assertEquals("▯▯", Fonts.printable("漢字"));
    assertEquals("☐ ✓ Żółw Щ Ω ≤ €", Fonts.printable("☐ ✓ Żółw Щ Ω ≤ €"));
  }

  @Test
  void aNameOfEightySignsWithoutSpacesStaysOnThePage() throws IOException {
    String name = "W".repeat(80);
    Book book = Papers.renamed(Papers.BOOK, old -> name);
    byte[] pdf = DaySheet.pdf(book, Papers.PLAN, SheetRequest.ALL);
    int signs = 0;
    try (PDDocument document = Loader.loadPDF(pdf)) {
      Edge edge = new Edge();
      edge.getText(document);
      assertTrue(edge.rightmost <= PDRectangle.A4.getWidth() - 25, edge.rightmost + " pt");
      signs = edge.signs;
    }
    assertTrue(signs > 80 * Papers.PLAN.lots().size(), signs + " signs");
  }
}
