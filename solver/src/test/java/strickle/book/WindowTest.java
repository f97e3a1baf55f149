package strickle.book;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.NullSource;
import org.junit.jupiter.params.provider.ValueSource;

class WindowTest {

  @ParameterizedTest
  @CsvSource({
    "09:00-12:00, 540, 720",
    "00:00-24:00, 0, 1440",
    "23:59-24:00, 1439, 1440",
    "00:00-00:01, 0, 1"
  })
  void hoursAreReadAndWrittenTheSameWay(String hours, int start, int end) {
    Window window = Window.parse(hours);

    assertEquals(new Window(start, end), window);
    assertEquals(hours, window.toString());
    assertEquals(end - start, window.minutes());
  }

  @ParameterizedTest
  @NullSource
  @ValueSource(
      strings = {
        "",
        "9-12",
        "9:00-12:00",
        "09:00 - 12:00",
        "09:00–12:00",
        "09:00-12:60",
        "25:00-26:00",
        "09:00-12:00 ",
        "09:00",
        "٠٩:٠٠-١٢:٠٠",
        "-09:00-12:00",
        "09:00-12:00\n"
      })
  void anythingElseIsRefusedWithAnExample(String hours) {
    Fault fault = Faults.only(() -> Window.parse(hours));

    assertEquals(new Fault("", Show.text(hours), "hours like \"09:00-12:00\""), fault);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"12:00-09:00", "09:00-09:00", "24:00-24:00", "22:00-24:01", "24:00-01:00"})
  void hoursEndAfterTheyStartOnTheSameDay(String hours) {
    Fault fault = Faults.only(() -> Window.parse(hours));

    assertEquals("\"" + hours + "\"", fault.found());
    assertEquals(
        "hours like \"09:00-12:00\" that end after they start, by 24:00 of the same day",
        fault.right());
  }

  @ParameterizedTest
  @CsvSource({"-1, 60", "0, 1441", "60, 60", "61, 60", "1440, 1440"})
  void minutesLieInsideOneDay(int start, int end) {
    Fault fault = Faults.only(() -> new Window(start, end));

    assertEquals("minutes " + start + " to " + end + " of a day", fault.found());
  }

  @Test
  void hoursAreWrittenInAsciiDigitsWhateverTheLocale() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertEquals("09:05-12:00", new Window(545, 720).toString());
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void theWindowsOfADayAreInOrderAndDoNotOverlap() {
    Window morning = SampleBook.hours(9, 12);
    Window noon = SampleBook.hours(11, 13);
    Window afternoon = SampleBook.hours(13, 17);

    assertEquals(
        List.of(
            new Fault(
                ".hours[1]",
                "\"11:00-13:00\"",
                "hours that start at or after the end of \"09:00-12:00\"")),
        Faults.of(() -> day(morning, noon, afternoon)));
    assertEquals(".hours[1]", Faults.only(() -> day(afternoon, morning)).path());
    assertEquals(".hours[1]", Faults.only(() -> day(morning, morning)).path());
  }

  @Test
  void windowsMayTouch() {
    List<Window> touching = List.of(SampleBook.hours(9, 12), SampleBook.hours(12, 13));

    assertEquals(touching, day(touching.toArray(Window[]::new)).hours());
  }

  private static SpecialDay day(Window... windows) {
    return new SpecialDay(AllRecords.SPECIAL_DAY.date(), List.of(windows));
  }
}
