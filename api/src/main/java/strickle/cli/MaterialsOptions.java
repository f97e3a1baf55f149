package strickle.cli;

import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;
import strickle.book.Book;
import strickle.plan.Plan;
import strickle.plan.PlanRequest;
import strickle.supply.Shopping;
import strickle.supply.TooEarly;

/** The options {@code --wait-for-materials} and {@code --now}. */
final class MaterialsOptions {

  private static final String NOW = "--now";

  @Option(
      names = "--wait-for-materials",
      description = {
        "let every task that uses a material which is short in stock wait until it can be there,"
            + " ordered when the plan begins"
      })
  private boolean wait;

  @Option(
      names = NOW,
      paramLabel = "DATE",
      description = "with --wait-for-materials: ordered on this date, or date with a time, instead")
  private String now;

  private Optional<LocalDateTime> moment = Optional.empty();

  /** Reads the options. */
  void read(Given values) {
    moment = values.moment(NOW, now);
    values.must(wait || now == null, NOW, now, "nothing without --wait-for-materials");
  }

  /** The request, waiting if it was asked for. */
  PlanRequest on(PlanRequest request, Book book) {
    return wait ? request.ordering(ordering(request.from(), book)) : request;
  }

  /**
   * Lets a new plan through that waits for nothing, or in which nothing begins before its material
   * can be there, as the shopping list reads it.
   *
   * @throws Bug when something does
   */
  static Plan checked(Book book, Plan plan) {
    List<TooEarly> early =
        plan.orderingFrom().stream()
            .flatMap(at -> Shopping.of(book, plan, at).tooEarly().stream())
            .filter(one -> plan.tasks().stream().anyMatch(task -> task.id().equals(one.what())))
            .toList();
    if (!early.isEmpty()) {
      throw new Bug("the plan does not wait for its materials: " + early.get(0));
    }
    return plan;
  }

  private OffsetDateTime ordering(OffsetDateTime from, Book book) {
    return moment
        .map(time -> time.atZone(book.studio().timeZone()).toOffsetDateTime())
        .orElse(from);
  }
}
