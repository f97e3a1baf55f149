package strickle.bench;

import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import strickle.book.Book;
import strickle.demo.Generator;
import strickle.plan.Effort;
import strickle.plan.Plan;
import strickle.plan.PlanRequest;
import strickle.plan.Planning;
import strickle.plan.promise.Promise;
import strickle.plan.promise.PromiseRequest;
import strickle.plan.promise.Promising;

/**
 * A new order on the plan of a generated book.
 *
 * @param book the book
 * @param plan its plan
 * @param piece what is asked for
 * @param quantity how many pieces
 */
record PromiseSample(Book book, Plan plan, String piece, int quantity) {

  private static final int MOST_PIECES = 8;

  /** An order for one of the pieces, 1 to 8 of it, on a plan of so many schedules. */
  static PromiseSample of(Book book, long seed, long schedules) {
    Random random = new Random(seed);
    String piece = book.pieces().get(random.nextInt(book.pieces().size())).id();
    int quantity = 1 + random.nextInt(MOST_PIECES);
    return new PromiseSample(book, plan(book, schedules), piece, quantity);
  }

  /** The same on a book that is on time: every order is due when it is ready, or later. */
  static Optional<PromiseSample> onTime(Book book, long seed, long schedules) {
    Book relaxed = ExactPromise.onTime(book, plan(book, schedules));
    PromiseSample sample = of(relaxed, seed, schedules);
    return Optional.of(sample).filter(one -> one.plan().totals().lateOrders() == 0);
  }

  private static Plan plan(Book book, long schedules) {
    OffsetDateTime from = Generator.start(book);
    return Planning.of(book, new PlanRequest(from, Effort.ofSchedules(schedules), 0), p -> {})
        .run();
  }

  Promise promise(OptionalLong schedules) {
    return Promising.of(
        book, plan, new PromiseRequest(piece, quantity, Optional.empty(), schedules, 0));
  }
}
