package strickle.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import strickle.book.Book;
import strickle.book.Piece;
import strickle.plan.why.Gaps;
import strickle.shop.Activity;
import strickle.shop.Calendar;
import strickle.shop.Family;
import strickle.shop.Hold;
import strickle.shop.Kind;
import strickle.shop.Schedule;
import strickle.shop.Value;

/**
 * Fills what a book needs beyond a plan into the plan's gaps: every task that is planned stays as
 * it is, and further lots go where they fit.
 */
public final class Filling {

  /** So many lots are laid out to find the best size of a run; more castings get large runs. */
  private static final int MOST_TRIED = 300;

  private final StudioShop studio;
  private final Plan plan;
  private final List<String> people;
  private final List<String> pieces;
  private final Optional<Arrivals> arrivals;

  private Filling(Book book, Plan plan) {
    StudioTime time = new StudioTime(plan.from().toInstant(), book.studio().timeZone());
    int end = (int) time.minute(plan.totals().lastReady().toInstant());
    Needs needs = Needs.of(book, Cover.of(plan.coverPercent()));
    int horizon = end + Planning.horizon(book, time);
    this.studio = Compiler.compile(book, time, horizon, needs, List.of());
    this.plan = plan;
    this.people = book.people().stream().map(one -> one.id()).toList();
    this.pieces = studio.pieces().stream().map(Piece::id).toList();
    this.arrivals = plan.orderingFrom().map(now -> Arrivals.of(book, needs, time, now));
  }

  /**
   * The plan with all that the book needs.
   *
   * @param book the book the plan was made from, with further orders
   * @param plan one that breaks no rule of its book
   * @return nothing when the hours leave no gap for all of it
   */
  public static Optional<Plan> of(Book book, Plan plan) {
    Filling filling = new Filling(book, plan);
    return filling.filled().map(gaps -> Served.of(book, filling.plan(gaps)).plan());
  }

  private Optional<Gaps> filled() {
    Map<String, Calendar> hours = new HashMap<>();
    for (int i = 0; i < people.size(); i++) {
      hours.put(people.get(i), studio.shop().workers().get(i));
    }
    Optional<Gaps> gaps = Optional.of(Gaps.of(studio.book(), plan, hours));
    for (int kind = 0; kind < pieces.size(); kind++) {
      int one = kind;
      gaps = gaps.flatMap(before -> with(before, one));
    }
    return gaps;
  }

  /** With what is missing of a kind, in runs of the size with which all is ready first. */
  private Optional<Gaps> with(Gaps before, int kind) {
    String piece = pieces.get(kind);
    int planned =
        before.runs().stream()
            .filter(run -> run.piece().equals(piece))
            .mapToInt(Gaps.Laid::castings)
            .sum();
    int missing = studio.shop().kinds().get(kind).jobs() - planned;
    Optional<Gaps> best = missing <= 0 ? Optional.of(before) : Optional.empty();
    int lots = 0;
    for (int size = Math.min(missing, most(kind)); size > 0 && lots < MOST_TRIED; size--) {
      Optional<Gaps> next = with(before, kind, missing, size);
      lots += (missing + size - 1) / size;
      if (next.isPresent() && (best.isEmpty() || ready(next.get()) < ready(best.get()))) {
        best = next;
      }
    }
    return best;
  }

  private Optional<Gaps> with(Gaps before, int kind, int castings, int size) {
    Piece piece = studio.pieces().get(kind);
    // What further lots lack is waited for before their pour, even if it is for a later step.
    int from = arrivals.map(some -> some.first(piece)).orElse(0);
    Optional<Gaps> gaps = Optional.of(before);
    for (int left = castings; left > 0; left -= size) {
      int run = Math.min(size, left);
      gaps = gaps.flatMap(one -> one.with(piece, run, from));
    }
    return gaps;
  }

  /** When the last of the further runs is ready. */
  private int ready(Gaps gaps) {
    int planned = plan.lots().stream().mapToInt(lot -> lot.runs().size()).sum();
    return gaps.runs().stream().skip(planned).mapToInt(Gaps.Laid::ready).max().orElse(0);
  }

  /** The most castings of a kind that one run can have. */
  private int most(int kind) {
    int castings = 1;
    while (castings < studio.shop().kinds().get(kind).jobs() && fits(kind, castings + 1)) {
      castings++;
    }
    return castings;
  }

  private boolean fits(int index, int castings) {
    Kind kind = studio.shop().kinds().get(index);
    Family family = studio.shop().families().get(kind.family());
    for (int measure = 0; measure < family.limits().size(); measure++) {
      if (castings * kind.amounts().get(measure) > family.limits().get(measure)) {
        return false;
      }
    }
    Activity pour = kind.chain().get(0);
    int minutes = family.sharedMinutes() + pour.fixedMinutes() + castings * pour.eachMinutes();
    return minutes <= family.longestMinutes()
        && kind.chain().stream()
            .flatMap(activity -> activity.holds().stream())
            .allMatch(hold -> castings * hold.unitsEach() <= capacity(hold));
  }

  private int capacity(Hold hold) {
    return studio.shop().resources().get(hold.resource()).capacity();
  }

  private Plan plan(Gaps gaps) {
    Map<String, List<Gaps.Laid>> byLot =
        gaps.runs().stream()
            .collect(
                Collectors.groupingBy(Gaps.Laid::lot, LinkedHashMap::new, Collectors.toList()));
    List<Schedule.Lot> lots = new ArrayList<>();
    for (List<Gaps.Laid> runs : byLot.values()) {
      Schedule.Placed pour = placed(runs.get(0).tasks().get(0));
      lots.add(new Schedule.Lot(pour, runs.stream().map(this::run).toList()));
    }
    List<Integer> met = studio.orders().stream().map(order -> 0).toList();
    Schedule schedule = new Schedule(new Value(0, 0, 0), lots, met, 0);
    return Assembler.plan(studio, schedule, plan.seed(), plan.coverPercent())
        .waiting(plan.orderingFrom());
  }

  private Schedule.Run run(Gaps.Laid run) {
    List<Schedule.Placed> rest = run.tasks().stream().skip(1).map(this::placed).toList();
    return new Schedule.Run(pieces.indexOf(run.piece()), run.castings(), rest, run.ready());
  }

  private Schedule.Placed placed(Gaps.Stint stint) {
    int worker = people.indexOf(stint.person());
    int worked = studio.shop().workers().get(worker).worked(stint.start());
    return new Schedule.Placed(worker, worked, stint.minutes(), stint.start(), stint.end());
  }
}
