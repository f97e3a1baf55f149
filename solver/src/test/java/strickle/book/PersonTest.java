package strickle.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class PersonTest {

  private static final LocalDate THURSDAY = LocalDate.parse("2027-04-08");
  private static final Window MORNING = SampleBook.hours(9, 12);

  @Test
  void theWeekIsACopyThatCannotBeChangedMondayFirst() {
    Map<DayOfWeek, List<Window>> given = new HashMap<>();
    given.put(DayOfWeek.SUNDAY, List.of(MORNING));
    given.put(DayOfWeek.MONDAY, List.of());
    Person person = new Person("bo", "Bo", given, List.of());

    given.clear();

    assertEquals(List.of(DayOfWeek.MONDAY, DayOfWeek.SUNDAY), List.copyOf(person.hours().keySet()));
    assertThrows(
        UnsupportedOperationException.class, () -> person.hours().put(DayOfWeek.FRIDAY, List.of()));
    assertThrows(
        UnsupportedOperationException.class,
        () -> person.hours().get(DayOfWeek.SUNDAY).add(MORNING));
  }

  @Test
  void overlappingHoursAreAFaultOfTheirWeekday() {
    Map<DayOfWeek, List<Window>> week = new EnumMap<>(DayOfWeek.class);
    week.put(DayOfWeek.WEDNESDAY, List.of(MORNING, MORNING));
    week.put(DayOfWeek.SUNDAY, List.of(SampleBook.hours(13, 17), MORNING));

    assertEquals(
        List.of(".hours.WED[1]", ".hours.SUN[1]"),
        Faults.paths(() -> new Person("bo", "Bo", week, List.of())));
  }

  @Test
  void aWeekdayWithoutAListIsAFault() {
    Map<DayOfWeek, List<Window>> week = new HashMap<>();
    week.put(DayOfWeek.TUESDAY, null);

    assertEquals(".hours.TUE", Faults.only(() -> new Person("bo", "Bo", week, List.of())).path());
  }

  @Test
  void aDateIsSpecialOnlyOnce() {
    SpecialDay off = new SpecialDay(THURSDAY, List.of());
    SpecialDay other = new SpecialDay(THURSDAY.plusDays(1), List.of());

    Fault fault = Faults.only(() -> new Person("bo", "Bo", Map.of(), List.of(off, other, off)));

    assertEquals(".exceptions[2].date", fault.path());
    assertEquals("2027-04-08", fault.found());
  }

  @Test
  void aSpecialDayTakesTheHoursOfItsWeekday() {
    Person ana = SampleBook.ana();

    assertEquals(List.of(), ana.hoursOn(THURSDAY));
    assertEquals(ana.hours().get(DayOfWeek.THURSDAY), ana.hoursOn(THURSDAY.plusWeeks(1)));
    assertEquals(List.of(), ana.hoursOn(LocalDate.parse("2027-04-07")));
  }

  @Test
  void hoursOnASpecialDayAloneAreHours() {
    SpecialDay open = new SpecialDay(THURSDAY, List.of(MORNING));
    SpecialDay closed = new SpecialDay(THURSDAY, List.of());

    assertTrue(new Person("bo", "Bo", Map.of(), List.of(open)).hasHours());
    assertTrue(SampleBook.ana().hasHours());
    assertFalse(
        new Person("bo", "Bo", Map.of(DayOfWeek.MONDAY, List.of()), List.of(closed)).hasHours());
  }
}
