package strickle.plan;

import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import strickle.book.Book;
import strickle.book.Fault;

/** Says when a plan that is under way cannot be gone on with, before anything is laid out. */
final class NowFaults {

  private NowFaults() {}

  /** What is wrong with the time a plan is to go on from: nothing, or one fault of {@code now}. */
  static List<Fault> of(Book book, Plan present, OffsetDateTime now) {
    return earliest(present, now)
        .or(() -> latest(book, present, now))
        .map(right -> new Fault("now", now.toString(), right))
        .stream()
        .toList();
  }

  private static Optional<String> earliest(Plan present, OffsetDateTime now) {
    Optional<OffsetDateTime> known = present.history().map(History::now).filter(now::isBefore);
    if (known.isPresent()) {
      return Optional.of("a time not before " + known.get() + ", as the plan has it");
    }
    return HappeningFaults.isLongAgo(present, now.toLocalDateTime())
        ? Optional.of(
            "a time not before "
                + HappeningFaults.first(present)
                + ", a year before the plan begins")
        : Optional.empty();
  }

  /**
   * Nobody is away for longer, so a plan that was left lying is taken up again by then. Without a
   * last time a slip of the pen would have centuries of hours written out.
   */
  private static Optional<String> latest(Book book, Plan present, OffsetDateTime now) {
    ZonedDateTime last =
        last(book, present)
            .atZoneSameInstant(book.studio().timeZone())
            .plusDays(HappeningFaults.MOST_DAYS_AWAY);
    return now.toInstant().isAfter(last.toInstant())
        ? Optional.of(
            "a time not after "
                + last.toLocalDateTime()
                + ", "
                + HappeningFaults.MOST_DAYS_AWAY
                + " days after the end of the plan and the last due date")
        : Optional.empty();
  }

  /** When the last of a plan is over and the last order of the book due. */
  private static OffsetDateTime last(Book book, Plan present) {
    ZoneId zone = book.studio().timeZone();
    Stream<OffsetDateTime> planned =
        Stream.concat(
            present.tasks().stream().map(Task::end), present.waits().stream().map(Wait::to));
    Stream<OffsetDateTime> due =
        book.orders().stream().map(order -> order.due().atZone(zone).toOffsetDateTime());
    return Stream.of(planned, due, present.history().map(History::now).stream())
        .flatMap(times -> times)
        .reduce(present.from(), (one, other) -> other.isAfter(one) ? other : one);
  }
}
