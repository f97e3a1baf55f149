package strickle.plan.bound;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import strickle.shop.Activity;
import strickle.shop.Family;
import strickle.shop.Kind;
import strickle.shop.Shop;

/**
 * How soon a casting can get from one place of its course to another when nothing else is going on.
 * All minutes at which each task can end are carried along, so most-waits and hours are kept
 * exactly; a longer run may keep a most-wait that a shorter one cannot, so every size of run a
 * casting can be in is tried, and only the smallest where there is no most-wait.
 */
final class Reach {

  private static final int DAY = 24 * 60;

  /** Looked at first; four times as far whenever that is not enough. */
  private static final int FIRST_LOOK = 45 * DAY;

  private final Shop shop;
  private final Passage passage;
  private final Sizes sizes;
  private final int[] lastLimited;

  /** What was asked before; the same is asked again and again. */
  private final Map<Asking, Integer> ended = new HashMap<>();

  private record Asking(int kind, int most, int from, int stage) {}

  Reach(Shop shop, Sizes sizes) {
    this.shop = shop;
    this.passage = new Passage(shop);
    this.sizes = sizes;
    this.lastLimited = shop.kinds().stream().mapToInt(Reach::lastLimited).toArray();
  }

  /** The last stage with a most-wait before it; 0 when there is none. */
  private static int lastLimited(Kind kind) {
    return IntStream.range(1, kind.chain().size())
        .filter(stage -> kind.chain().get(stage).before().atMostMinutes().isPresent())
        .max()
        .orElse(0);
  }

  /**
   * The minute a casting can be ready.
   *
   * @param most the most castings its run can have
   * @param from its pour begins at this minute or later
   * @return the horizon when that is too early
   */
  int ready(int kind, int most, int from) {
    return ended(kind, most, from, stages(kind) - 1) + shop.kinds().get(kind).tailMinutes();
  }

  /** The minute at which a stage of a casting can be over. */
  int ended(int kind, int most, int from, int stage) {
    Asking asking = new Asking(kind, Math.min(most, sizes.run(kind)), from, stage);
    Integer known = ended.get(asking);
    if (known == null) {
      known =
          least(kind, most, size -> look(from, limit -> poured(kind, size, from, limit, stage)));
      ended.put(asking, known);
    }
    return known;
  }

  /** The minute at which a stage of a casting can begin at the earliest. */
  int begun(int kind, int most, int stage) {
    return least(kind, most, size -> look(0, limit -> begun(kind, size, stage, limit)));
  }

  /** The minute a casting can be ready of which a stage is over at this minute or later. */
  int readyAfter(int kind, int most, int stage, int over) {
    int tail = shop.kinds().get(kind).tailMinutes();
    int last = stages(kind) - 1;
    if (stage == last) {
      return over + tail;
    }
    return tail
        + least(
            kind,
            most,
            size ->
                look(
                    over,
                    limit -> walk(kind, size, Spans.of(over, limit), stage, last, limit).first()));
  }

  private int stages(int kind) {
    return shop.kinds().get(kind).chain().size();
  }

  @FunctionalInterface
  private interface Sized {
    int of(int size);
  }

  @FunctionalInterface
  private interface Looking {
    OptionalInt to(int limit);
  }

  private int least(int kind, int most, Sized minute) {
    int largest = lastLimited[kind] > 0 ? Math.min(most, sizes.run(kind)) : 1;
    return IntStream.rangeClosed(1, Math.max(1, largest))
        .map(minute::of)
        .min()
        .orElse(shop.horizonMinutes());
  }

  private int look(int from, Looking looking) {
    for (int look = FIRST_LOOK; ; look *= 4) {
      int limit = (int) Math.min(shop.horizonMinutes(), (long) from + look);
      OptionalInt found = looking.to(limit);
      if (found.isPresent() || limit == shop.horizonMinutes()) {
        return found.orElse(shop.horizonMinutes());
      }
    }
  }

  private Spans poured(int kind, int size, int from, int limit) {
    Kind what = shop.kinds().get(kind);
    int shared = shop.families().get(what.family()).sharedMinutes();
    Activity pour = what.chain().get(0);
    int minutes = shared + minutes(pour, size);
    return lastLimited[kind] == 0
        ? passage.firstEnd(pour, minutes, Spans.of(from, from), limit)
        : passage.ends(pour, minutes, Spans.of(from, limit));
  }

  private OptionalInt poured(int kind, int size, int from, int limit, int stage) {
    return walk(kind, size, poured(kind, size, from, limit), 0, stage, limit).first();
  }

  private OptionalInt begun(int kind, int size, int stage, int limit) {
    if (stage == 0) {
      int shared = shop.families().get(shop.kinds().get(kind).family()).sharedMinutes();
      int pour = shared + minutes(shop.kinds().get(kind).chain().get(0), size);
      OptionalInt end = poured(kind, size, 0, limit).first();
      return end.isPresent() ? OptionalInt.of(end.getAsInt() - pour) : end;
    }
    Spans before = walk(kind, size, poured(kind, size, 0, limit), 0, stage - 1, limit);
    Activity activity = shop.kinds().get(kind).chain().get(stage);
    Spans starts = passage.starts(activity.before(), waitFrom(kind, before, stage), limit);
    // A start is where a task of one minute can end, less that minute.
    OptionalInt end = passage.ends(activity, 1, starts).first();
    return end.isPresent() ? OptionalInt.of(end.getAsInt() - 1) : end;
  }

  /**
   * From the ends of one stage to those of a later one. After the last most-wait only the first end
   * matters, as nothing is gained by waiting.
   */
  private Spans walk(int kind, int size, Spans ends, int stage, int last, int limit) {
    Spans at = ends;
    for (int next = stage + 1; next <= last; next++) {
      Activity activity = shop.kinds().get(kind).chain().get(next);
      Spans from = waitFrom(kind, at, next);
      int minutes = minutes(activity, size);
      if (next > lastLimited[kind]) {
        at = passage.firstEnd(activity, minutes, from, limit);
      } else {
        at = passage.ends(activity, minutes, passage.starts(activity.before(), from, limit));
      }
    }
    return at;
  }

  /** The wait after a pour begins while there is still washing up to do. */
  private Spans waitFrom(int kind, Spans ends, int stage) {
    Family family = shop.families().get(shop.kinds().get(kind).family());
    return stage == 1 ? ends.earlier(family.tailMinutes()) : ends;
  }

  private static int minutes(Activity activity, int size) {
    return activity.fixedMinutes() + size * activity.eachMinutes();
  }
}
