package strickle.price;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.Mould;
import strickle.book.Piece;
import strickle.mix.Volume;

/**
 * Finds what keeps the castings of a book's pieces from being weighed, and so from being priced: a
 * book makes sure of its mixes, but whether a mould's solids leave any volume is seen only here.
 */
final class Weighable {

  private Weighable() {}

  /** Every fault of a mould that a piece uses; paths start at the book. */
  static List<Fault> faults(Book book) {
    Set<String> used = book.pieces().stream().map(Piece::mould).collect(Collectors.toSet());
    List<Fault> faults = new ArrayList<>();
    for (int i = 0; i < book.moulds().size(); i++) {
      Mould mould = book.moulds().get(i);
      if (used.contains(mould.id())) {
        note("$.moulds[" + i + "]", mould, faults);
      }
    }
    return faults;
  }

  private static void note(String path, Mould mould, List<Fault> faults) {
    try {
      Volume.ml(mould);
    } catch (Faulty faulty) {
      faulty.faults().forEach(fault -> faults.add(fault.under(path)));
    }
  }
}
