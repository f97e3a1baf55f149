package strickle.shop;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * A small invented shop with a bit of everything: workers with gaps in their hours, pauses, waits
 * with least and most on clocks of changing rate, holds of every ending, lots, settled lots, links,
 * due dates by count.
 *
 * @param shop the shop
 * @param paces its clocks, as tests know them
 */
record RandomShop(Shop shop, List<Pace> paces) {

  static final int HORIZON = 4000;

  /** In this order: the last is for the end of a chain only. */
  private static final List<Hold.Until> UNTIL =
      List.of(Hold.Until.START, Hold.Until.END, Hold.Until.DONE);

  private static final int DAY = 200;

  static RandomShop of(long seed) {
    return new Maker(new Random(seed)).make();
  }

  /** Puts one shop together. */
  private static final class Maker {

    private final Random random;
    private final ShopDraft draft = new ShopDraft().horizon(HORIZON);
    private final List<Pace> paces = new ArrayList<>(List.of(Pace.WALL));
    private int workers;
    private int[] capacities;
    private int families;

    /** Who does the first activity of a family's lots. */
    private Integer[][] pourers;

    /** What may be linked: single jobs that never share. */
    private final List<Integer> alone = new ArrayList<>();

    private Maker(Random random) {
      this.random = random;
    }

    private RandomShop make() {
      draft.lateUnit(1 + random.nextInt(60));
      workers = 1 + random.nextInt(3);
      IntStream.range(0, workers).forEach(i -> draft.worker(hours()));
      IntStream.range(0, random.nextInt(2)).forEach(i -> clock());
      capacities = random.ints(1 + random.nextInt(3), 1, 6).toArray();
      IntStream.of(capacities).forEach(draft::resource);
      families = 1 + random.nextInt(3);
      pourers = new Integer[families][];
      IntStream.range(1, families).forEach(i -> draft.family(family(i)));
      int kinds = 1 + random.nextInt(5);
      IntStream.range(0, kinds).forEach(this::kind);
      links();
      IntStream.range(0, random.nextInt(4)).forEach(i -> due());
      settled();
      return new RandomShop(draft.shop(), List.copyOf(paces));
    }

    /** A window or two a day; some days are off, and some windows touch. */
    private Calendar hours() {
      List<Integer> opens = new ArrayList<>();
      List<Integer> closes = new ArrayList<>();
      for (int day = 0; day < HORIZON; day += DAY) {
        if (random.nextInt(6) > 0) {
          int open = day + random.nextInt(40);
          int noon = open + 40 + random.nextInt(30);
          int again = noon + random.nextInt(2) * random.nextInt(20);
          opens.addAll(List.of(open, again));
          closes.addAll(List.of(noon, again + 40 + random.nextInt(20)));
        }
      }
      return Calendar.of(ints(opens), ints(closes));
    }

    private void clock() {
      Pace pace = Pace.any(random, HORIZON / 8);
      paces.add(pace);
      draft.clock(pace.clock());
    }

    private Family family(int index) {
      int shared = random.nextInt(12);
      pourers[index] = some(workers);
      List<Long> limits = List.of(2L + random.nextInt(6), 5L + random.nextInt(20));
      int longest = random.nextInt(4) == 0 ? 25 + random.nextInt(10) : Integer.MAX_VALUE;
      return new Family("family " + index, shared, random.nextInt(shared + 1), limits, longest);
    }

    private void kind(int index) {
      int family = random.nextInt(families);
      boolean single = family == 0 && random.nextBoolean();
      int jobs = single ? 1 : random.nextInt(5);
      if (single) {
        alone.add(index);
      }
      int length = 1 + random.nextInt(4);
      ActivityDraft[] chain = new ActivityDraft[length];
      int[] left = capacities.clone();
      for (int i = 0; i < length; i++) {
        chain[i] = i == 0 && family > 0 ? pour(family) : activity();
        if (i > 0) {
          wait(chain[i]);
        }
        hold(chain[i], i, length, family == 0, left);
      }
      List<Long> amounts =
          family == 0 ? List.of(1L) : List.of(1L + random.nextInt(2), 1L + random.nextInt(6));
      draft.kind(family, jobs, amounts, random.nextInt(100), chain);
    }

    /** The first activity of a lot. */
    private ActivityDraft pour(int family) {
      return ActivityDraft.of(random.nextInt(4)).each(1 + random.nextInt(5)).by(pourers[family]);
    }

    private ActivityDraft activity() {
      if (random.nextInt(5) == 0) {
        return ActivityDraft.of(random.nextInt(30)).each(random.nextInt(6));
      }
      ActivityDraft one = ActivityDraft.of(1 + random.nextInt(15)).each(random.nextInt(6));
      return random.nextBoolean() ? one.by(some(workers)).pausing() : one.by(some(workers));
    }

    private void wait(ActivityDraft one) {
      double hours = random.nextInt(3) == 0 ? 0 : random.nextInt(64) / 16.0;
      one.after(random.nextInt(paces.size()), hours);
      if (random.nextInt(3) == 0) {
        one.within((int) (hours * 60 * 8) + DAY / 4 + random.nextInt(2 * DAY));
      }
    }

    /** Takes what it holds off {@code left}, so that no job is in its own way. */
    private void hold(ActivityDraft one, int index, int length, boolean single, int[] left) {
      int least = index == 0 && !single ? 1 : index;
      for (int i = random.nextInt(3); i > 0 && least < length; i--) {
        int last = least + random.nextInt(length - least);
        boolean atTheEnd = last == length - 1;
        Hold.Until until = UNTIL.get(random.nextInt(atTheEnd ? 3 : 2));
        int resource = random.nextInt(capacities.length);
        if (left[resource] > 0) {
          int units = 1 + random.nextInt(Math.min(2, left[resource]));
          left[resource] -= units;
          one.holding(new Hold(resource, units, last, until));
        }
      }
    }

    /** Links from earlier kinds to later ones, so that none goes round. */
    private void links() {
      for (int before = 0; before < alone.size(); before++) {
        for (int after = before + 1; after < alone.size(); after++) {
          if (random.nextBoolean()) {
            draft.link(alone.get(before), alone.get(after), random.nextInt(50));
          }
        }
      }
    }

    private void due() {
      List<Due.Need> needs = new ArrayList<>();
      for (int kind = 0; kind < draft.kinds(); kind++) {
        int jobs = draft.kind(kind).jobs();
        if (jobs > 0 && random.nextBoolean()) {
          needs.add(new Due.Need(kind, 1 + random.nextInt(jobs)));
        }
      }
      draft.due(random.nextInt(HORIZON / 2), random.nextInt(4), needs.toArray(Due.Need[]::new));
    }

    /** A lot or two of what waits for no others, each by a worker of its own. */
    private void settled() {
      List<FixedLot> lots = new ArrayList<>();
      int left = random.nextInt(workers + 1);
      for (int kind = 0; kind < draft.kinds() && left > 0; kind++) {
        Kind one = draft.kind(kind);
        List<Integer> who = one.chain().get(0).workers();
        if (one.jobs() > 0 && !alone.contains(kind) && who.contains(left - 1)) {
          int jobs = one.family() == 0 ? 1 : 1 + random.nextInt(one.jobs());
          left--;
          lots.add(new FixedLot(left, openFor(left), List.of(new FixedLot.Part(kind, jobs))));
        }
      }
      lots.sort(Comparator.comparingInt(FixedLot::start));
      lots.forEach(draft::fixed);
    }

    /** The start of one of the first windows of a worker: none is shorter than a settled lot. */
    private int openFor(int worker) {
      return draft.worker(worker).opens(random.nextInt(5));
    }

    private Integer[] some(int count) {
      int always = random.nextInt(count);
      return IntStream.range(0, count)
          .filter(i -> i == always || random.nextBoolean())
          .boxed()
          .toArray(Integer[]::new);
    }

    private static int[] ints(List<Integer> values) {
      return values.stream().mapToInt(Integer::intValue).toArray();
    }
  }
}
