package strickle.bench;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.logging.LogManager;
import strickle.book.Book;
import strickle.demo.Generator;
import strickle.plan.audit.Audit;
import strickle.plan.promise.Offer;
import strickle.plan.promise.Promise;

/** Measures how early promises are, against the earliest there are or against long searches. */
public final class PromiseMeasure {

  private static final long PLAN_SCHEDULES = 3000;
  private static final double NANOS = 1e9;

  private PromiseMeasure() {}

  /**
   * Prints a line for each promise.
   *
   * @param words first seed, last seed, and either {@code exact} and the seconds for each proof, or
   *     castings and then numbers of schedules to compare, a dash for the usual number
   */
  public static void main(String[] words) {
    LogManager.getLogManager().reset();
    for (long seed = Long.parseLong(words[0]); seed <= Long.parseLong(words[1]); seed++) {
      if (words[2].equals("exact")) {
        exact(seed, Duration.ofSeconds(Long.parseLong(words[3])));
      } else {
        searched(seed, words);
      }
    }
  }

  private static void exact(long seed, Duration limit) {
    ExactWeekSample week = ExactWeekSample.of((int) seed, seed % 2 == 0);
    Optional<PromiseSample> sample = PromiseSample.onTime(week.book(), seed, PLAN_SCHEDULES);
    if (sample.isEmpty()) {
      return;
    }
    Promise promise = sample.get().promise(OptionalLong.empty());
    Offer kept = promise.kept().orElseThrow();
    Offer pressed = promise.pressed().orElse(kept);
    System.out.printf(
        Locale.ROOT,
        "castings=%d seed=%d quantity=%d kept %s pressed %s%n",
        week.castings(),
        seed,
        promise.quantity(),
        gap(kept, ExactPromise.kept(kept, limit)),
        gap(pressed, ExactPromise.pressed(pressed, limit)));
  }

  private static String gap(Offer offer, ExactPromise.Earliest best) {
    long minutes = Duration.between(best.ready(), offer.ready()).toMinutes();
    return offer.ready().toLocalDateTime()
        + " gapMinutes="
        + minutes
        + (best.proved() ? " proved" : " open");
  }

  private static void searched(long seed, String[] words) {
    int castings = Integer.parseInt(words[2]);
    Book book = Generator.book(castings, seed);
    PromiseSample sample = PromiseSample.of(book, seed, PLAN_SCHEDULES);
    for (String schedules : List.of(words).subList(3, words.length)) {
      long began = System.nanoTime();
      boolean usual = schedules.equals("-");
      Promise promise =
          sample.promise(usual ? OptionalLong.empty() : OptionalLong.of(Long.parseLong(schedules)));
      double seconds = (System.nanoTime() - began) / NANOS;
      System.out.printf(
          Locale.ROOT,
          "castings=%d seed=%d quantity=%d lateHours=%s schedules=%s seconds=%.2f still=%s kept=%s"
              + " moved=%d pressed=%s later=%d%n",
          castings,
          seed,
          sample.quantity(),
          sample.plan().totals().weightedLateHours().toPlainString(),
          schedules,
          seconds,
          ready(promise.still()),
          ready(promise.kept()),
          promise.kept().map(offer -> offer.slips().size()).orElse(0),
          ready(promise.pressed()),
          promise.pressed().map(offer -> offer.later().size()).orElse(0));
      List.of(promise.kept(), promise.still(), promise.pressed()).forEach(PromiseMeasure::check);
    }
  }

  private static String ready(Optional<Offer> offer) {
    return offer
        .map(Offer::ready)
        .map(OffsetDateTime::toLocalDateTime)
        .map(Object::toString)
        .orElse("-");
  }

  private static void check(Optional<Offer> offer) {
    offer
        .map(one -> Audit.of(one.book(), one.plan()))
        .filter(findings -> !findings.isEmpty())
        .ifPresent(
            findings -> {
              throw new IllegalStateException("the audit refuses the plan: " + findings);
            });
  }
}
