package strickle.plan.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strickle.book.Order;

/** The last word on a late order: what would free it, or that nothing would. */
final class Way {

  private static final String DATE = "a later date or an earlier start";

  private final Floor floor;
  private final Serving.Service service;
  private final Moments moments;
  private final ReliefWords words;
  private final Freeing freeing;
  private final Course course;
  private final int due;
  private final int worthwhile;

  Way(Floor floor, Serving.Service service, Names names, int worthwhile) {
    this.floor = floor;
    this.service = service;
    this.moments = floor.moments();
    this.course = service.last().orElseThrow();
    this.due = moments.minute(service.order().due());
    this.worthwhile = worthwhile;
    this.words = new ReliefWords(names, moments, due);
    this.freeing = new Freeing(floor, service.order(), worthwhile);
  }

  /** One sentence, or two when what helps does not help enough and nothing ever could. */
  List<String> say(Alone alone) {
    Freeing.Freed again = freeing.again();
    if (freeing.inTime(again)) {
      return List.of(sayAgain(again));
    }
    List<Freeing.Freed> ways = freeing.ways();
    if (!ways.isEmpty() && freeing.inTime(ways.get(0))) {
      return List.of(words.say(ways));
    }
    boolean forward = service.ready() - again.ready() >= worthwhile;
    if (ways.isEmpty() && !forward) {
      return List.of(
          bound(alone, DATE + " is all that could have it in time").orElseGet(() -> others(alone)));
    }
    List<String> lines =
        new ArrayList<>(bound(alone, "only " + DATE + " would have it in time").stream().toList());
    lines.add(ways.isEmpty() ? sayAgain(again) : words.say(ways));
    return lines;
  }

  /** The changes that the sentence offers, each way by itself; none when nothing new is needed. */
  List<Freeing.Freed> offered() {
    return freeing.inTime(freeing.again()) ? List.of() : freeing.ways();
  }

  private String sayAgain(Freeing.Freed again) {
    boolean apart =
        again.floor().courses().stream()
            .anyMatch(one -> one.is(course) && !one.lot().equals(course.lot()));
    return words.sayAgain(again, apart ? floor.companions(course) : List.of());
  }

  /** That the route alone is longer than the time there was. */
  private Optional<String> bound(Alone alone, String only) {
    Optional<Integer> ready = alone.ready().filter(at -> at > due);
    if (ready.isEmpty()) {
      return Optional.empty();
    }
    boolean hopeless = alone.readyAroundTheClock().orElse(due) > due;
    return Optional.of(
        "even begun at once and with nothing in its way it takes until "
            + moments.say(ready.get())
            + (hopeless
                ? "; " + only
                : "; a later date, an earlier start or longer hours would help"));
  }

  /** Nothing small helps, though its route is short enough: others have to give way. */
  private String others(Alone alone) {
    if (!service.elders().isEmpty() && service.ready() - service.first() >= worthwhile) {
      return "if "
          + Names.list(service.elders().stream().map(Order::id).toList())
          + " could be served after it, it would be ready "
          + moments.say(service.first())
          + words.late(service.first());
    }
    return alone
        .ready(Serving.of(floor).runs(service.order().id()))
        .filter(ready -> service.ready() - ready >= worthwhile)
        .map(this::toItself)
        .orElse("nothing small would free it; a later date would");
  }

  private String toItself(int ready) {
    return "with the studio to itself it could be ready "
        + moments.say(ready)
        + (ready > due
            ? ", and so late as well; a later date is the plain way out"
            : "; other work would have to give way, or its date be later");
  }
}
