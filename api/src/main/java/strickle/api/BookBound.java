package strickle.api;

import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import strickle.book.Book;
import strickle.json.BoundFile;
import strickle.json.contract.Parameter;
import strickle.plan.Bounding;
import strickle.plan.Bounds;
import strickle.plan.Cover;
import strickle.plan.Effort;
import strickle.plan.PlanRequest;
import strickle.plan.Planning;

/** What no plan of the book as it is can beat, without a plan to hold against it. */
final class BookBound {

  static final Parameter FROM =
      Parameter.query(
          "from",
          Parameter.Kind.TEXT,
          "Of the book alone, in place of a plan: the first moment that may be planned, local.",
          "2027-04-05T00:00");

  static final Parameter COVER =
      Parameter.query(
          "cover",
          Parameter.Kind.NUMBER,
          "Beside \"from\": in how many of a hundred cases castings have to bring what is asked"
              + " for, 50 to 99.9; on average without it.",
          "90");

  /** The two, by the paths under which a request for a plan tells of them. */
  static final Map<String, String> NAMES = Map.of("$.from", "from", "$.coverPercent", "cover");

  /** Enough for one order by itself. */
  private static final long ALONE_SCHEDULES = 50;

  private BookBound() {}

  /**
   * From when the book alone is asked about; nothing when a plan is.
   *
   * @throws Refusal when it is asked for what would go unheard then
   */
  static Optional<LocalDateTime> begin(Call call) {
    Optional<LocalDateTime> from = call.time("from");
    String unheard = from.isPresent() ? PresentPlan.NAME : "cover";
    call.query(unheard)
        .ifPresent(
            given -> {
              String right = "nothing here: a plan has its own beginning and cover";
              throw Refusal.malformed(unheard, Call.shown(given), right);
            });
    return from;
  }

  /**
   * The bounds as a file.
   *
   * @throws strickle.book.Faulty when the book cannot be planned
   */
  static String of(Thinking thinking, Call call, LocalDateTime from) {
    Book book = call.studio().now().book();
    OffsetDateTime begin = PlanRoutes.in(book, from);
    OptionalDouble percent =
        call.decimal("cover").stream().mapToDouble(Number::doubleValue).findFirst();
    return Queries.told(NAMES, () -> thinking.of(() -> found(book, begin, percent)));
  }

  private static String found(Book book, OffsetDateTime begin, OptionalDouble percent) {
    Cover cover = Queries.told(Map.of("", "cover"), () -> Cover.of(percent));
    PlanRoutes.must(Planning.faults(book, begin, cover));
    Bounds bounds = Bounding.of(book, begin, cover);
    PlanRequest request =
        new PlanRequest(begin, Effort.ofSchedules(ALONE_SCHEDULES), 0).covering(percent);
    List<OffsetDateTime> alone =
        book.orders().stream().map(order -> Bounding.alone(book, request, order.id())).toList();
    return BoundFile.write(bounds, alone, Optional.empty());
  }
}
