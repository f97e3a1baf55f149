package strickle.plan.whatif;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import strickle.book.Book;
import strickle.book.Climate;
import strickle.plan.Lot;
import strickle.plan.Plan;
import strickle.plan.Planning;
import strickle.plan.Run;
import strickle.plan.whatif.PlanReading.Holding;

/** What is worth trying on a plan when nobody says: about a dozen and a half at the most. */
public final class Ideas {

  private static final double WARM_C = 20;

  /** A bucket half as large again, in full half kilograms. */
  private static final double LARGER = 1.5;

  private static final double STEP_GRAMS = 500;

  /** Windows and helpers beside those that the reasons name; each of those leaves one less. */
  private static final int WINDOWS = 4;

  private static final int FEWEST_WINDOWS = 2;
  private static final int HELPERS = 2;
  private static final int FEWEST_HELPERS = 1;

  private final Book book;
  private final Plan plan;
  private final PlanReading reading;

  private Ideas(Book book, Plan plan) {
    this.book = book;
    this.plan = plan;
    this.reading = new PlanReading(book, plan);
  }

  /**
   * The changes worth trying, each once: those that the reasons of late orders name; more of the
   * contended forms; opening windows and days for a helper in which waiting tasks could be done; a
   * warmer room when it is below 20 °C during the plan; a larger batch limit when a lot is full by
   * weight; more places when a station is full.
   *
   * @param plan a plan of this book that the audit finds nothing in
   */
  public static List<Change> of(Book book, Plan plan) {
    return new Ideas(book, plan).all();
  }

  private List<Change> all() {
    if (plan.lots().isEmpty()) {
      return List.of();
    }
    Set<Change> ideas = new LinkedHashSet<>(new NamedIdeas(book, plan).all());
    int windows = WINDOWS - count(ideas, MoreHours.class);
    int helpers = HELPERS - count(ideas, Helper.class);
    ideas.addAll(new FormIdeas(book, plan, reading).all());
    HourIdeas hours = new HourIdeas(book, reading);
    ideas.addAll(hours.windows(Math.max(FEWEST_WINDOWS, windows)));
    ideas.addAll(hours.helpers(Math.max(FEWEST_HELPERS, helpers)));
    if (isCool()) {
      ideas.add(new RoomAtLeast(WARM_C));
    }
    if (plan.lots().stream().anyMatch(this::isFull)) {
      ideas.add(largerBatch());
    }
    ideas.addAll(places());
    return withoutTwins(ideas);
  }

  /** Of several changes together one order is enough. */
  private static List<Change> withoutTwins(Set<Change> ideas) {
    Set<Set<Change>> seen = new HashSet<>();
    return ideas.stream()
        .filter(
            one -> seen.add(one instanceof Together all ? Set.copyOf(all.changes()) : Set.of(one)))
        .toList();
  }

  private static int count(Set<Change> ideas, Class<? extends Change> kind) {
    return (int) ideas.stream().filter(kind::isInstance).count();
  }

  /** Whether it is below 20 °C at any time of the plan. */
  private boolean isCool() {
    LocalDateTime from = Planning.begins(plan).toLocalDateTime();
    LocalDateTime last = plan.totals().lastReady().toLocalDateTime();
    List<Climate> climate = book.studio().climate();
    for (int i = 0; i < climate.size(); i++) {
      boolean over = i + 1 < climate.size() && !climate.get(i + 1).from().isAfter(from);
      boolean begun = climate.get(i).from().isBefore(last);
      if (begun && !over && climate.get(i).temperatureC() < WARM_C) {
        return true;
      }
    }
    return false;
  }

  /** Whether the batch limit keeps a lot from being poured together with another one. */
  private boolean isFull(Lot lot) {
    return plan.lots().stream()
        .filter(other -> other.mix().equals(lot.mix()) && !other.id().equals(lot.id()))
        .filter(other -> lot.wetGrams() + other.wetGrams() > book.studio().batchLimitGrams())
        .anyMatch(other -> isWorkable(lot, other));
  }

  /** Whether a lot could be worked with one casting more of another. */
  private boolean isWorkable(Lot lot, Lot other) {
    int pouring = lot.runs().stream().mapToInt(run -> run.castings() * pourMinutes(run)).sum();
    int least = other.runs().stream().mapToInt(this::pourMinutes).min().orElseThrow();
    return pouring + least <= book.mix(lot.mix()).workingMinutes();
  }

  private int pourMinutes(Run run) {
    return book.mould(book.piece(run.piece()).mould()).pourMinutes();
  }

  private Change largerBatch() {
    double limit = book.studio().batchLimitGrams();
    return new BatchLimit(Math.ceil(limit * LARGER / STEP_GRAMS) * STEP_GRAMS);
  }

  /** As many places more as the largest run takes, where that many are not always free. */
  private List<Change> places() {
    List<Change> ideas = new ArrayList<>();
    for (Map.Entry<String, List<Holding>> entry : reading.placeHoldings().entrySet()) {
      int places = book.station(entry.getKey()).places();
      int largest = entry.getValue().stream().mapToInt(Holding::units).max().orElseThrow();
      int taken = entry.getValue().stream().mapToInt(Holding::units).sum();
      boolean lacks =
          FormIdeas.fullMinutes(entry.getValue(), Math.max(1, places - largest + 1)) > 0;
      if (taken > places && lacks) {
        ideas.add(new MorePlaces(entry.getKey(), largest));
      }
    }
    return ideas;
  }
}
