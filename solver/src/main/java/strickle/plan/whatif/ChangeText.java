package strickle.plan.whatif;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.Nearest;
import strickle.book.SpecialDay;
import strickle.book.Window;

/** Reads a change as it is written: a kind, a colon, and what of it. */
public final class ChangeText {

  /** One way to write a change. */
  private record Way(Pattern pattern, Function<MatchResult, Change> change) {

    static Way of(String regex, Function<MatchResult, Change> change) {
      return new Way(Pattern.compile(regex), change);
    }
  }

  /** How a change of a kind is written, an example for each way, and what reads it. */
  private record Kind(String example, List<Way> ways) {}

  private static final String DATE = "([0-9]{4}-[0-9]{2}-[0-9]{2})";
  private static final String HOURS = "([0-9:]+-[0-9:]+)";
  private static final String NUMBER = "(-?[0-9]{1,8}(?:[.][0-9]{1,6})?)";

  private static final Map<String, Kind> KINDS = kinds();

  private ChangeText() {}

  private static Map<String, Kind> kinds() {
    Map<String, Kind> kinds = new LinkedHashMap<>();
    kinds.put("form", units("form:ID+1", MoreForms::new));
    kinds.put("hours", hours());
    kinds.put("helper", helper());
    kinds.put("room", room());
    kinds.put("batch", batch());
    kinds.put("places", units("places:ID+4", MorePlaces::new));
    return Collections.unmodifiableMap(kinds);
  }

  private static Kind units(String example, BiFunction<String, Integer, Change> change) {
    Way way =
        Way.of(
            "(.+)[+]([0-9]{1,9})",
            got -> change.apply(got.group(1), Integer.valueOf(got.group(2))));
    return new Kind(example, List.of(way));
  }

  private static Kind hours() {
    Way way =
        Way.of(
            "(.+):" + DATE + "T" + HOURS,
            got -> new MoreHours(got.group(1), date(got.group(2)), Window.parse(got.group(3))));
    return new Kind("hours:ID:2027-04-10T09:00-12:00", List.of(way));
  }

  private static Kind helper() {
    Way allDay = Way.of(DATE, got -> new Helper(date(got.group(1)), Optional.empty()));
    Way window =
        Way.of(
            DATE + "T" + HOURS,
            got -> new Helper(date(got.group(1)), Optional.of(Window.parse(got.group(2)))));
    String example = "helper:2027-04-10 or helper:2027-04-10T09:00-12:00";
    return new Kind(example, List.of(allDay, window));
  }

  private static Kind room() {
    Way by = Way.of("[+]" + NUMBER, got -> new WarmerRoom(number(got.group(1))));
    Way to = Way.of(NUMBER, got -> new RoomAtLeast(number(got.group(1))));
    return new Kind("room:+2, by so many degrees, or room:20, to so many", List.of(by, to));
  }

  private static Kind batch() {
    Way way = Way.of(NUMBER, got -> new BatchLimit(number(got.group(1))));
    return new Kind("batch:12000, in grams", List.of(way));
  }

  /**
   * Reads a change.
   *
   * @param text such as {@code form:tub-a+1}, {@code hours:ana:2027-04-10T09:00-12:00}, {@code
   *     helper:2027-04-10}, {@code room:+2}, {@code room:20}, {@code batch:12000}, {@code
   *     places:rack+4}
   * @throws Faulty with an empty path when it is none; whether a book has the ids is for the change
   *     to say
   */
  public static Change read(String text) {
    int colon = text.indexOf(':');
    String word = colon < 0 ? text : text.substring(0, colon);
    Kind kind = KINDS.get(word);
    if (kind == null) {
      throw refused(text, unknown(word));
    }
    if (colon < 0) {
      throw refused(text, kind.example());
    }
    return read(text, text.substring(colon + 1), kind);
  }

  private static Change read(String text, String rest, Kind kind) {
    for (Way way : kind.ways()) {
      Matcher matcher = way.pattern().matcher(rest);
      if (matcher.matches()) {
        try {
          return way.change().apply(matcher);
        } catch (Faulty faulty) {
          throw refused(text, faulty.faults().get(0).right());
        } catch (DateTimeException noDate) {
          throw refused(text, "a date that is in the calendar");
        }
      }
    }
    throw refused(text, kind.example());
  }

  private static String unknown(String word) {
    return Nearest.to(word, KINDS.keySet())
        .map(near -> KINDS.get(near).example())
        .orElse(
            "one of form:ID+1, hours:ID:2027-04-10T09:00-12:00, helper:2027-04-10, room:+2,"
                + " room:20, batch:12000, places:ID+4");
  }

  private static double number(String text) {
    return Double.parseDouble(text);
  }

  private static LocalDate date(String text) {
    // A year that no plan can be of is refused here and not where the change is made.
    return new SpecialDay(LocalDate.parse(text), List.of()).date();
  }

  private static Faulty refused(String text, String right) {
    return new Faulty(List.of(new Fault("", "\"" + text + "\"", right)));
  }
}
