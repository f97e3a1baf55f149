package strickle.plan.why;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/** Says what held a run. */
final class HoldWords {

  private final Names names;
  private final Moments moments;
  private final Course course;
  private final Function<Thing, Usage> usages;

  /** Words for a run; {@code usages} tell how much of a thing others take. */
  HoldWords(Names names, Moments moments, Course course, Function<Thing, Usage> usages) {
    this.names = names;
    this.moments = moments;
    this.course = course;
    this.usages = usages;
  }

  /** The whole sentence. */
  String say(Hold hold) {
    String task = Names.task(course, hold.stage());
    return switch (hold) {
      case Hold.Taken taken when taken.things().get(0).isForm() -> form(task, taken);
      case Hold.BrokenOff broken -> brokenOff(task, broken);
      case Hold.MostWait most -> mostWait(task, most);
      case Hold.WantedSoon soon -> wantedSoon(task, soon);
      case Hold.NoPlaceAfter noPlace ->
          task
              + " waits until "
              + moments.say(noPlace.until())
              + ": begun before, what follows it would find no place";
      case Hold.Together together ->
          task
              + " waits until "
              + moments.say(together.until())
              + " to be one lot with "
              + names.runs(together.others());
      case Hold.Settled settled -> task + " is settled for " + moments.say(settled.until());
      case Hold.Nothing nothing ->
          task
              + " could begin "
              + moments.say(nothing.from())
              + " as things stand; the plan has it begin "
              + moments.say(nothing.until());
      default -> task + " waits: " + cause(hold);
    };
  }

  /** The sentence about another run that stood in the way: what that one had waited for. */
  String sayItself(Hold hold) {
    if (hold instanceof Hold.Taken taken && taken.things().get(0).isForm()) {
      return course.run() + " itself waited" + forms(taken, " held");
    }
    return "with " + course.run() + " itself " + say(hold);
  }

  private String form(String task, Hold.Taken taken) {
    boolean own = course.chain().needs().stream().anyMatch(n -> taken.things().contains(n.thing()));
    return task
        + " waits"
        + forms(taken, taken.holders().size() == 1 ? " holds" : " hold")
        + (own ? "" : "; it is needed for what is poured in the same lot");
  }

  private String forms(Hold.Taken taken, String have) {
    List<String> wanted = new ArrayList<>();
    for (int i = 0; i < taken.things().size(); i++) {
      wanted.add(names.wanted(taken.things().get(i), taken.units().get(i)));
    }
    String holders =
        taken.holders().isEmpty() ? broken(taken) : ", which " + names.runs(taken.holders()) + have;
    return " for " + Names.list(wanted) + " until " + moments.say(taken.until()) + holders;
  }

  private String broken(Hold.Taken taken) {
    boolean broken =
        taken.things().stream()
            .anyMatch(thing -> usages.apply(thing).isBrokenAt(taken.until() - 1));
    return broken ? ", when it is whole again" : "";
  }

  /** Why, without saying what for. */
  private String cause(Hold hold) {
    return switch (hold) {
      case Hold.Busy busy when busy.errands().size() > 2 -> allBusy(busy);
      case Hold.Busy busy ->
          Names.list(busy.errands().stream().map(one -> busy(busy, one)).toList());
      case Hold.Closed closed ->
          "nobody who may do it is open from "
              + moments.say(closed.from())
              + " until "
              + moments.say(closed.until());
      case Hold.TooShort tooShort -> tooShort(tooShort);
      case Hold.Taken taken -> station(taken);
      default -> say(hold);
    };
  }

  /** A pour has to fit between opening and closing; other tasks are broken off and gain nothing. */
  private String tooShort(Hold.TooShort hold) {
    String until = moments.say(hold.until());
    String minutes = Moments.lasting(course.task(hold.stage()).minutes());
    return course.chain().stages().get(hold.stage()).whole()
        ? "nobody is open for " + minutes + " on end before " + until
        : "begun before " + until + " it would be broken off at closing and done no sooner";
  }

  /** Of many only the one who is free first is told of. */
  private String allBusy(Hold.Busy busy) {
    Errand first =
        busy.errands().stream().min(Comparator.comparingInt(one -> one.task().end())).orElseThrow();
    List<String> people =
        busy.errands().stream().map(one -> names.person(one.task().person())).toList();
    return Names.list(people) + " are all busy; " + busy(busy, first);
  }

  private String busy(Hold.Busy busy, Errand errand) {
    String last = errand.task().start() > busy.from() ? ", last with " : " with ";
    return names.person(errand.task().person())
        + " is busy until "
        + moments.say(errand.task().end())
        + last
        + names.errand(errand);
  }

  private String station(Hold.Taken taken) {
    Thing thing = taken.things().get(0);
    if (thing.isForm()) {
      return names.wanted(thing, taken.units().get(0))
          + " is held until "
          + moments.say(taken.until());
    }
    Usage usage = usages.apply(thing);
    boolean full = usage.takenAt(taken.until() - 1) >= usage.count();
    boolean one = taken.holders().size() == 1;
    return "the "
        + names.thing(thing)
        + (full ? " is full until " : " has too few places left until ")
        + moments.say(taken.until())
        + ", "
        + names.runs(taken.holders())
        + (one ? " lies there" : " lie there");
  }

  private String brokenOff(String task, Hold.BrokenOff broken) {
    return names.person(broken.person())
        + " breaks off "
        + task
        + " at closing, "
        + moments.say(broken.from())
        + ", and goes on "
        + moments.say(broken.until());
  }

  private String mostWait(String task, Hold.MostWait most) {
    double hours = course.chain().stages().get(most.later()).atMostHours().orElse(0);
    String within = " within " + Moments.hours(hours);
    String because = most.nested().isEmpty() ? "" : ": otherwise " + cause(most.nested().get(0));
    if (most.later() == Chain.DEMOULD) {
      return "poured later, "
          + moments.say(most.until())
          + ", so that it can be taken out"
          + within
          + because;
    }
    return task
        + " begins later, "
        + moments.say(most.until())
        + ", so that "
        + Names.task(course, most.later())
        + " can follow "
        + (most.later() == most.stage() + 1 ? "" : Names.task(course, most.later() - 1) + " ")
        + within.substring(1)
        + because;
  }

  private String wantedSoon(String task, Hold.WantedSoon soon) {
    String others = soon.by().isEmpty() ? "those after it" : names.runs(soon.by());
    return task
        + " waits until "
        + moments.say(soon.until())
        + ": begun before, "
        + names.wanted(soon.thing(), soon.missing())
        + " would not be back in time for "
        + others;
  }
}
