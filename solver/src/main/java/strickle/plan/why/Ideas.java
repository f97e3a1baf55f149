package strickle.plan.why;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import strickle.book.Person;

/** What may free a run from a hold; whether it does is for {@link Freeing} to try. */
final class Ideas {

  /** Nobody is asked to work before six in the morning or after ten at night. */
  private static final int FIRST_HOUR = 6;

  private static final int LAST_HOUR = 22;
  private static final int QUARTER = 15;
  private static final int HOUR = 60;

  private final Floor floor;
  private final Course course;
  private final Holds holds;
  private final List<Course> siblings;

  /** Ideas for a run; {@code siblings} are all runs that its order waits for, with itself. */
  Ideas(Floor floor, Course course, Holds holds, List<Course> siblings) {
    this.floor = floor;
    this.course = course;
    this.holds = holds;
    this.siblings = siblings.stream().filter(one -> one.piece().equals(course.piece())).toList();
  }

  /** Every idea for a hold, the plainest first. */
  List<Relief> of(Hold hold) {
    return switch (hold) {
      case Hold.Taken taken -> taken(taken);
      case Hold.WantedSoon soon ->
          List.of(Relief.More.of(List.of(soon.thing()), List.of(soon.missing())));
      case Hold.Busy busy -> concat(hours(hold, allowed(hold)), helper(busy));
      case Hold.Closed closed -> hours(closed, allowed(hold));
      case Hold.TooShort tooShort -> hours(tooShort, allowed(hold));
      case Hold.BrokenOff brokenOff -> hours(brokenOff, brokenOff.from());
      case Hold.MostWait mostWait -> mostWait.nested().stream().flatMap(n -> nested(n)).toList();
      case Hold.Settled settled -> List.of(new Relief.Unpinned());
      case Hold.NoPlaceAfter noPlace -> List.of();
      case Hold.Together together -> List.of();
      case Hold.Nothing nothing -> List.of();
    };
  }

  private List<Relief> taken(Hold.Taken taken) {
    Relief one = Relief.More.of(taken.things(), taken.missing());
    Relief all = Relief.More.of(taken.things(), taken.units());
    return one.equals(all) ? List.of(one) : List.of(one, all);
  }

  private Stream<Relief> nested(Hold hold) {
    return hold instanceof Hold.Busy || hold instanceof Hold.Closed || hold instanceof Hold.TooShort
        ? hours(hold, hold.from()).stream()
        : of(hold).stream();
  }

  /** A hold that is not of the run as planned has no task to ask; it then begins with itself. */
  private int allowed(Hold hold) {
    return Math.min(hold.from(), holds.allowed(hold.stage()));
  }

  /** Time enough for this run and, as another idea, for all runs of the order. */
  private List<Relief> hours(Hold hold, int from) {
    Stage stage = course.chain().stages().get(hold.stage());
    List<String> whoMay =
        stage.by().isEmpty() ? floor.book().people().stream().map(Person::id).toList() : stage.by();
    return minutes(hold)
        .flatMap(
            minutes ->
                whoMay.stream()
                    .flatMap(id -> hours(id, from, hold.until(), minutes).stream())
                    .min(Comparator.comparingInt(Relief.Hours::from))
                    .stream())
        .map(idea -> (Relief) idea)
        .toList();
  }

  private Stream<Integer> minutes(Hold hold) {
    int stage = hold.stage();
    int own =
        stage == Chain.POUR
            ? course.task(stage).minutes()
            : course.chain().stages().get(stage).minutes();
    int all = siblings.stream().mapToInt(one -> one.chain().stages().get(stage).minutes()).sum();
    int most = (LAST_HOUR - FIRST_HOUR) * HOUR;
    return Stream.of(own, Math.max(own, all)).distinct().filter(minutes -> minutes <= most);
  }

  /** The first time within {@code from} to {@code until} that somebody could work longer. */
  private Optional<Relief.Hours> hours(String person, int from, int until, int minutes) {
    Hands hands = floor.hands(person);
    int at = from;
    while (at < until) {
      int opens = hands.opens(at);
      if (opens == at) {
        at = hands.closes(at);
        continue;
      }
      int begin = waking(at, minutes);
      if (begin < until && begin + minutes <= opens && !hands.breaksOff(begin)) {
        int end = Math.min(opens, quarter(begin + minutes));
        return Optional.of(new Relief.Hours(person, begin, end));
      }
      at = opens;
    }
    return Optional.empty();
  }

  private List<Relief> helper(Hold.Busy busy) {
    return minutes(busy)
        .map(minutes -> helper(busy, waking(busy.from(), minutes), minutes))
        .filter(helper -> helper.from() < busy.until())
        .map(helper -> (Relief) helper)
        .toList();
  }

  private Relief.Helper helper(Hold.Busy busy, int begin, int minutes) {
    return new Relief.Helper(Names.task(course, busy.stage()), begin, quarter(begin + minutes));
  }

  /** The first full quarter of an hour from which so many minutes lie in waking hours. */
  private int waking(int from, int minutes) {
    int at = quarter(from);
    LocalDateTime local = floor.moments().local(at);
    LocalDateTime morning = local.toLocalDate().atTime(FIRST_HOUR, 0);
    int minuteOfDay = local.getHour() * HOUR + local.getMinute();
    if (minuteOfDay < FIRST_HOUR * HOUR) {
      return floor.moments().minute(morning);
    }
    boolean tooLate = minuteOfDay + minutes > LAST_HOUR * HOUR && minuteOfDay > FIRST_HOUR * HOUR;
    return tooLate ? floor.moments().minute(morning.plusDays(1)) : at;
  }

  private int quarter(int minute) {
    int past = floor.moments().local(minute).getMinute() % QUARTER;
    return past == 0 ? minute : minute + QUARTER - past;
  }

  private static List<Relief> concat(List<Relief> some, List<Relief> more) {
    List<Relief> all = new ArrayList<>(some);
    all.addAll(more);
    return all;
  }
}
