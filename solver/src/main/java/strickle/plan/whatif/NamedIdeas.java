package strickle.plan.whatif;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import strickle.book.Book;
import strickle.book.Window;
import strickle.plan.OrderOutcome;
import strickle.plan.Plan;
import strickle.plan.Why;
import strickle.plan.why.Cure;
import strickle.plan.why.Remedy;

/**
 * The changes that the reasons of late orders name, first those that take away most lateness. Of
 * changes that help together each is tried by itself as well.
 */
final class NamedIdeas {

  private static final int MOST = 6;
  private static final int MINUTES_OF_HOUR = 60;

  private final Book book;
  private final Plan plan;
  private final Map<String, OrderOutcome> planned = new HashMap<>();

  NamedIdeas(Book book, Plan plan) {
    this.book = book;
    this.plan = plan;
    plan.orders().forEach(outcome -> planned.put(outcome.order(), outcome));
  }

  List<Change> all() {
    Set<Change> ideas = new LinkedHashSet<>();
    Why.remedies(book, plan).stream()
        .sorted(Comparator.comparing(this::worth).reversed())
        .forEach(remedy -> ideas.addAll(changes(remedy)));
    return ideas.stream().limit(MOST).toList();
  }

  /** Weighted minutes of lateness that a remedy takes away from its order. */
  private BigDecimal worth(Remedy remedy) {
    OffsetDateTime due =
        book.order(remedy.order()).due().atZone(book.studio().timeZone()).toOffsetDateTime();
    long left = Math.max(0, Duration.between(due, remedy.ready()).toMinutes());
    long gone = planned.get(remedy.order()).lateMinutes() - left;
    return book.order(remedy.order()).weight().multiply(BigDecimal.valueOf(gone));
  }

  /** Everything together first, then each part. */
  private List<Change> changes(Remedy remedy) {
    List<Change> parts = remedy.cures().stream().flatMap(cure -> change(cure).stream()).toList();
    if (parts.size() < remedy.cures().size()) {
      return List.of();
    }
    if (parts.size() == 1) {
      return parts;
    }
    List<Change> changes = new ArrayList<>(List.of(new Together(parts)));
    changes.addAll(parts);
    return changes;
  }

  /** Nothing when the book does not take the change. */
  private Optional<Change> change(Cure cure) {
    Change change =
        switch (cure) {
          case Cure.Forms forms -> new MoreForms(forms.form(), forms.units());
          case Cure.Places places -> new MorePlaces(places.station(), places.places());
          case Cure.Hours hours ->
              new MoreHours(
                  hours.person(), hours.from().toLocalDate(), window(hours.from(), hours.to()));
          case Cure.Hands hands ->
              new Helper(hands.from().toLocalDate(), Optional.of(window(hands.from(), hands.to())));
          case Cure.Warmth warmth -> new RoomAtLeast(warmth.degreesC());
        };
    return Optional.of(change).filter(one -> one.faults(book).isEmpty());
  }

  private static Window window(LocalDateTime from, LocalDateTime to) {
    return new Window(minuteOfDay(from), minuteOfDay(to));
  }

  private static int minuteOfDay(LocalDateTime at) {
    return at.getHour() * MINUTES_OF_HOUR + at.getMinute();
  }
}
