package strickle.demo;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import strickle.book.Channel;
import strickle.book.Climate;
import strickle.book.Demand;
import strickle.book.Form;
import strickle.book.Person;
import strickle.book.SpecialDay;
import strickle.book.Use;
import strickle.book.Window;

/** Short ways to write the entries of a studio book that are one line each. */
final class Entries {

  private static final List<String> DAYS = List.of("MON", "TUE", "WED", "THU", "FRI", "SAT", "SUN");

  private Entries() {}

  /** An amount of money, a quantity or a percentage, written out in decimals. */
  static BigDecimal amount(String decimals) {
    return new BigDecimal(decimals);
  }

  /** A person; hours as {@link #week} wants them. */
  static Person person(
      String id, String name, Map<DayOfWeek, List<Window>> hours, SpecialDay... exceptions) {
    return new Person(id, name, hours, List.of(exceptions));
  }

  /** Weekly hours: each day as "SAT 09:00-12:30 13:15-17:00". */
  static Map<DayOfWeek, List<Window>> week(String... days) {
    Map<DayOfWeek, List<Window>> hours = new EnumMap<>(DayOfWeek.class);
    for (String day : days) {
      List<String> words = List.of(day.split(" ", -1));
      DayOfWeek weekday = DayOfWeek.of(DAYS.indexOf(words.getFirst()) + 1);
      hours.put(weekday, words.stream().skip(1).map(Window::parse).toList());
    }
    return Collections.unmodifiableMap(hours);
  }

  /** A date with other hours than its weekday's; no window means closed. */
  static SpecialDay on(String date, String... windows) {
    return new SpecialDay(LocalDate.parse(date), windows(windows));
  }

  /** Opening windows, each as "09:00-12:30". */
  static List<Window> windows(String... windows) {
    return Arrays.stream(windows).map(Window::parse).toList();
  }

  /** The room from a local time on: degrees Celsius and percent of relative humidity. */
  static Climate room(String from, double temperatureC, double humidityPercent) {
    return new Climate(LocalDateTime.parse(from), temperatureC, OptionalDouble.of(humidityPercent));
  }

  /** A form: how many there are, what one costs, how many castings one lasts. */
  static Form form(String id, String name, int count, String costEach, int lifeCastings) {
    return new Form(id, name, count, amount(costEach), lifeCastings);
  }

  /** A quantity of a material, in the material's unit. */
  static Use use(String material, String quantity) {
    return new Use(material, amount(quantity));
  }

  /** A channel: fee in percent of the takings, fee per sale, discount on the list price. */
  static Channel channel(String id, String name, String fee, String fixedFee, String discount) {
    return new Channel(id, name, amount(fee), amount(fixedFee), amount(discount));
  }

  /** Expected demand for a piece at a fair: at least, most likely, at most. */
  static Demand demand(String piece, int low, int likely, int high, String price) {
    return new Demand(piece, low, likely, high, Optional.of(amount(price)));
  }
}
