package strickle.demo;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import strickle.book.Person;
import strickle.book.SpecialDay;
import strickle.book.Window;

/**
 * Draws one to three people: some work evenings and perhaps Saturdays, some by day, some in the
 * afternoon. Everyone has three open days a week at least and a window of two hours at least, so a
 * lone casting always fits somewhere.
 */
final class GeneratedPeople {

  private static final List<String> NAMES = List.of("Alva", "Bruno", "Cosima");

  /** Above this many castings one pair of hands would need a year. */
  private static final int NEEDS_TWO = 200;

  private final Dice dice;
  private final LocalDate from;

  private GeneratedPeople(Dice dice, LocalDate from) {
    this.dice = dice;
    this.from = from;
  }

  static List<Person> draw(Dice dice, int castings, LocalDate from) {
    boolean many = castings >= NEEDS_TWO;
    int count = many ? dice.from(2, 3) : dice.from(1, castings < 20 ? 2 : 3);
    GeneratedPeople people = new GeneratedPeople(dice, from);
    List<Person> drawn = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      String name = NAMES.get(i);
      var hours = many && i == 0 ? people.days() : people.hours();
      drawn.add(new Person(id(i), name, hours, people.exceptions()));
    }
    return drawn;
  }

  private static String id(int person) {
    return List.of("alva", "bruno", "cosima").get(person);
  }

  private Map<DayOfWeek, List<Window>> hours() {
    return switch (dice.from(1, 5)) {
      case 1, 2, 3 -> evenings();
      case 4 -> days();
      default -> afternoons();
    };
  }

  private Map<DayOfWeek, List<Window>> evenings() {
    Window evening = hoursFrom(dice.from(36, 38), dice.from(4, 6));
    Map<DayOfWeek, List<Window>> week = weekdays(dice.from(3, 5), List.of(evening));
    if (dice.chance(65)) {
      week.put(DayOfWeek.SATURDAY, Entries.windows("09:00-12:30", "13:15-17:00"));
    }
    return week;
  }

  private Map<DayOfWeek, List<Window>> days() {
    return weekdays(dice.from(4, 5), Entries.windows("09:00-12:00", "13:00-17:00"));
  }

  private Map<DayOfWeek, List<Window>> afternoons() {
    Window afternoon = hoursFrom(dice.from(25, 27), dice.from(7, 9));
    Map<DayOfWeek, List<Window>> week = weekdays(dice.from(3, 4), List.of(afternoon));
    week.put(DayOfWeek.SATURDAY, Entries.windows("10:00-15:30"));
    return week;
  }

  private static Window hoursFrom(int startHalfHour, int halfHours) {
    return new Window(startHalfHour * 30, (startHalfHour + halfHours) * 30);
  }

  private Map<DayOfWeek, List<Window>> weekdays(int count, List<Window> windows) {
    List<DayOfWeek> days = new ArrayList<>(List.of(DayOfWeek.values()).subList(0, 5));
    dice.shuffle(days);
    Map<DayOfWeek, List<Window>> week = new EnumMap<>(DayOfWeek.class);
    days.subList(0, count).forEach(day -> week.put(day, windows));
    return week;
  }

  /**
   * Up to three dates in the first eight weeks: a day off, or a few hours in place of the usual.
   */
  private List<SpecialDay> exceptions() {
    TreeSet<LocalDate> dates = new TreeSet<>();
    Collections.addAll(dates, someDate(), someDate(), someDate());
    return dates.stream()
        .limit(dice.from(0, 3))
        .map(d -> new SpecialDay(d, dice.chance(60) ? List.of() : Entries.windows("14:00-17:00")))
        .toList();
  }

  private LocalDate someDate() {
    return from.plusDays(dice.from(1, 56));
  }
}
