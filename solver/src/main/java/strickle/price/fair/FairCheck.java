package strickle.price.fair;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strickle.book.Book;
import strickle.book.Fair;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.Nearest;
import strickle.plan.Planning;

/** Finds everything that keeps a fair's build from being looked for. */
final class FairCheck {

  private FairCheck() {}

  static void refuse(Book book, FairRequest request) {
    List<Fault> faults = new ArrayList<>();
    Optional<Fair> fair =
        book.fairs().stream().filter(one -> one.id().equals(request.fair())).findFirst();
    if (fair.isEmpty()) {
      faults.add(unknown(book, request.fair()));
    }
    fair.ifPresent(one -> faults.addAll(Wares.faults(book, one)));
    fair.filter(one -> !request.from().isBefore(opens(book, one)))
        .ifPresent(one -> faults.add(over(request, one)));
    faults.addAll(Planning.faults(book.withPins(List.of()), request.from()));
    if (!faults.isEmpty()) {
      throw new Faulty(faults);
    }
  }

  private static OffsetDateTime opens(Book book, Fair fair) {
    return fair.opens().atZone(book.studio().timeZone()).toOffsetDateTime();
  }

  private static Fault unknown(Book book, String id) {
    List<String> ids = book.fairs().stream().map(Fair::id).toList();
    String near = Nearest.to(id, ids).map(one -> "; did you mean \"" + one + "\"?").orElse("");
    String right = ids.isEmpty() ? "the id of a fair, but the book has none" : "the id of a fair";
    return new Fault(".fair", '"' + id + '"', right + (ids.isEmpty() ? "" : " in the book") + near);
  }

  private static Fault over(FairRequest request, Fair fair) {
    String right = "a time before the fair opens, " + fair.opens();
    return new Fault(".from", request.from().toString(), right);
  }
}
