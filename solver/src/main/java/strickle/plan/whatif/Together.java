package strickle.plan.whatif;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import strickle.book.Book;
import strickle.book.Fault;

/**
 * Several changes made together.
 *
 * @param changes at least one, made in this order
 */
public record Together(List<Change> changes) implements Change {

  /** Copies the list; {@code IllegalArgumentException} when it is empty. */
  public Together {
    changes = List.copyOf(changes);
    if (changes.isEmpty()) {
      throw new IllegalArgumentException("nothing to change");
    }
  }

  /** These changes together. */
  public static Together of(Change... changes) {
    return new Together(List.of(changes));
  }

  @Override
  public String text() {
    return String.join(" ", changes.stream().map(Change::text).toList());
  }

  @Override
  public String words(Book book) {
    List<String> words = new ArrayList<>();
    Book changed = book;
    for (Change change : changes) {
      words.add(change.words(changed));
      changed = change.on(changed);
    }
    int last = words.size() - 1;
    return last == 0
        ? words.get(0)
        : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
  }

  @Override
  public List<Fault> faults(Book book) {
    List<Fault> faults = new ArrayList<>();
    Book sofar = book;
    for (Change change : changes) {
      List<Fault> own = change.faults(sofar);
      faults.addAll(own);
      sofar = own.isEmpty() ? change.on(sofar) : sofar;
    }
    return faults;
  }

  @Override
  public Book on(Book book) {
    Say.must(faults(book));
    Book changed = book;
    for (Change change : changes) {
      changed = change.on(changed);
    }
    return changed;
  }

  @Override
  public Cost cost(Book book) {
    Cost cost = changes.get(0).cost(book);
    Book changed = changes.get(0).on(book);
    for (Change change : changes.subList(1, changes.size())) {
      cost = cost.plus(change.cost(changed));
      changed = change.on(changed);
    }
    return cost;
  }

  /** The first of their dates. */
  @Override
  public Optional<LocalDate> date() {
    return changes.stream()
        .flatMap(change -> change.date().stream())
        .min(Comparator.naturalOrder());
  }
}
