package strickle.price;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.Mix;
import strickle.book.Mould;
import strickle.book.Piece;
import strickle.mix.Recipe;
import strickle.mix.Volume;

/**
 * Finds what keeps the castings of a book's pieces from being weighed, and so from being priced.
 */
final class Weighable {

  private final List<Fault> faults = new ArrayList<>();

  private Weighable() {}

  /** Every fault of a mix or mould that a piece uses; paths start at the book. */
  static List<Fault> faults(Book book) {
    Weighable weighable = new Weighable();
    weighable.mixes(book);
    weighable.moulds(book);
    return List.copyOf(weighable.faults);
  }

  private void mixes(Book book) {
    Set<String> used = book.pieces().stream().map(Piece::mix).collect(Collectors.toSet());
    for (int i = 0; i < book.mixes().size(); i++) {
      Mix mix = book.mixes().get(i);
      if (used.contains(mix.id())) {
        note("$.mixes[" + i + "]", () -> Recipe.of(mix, book::material));
      }
    }
  }

  private void moulds(Book book) {
    Set<String> used = book.pieces().stream().map(Piece::mould).collect(Collectors.toSet());
    for (int i = 0; i < book.moulds().size(); i++) {
      Mould mould = book.moulds().get(i);
      if (used.contains(mould.id())) {
        note("$.moulds[" + i + "]", () -> Volume.ml(mould));
      }
    }
  }

  private void note(String path, Runnable reading) {
    try {
      reading.run();
    } catch (Faulty faulty) {
      faulty.faults().forEach(fault -> faults.add(fault.under(path)));
    }
  }
}
