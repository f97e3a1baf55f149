package strickle.plan.why;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import strickle.shop.Calendar;

/**
 * Finds what held the tasks of one run. From the minute a task was allowed by the one before it and
 * by its wait, it asks minute after minute: why not now? Of what stands in the way the longest is
 * taken, and the question is asked again when that is over, until the task starts.
 */
final class Holds {

  private final Floor others;
  private final Floor otherLots;
  private final Course course;
  private final Chain chain;
  private final List<Course> companions;

  private Holds(Floor floor, Course course) {
    this.course = course;
    this.others = floor.without(course);
    this.companions = floor.companions(course);
    this.otherLots = others.without(one -> one.lot().equals(course.lot()));
    this.chain = course.chain().pouredIn(course.task(Chain.POUR).minutes());
  }

  /** Asks for a run that is on this floor. */
  static Holds of(Floor floor, Course course) {
    return new Holds(floor, course);
  }

  /** The minute a task is allowed by the one before it and by its wait. */
  int allowed(int stage) {
    int begins = others.moments().begins();
    if (stage == Chain.POUR) {
      return begins;
    }
    int from = chain.waitFrom(stage, course.task(stage - 1));
    return Math.max(begins, others.over(chain.stages().get(stage), from));
  }

  /** What held a stage, in order of time. */
  List<Hold> at(int stage) {
    List<Hold> holds = new ArrayList<>();
    if (stage < course.done()) {
      return holds;
    }
    int start = course.task(stage).start();
    int at = allowed(stage);
    if (stage == Chain.POUR && course.settled() && at < start) {
      holds.add(new Hold.Settled(stage, at, start));
      at = start;
    }
    while (at < start) {
      List<Hold> next = next(stage, at, start);
      holds.addAll(next);
      at = next.get(next.size() - 1).until();
    }
    breaks(stage, holds);
    return holds;
  }

  /** What stands in the way from a minute on: at least one hold, the last ending after it. */
  private List<Hold> next(int stage, int at, int start) {
    int people = Math.min(start, freeFrom(stage, at));
    Optional<Hold> taken = taken(stage, at, start);
    if (taken.isPresent() && taken.get().until() >= people) {
      return List.of(taken.get());
    }
    if (people > at) {
      return new WhoWas(floor(stage).whoMay(chain.stages().get(stage)), stage).between(at, people);
    }
    return List.of(ahead(stage, at, start).orElseGet(() -> nothing(stage, at, start)));
  }

  private Hold nothing(int stage, int at, int start) {
    return stage == Chain.POUR && !companions.isEmpty()
        ? new Hold.Together(stage, at, start, companions)
        : new Hold.Nothing(stage, at, start);
  }

  private Floor floor(int stage) {
    return stage == Chain.POUR ? otherLots : others;
  }

  /** When the first of those who may do it is free, among those who would end no later. */
  private int freeFrom(int stage, int at) {
    Stage what = chain.stages().get(stage);
    Placed done = course.task(stage);
    return floor(stage).whoMay(what).stream()
        .flatMap(hands -> hands.earliest(at, 0, what.minutes(), what.whole()).stream())
        .filter(place -> place.end() <= done.end())
        .mapToInt(Placed::start)
        .min()
        .orElse(done.start());
  }

  /** The forms or places that are missing for longest. */
  private Optional<Hold> taken(int stage, int at, int start) {
    TreeMap<Integer, List<Need>> missing = new TreeMap<>();
    for (Need need : opening(stage)) {
      int free = Math.min(start, firstFree(need, at));
      if (free > at) {
        missing.computeIfAbsent(free, until -> new ArrayList<>()).add(need);
      }
    }
    return missing.isEmpty()
        ? Optional.empty()
        : Optional.of(taken(stage, at, missing.lastKey(), missing.lastEntry().getValue()));
  }

  private Hold taken(int stage, int at, int until, List<Need> needs) {
    List<Course> holders = new ArrayList<>();
    for (Need need : needs) {
      List<Usage.Holding> there = floor(stage).usage(need.thing()).at(until - 1);
      there.stream()
          .filter(one -> !need.thing().isForm() || one.to() == until)
          .map(Usage.Holding::course)
          .filter(one -> holders.stream().noneMatch(one::is))
          .forEach(holders::add);
    }
    return new Hold.Taken(
        stage,
        at,
        until,
        needs.stream().map(Need::thing).toList(),
        needs.stream().map(Need::units).toList(),
        needs.stream().map(need -> missing(need, at, until)).toList(),
        holders);
  }

  private int missing(Need need, int at, int until) {
    return floor(need.opens()).usage(need.thing()).missing(at, until, need.units());
  }

  /** What begins with a stage; a pour takes the forms of all runs of the lot. */
  private List<Need> opening(int stage) {
    if (stage != Chain.POUR || companions.isEmpty()) {
      return chain.opening(stage);
    }
    TreeMap<String, Integer> units = new TreeMap<>();
    Stream.concat(Stream.of(course), companions.stream())
        .flatMap(run -> run.chain().opening(Chain.POUR).stream())
        .forEach(need -> units.merge(need.thing().id(), need.units(), Integer::sum));
    List<Need> needs = new ArrayList<>();
    units.forEach(
        (id, count) -> needs.add(new Need(Thing.form(id), count, Chain.POUR, Chain.DEMOULD, true)));
    return needs;
  }

  /** From when on a thing is free for as long as it is needed at the very least. */
  private int firstFree(Need need, int at) {
    Usage usage = floor(need.opens()).usage(need.thing());
    int free = at;
    int clear = usage.clearOf(free, leastEnd(need, free), need.units());
    while (clear > free && clear < Usage.NEVER) {
      free = clear;
      clear = usage.clearOf(free, leastEnd(need, free), need.units());
    }
    return clear;
  }

  private int leastEnd(Need need, int start) {
    int end = start + chain.stages().get(need.opens()).minutes();
    if (need.closes() > chain.last()) {
      return end + chain.finalDryMinutes();
    }
    Stage closing = chain.stages().get(need.closes());
    boolean set = need.closes() == Chain.DEMOULD;
    int over = others.over(closing, end - (set ? chain.washMinutes() : 0));
    return over + (need.atEnd() ? closing.minutes() : 0);
  }

  /** Whether what comes later keeps a stage back, though it could itself be begun. */
  private Optional<Hold> ahead(int stage, int at, int start) {
    int could = Math.min(start, startIf(floor(stage), chain, stage, at));
    if (could <= at) {
      return Optional.empty();
    }
    Floor more = floor(stage);
    for (Need need : chain.needs()) {
      more = more.withMore(need.thing(), need.units());
    }
    Floor roomy = more;
    return mostWait(floor(stage), stage, at, could)
        .or(() -> wanted(stage, at, could))
        .or(() -> mostWait(roomy, stage, at, could))
        .or(() -> Optional.of(new Hold.NoPlaceAfter(stage, at, could)));
  }

  /** The first most-wait without which the stage could begin sooner. */
  private Optional<Hold> mostWait(Floor floor, int stage, int at, int until) {
    return IntStream.rangeClosed(stage + 1, chain.last())
        .filter(later -> startIf(floor, chain.withoutMost(i -> i == later), stage, at) < until)
        .mapToObj(later -> mostWait(floor, stage, at, until, later))
        .findFirst();
  }

  private int startIf(Floor floor, Chain asked, int stage, int at) {
    return Placing.place(floor, asked, course.tasks().subList(0, stage), at)
        .map(tasks -> tasks.get(stage).start())
        .orElse(Usage.NEVER);
  }

  private Hold mostWait(Floor floor, int stage, int at, int until, int later) {
    Chain free = chain.withoutMost(i -> i == later);
    List<Hold> nested =
        Placing.place(floor, free, course.tasks().subList(0, stage), at)
            .map(tasks -> new Holds(floor.plus(apart(tasks)), apart(tasks)).longest(later))
            .orElse(List.of());
    return new Hold.MostWait(stage, at, until, later, nested);
  }

  private Course apart(List<Placed> tasks) {
    return course.unsettled().moved(tasks);
  }

  /** The longest thing that held a stage and that a person can do something about. */
  private List<Hold> longest(int stage) {
    return at(stage).stream()
        .filter(hold -> !(hold instanceof Hold.MostWait || hold instanceof Hold.Nothing))
        .filter(hold -> !(hold instanceof Hold.NoPlaceAfter))
        .max(Comparator.comparingInt(Hold::minutes))
        .stream()
        .toList();
  }

  private Optional<Hold> wanted(int stage, int at, int until) {
    for (Need need : chain.needs()) {
      Floor more = floor(stage).withMore(need.thing(), need.units());
      if (need.opens() >= stage && startIf(more, chain, stage, at) < until) {
        Usage usage = floor(stage).usage(need.thing());
        int end = leastEnd(need, until);
        List<Course> by =
            usage.within(at, end).stream()
                .filter(one -> one.from() > at)
                .map(Usage.Holding::course)
                .toList();
        return Optional.of(new Hold.WantedSoon(stage, at, until, need.thing(), need.units(), by));
      }
    }
    return Optional.empty();
  }

  /** The times within a task in which nobody works on it. */
  private void breaks(int stage, List<Hold> holds) {
    Placed task = course.task(stage);
    if (task.broken() > 0) {
      List<Calendar.Spell> spells = others.hands(task.person()).spells(task);
      for (int i = 1; i < spells.size(); i++) {
        int from = spells.get(i - 1).end();
        holds.add(new Hold.BrokenOff(stage, from, spells.get(i).start(), task.person()));
      }
    }
  }
}
