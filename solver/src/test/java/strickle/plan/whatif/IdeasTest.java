package strickle.plan.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strickle.book.Window;
import strickle.plan.whatif.PlanReading.Holding;

/** How long things are all taken, and which closed hours are looked at. */
class IdeasTest {

  private static Holding holding(int units, long from, long to) {
    return new Holding("tray", units, from, to);
  }

  @Test
  void aFormIsFullWhileAllItsUnitsAreTaken() {
    List<Holding> holdings = List.of(holding(1, 0, 60), holding(1, 30, 90), holding(1, 90, 100));
    assertEquals(30, FormIdeas.fullMinutes(holdings, 2));
    assertEquals(100, FormIdeas.fullMinutes(holdings, 1));
    assertEquals(0, FormIdeas.fullMinutes(holdings, 3));
    assertEquals(40, FormIdeas.fullMinutes(List.of(holding(2, 10, 50)), 2));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // A day off has a morning; others what lies beside the windows, three hours at the most.
        " '' | 09:00-13:00",
        "09:00-17:00 | 06:00-09:00 17:00-20:00",
        "10:30-12:00 13:00-20:30 | 07:30-10:30 12:00-13:00 20:30-22:00",
        "05:00-08:00 18:00-21:45 | 08:00-11:00",
        "06:15-12:00 12:15-22:30 | ''",
      })
  void closedHoursLieBesideTheWindowsInWakingHours(String open, String closed) {
    assertEquals(closed.strip(), said(HourIdeas.closed(read(open.strip()))));
  }

  private static List<Window> read(String windows) {
    return Arrays.stream(windows.split(" ", -1))
        .filter(window -> !window.isEmpty())
        .map(Window::parse)
        .toList();
  }

  private static String said(List<Window> windows) {
    return String.join(" ", windows.stream().map(Window::toString).toList());
  }
}
