package strickle.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Feasible;
import strickle.book.Form;
import strickle.book.Mould;
import strickle.book.Piece;

/** What keeps the rest of a plan under way from being laid out at all. */
final class RestFaults {

  private static final int MOST_NAMED = 6;

  private final Standing standing;
  private final Book book;
  private final Owed owed;

  private RestFaults(Standing standing, Owed owed) {
    this.standing = standing;
    this.book = standing.book();
    this.owed = owed;
  }

  /**
   * Everything that does: pieces that can never be made, forms that are broken with none left, pins
   * that cannot be kept, each with its path, the value found and what would make it possible.
   */
  static List<Fault> of(Standing standing, Owed owed, RestPins pins) {
    List<Fault> faults = new ArrayList<>(Feasible.faults(standing.book()));
    long castings = owed.toPour().values().stream().mapToLong(Integer::longValue).sum();
    faults.addAll(Planning.tooMuch(standing.book(), castings));
    faults.addAll(Feasibility.masses(standing.book()));
    faults.addAll(new RestFaults(standing, owed).broken());
    faults.addAll(pins.faults(owed));
    return faults;
  }

  /** Forms of which too few are whole for what is still to be poured, and will not be either. */
  private List<Fault> broken() {
    List<Fault> faults = new ArrayList<>();
    for (int i = 0; i < book.forms().size(); i++) {
      Form form = book.forms().get(i);
      int left = form.count() - gone(form);
      List<Piece> stuck =
          book.pieces().stream().filter(piece -> isStuck(piece, form, left)).toList();
      if (gone(form) > 0 && !stuck.isEmpty()) {
        faults.add(fault("$.forms[" + i + "].count", form, left, stuck));
      }
    }
    return faults;
  }

  /** Units that are broken, and nobody knows until when. */
  private int gone(Form form) {
    return standing.broken().stream()
        .filter(one -> one.form().equals(form.id()) && one.to().isEmpty())
        .mapToInt(one -> one.units().size())
        .sum();
  }

  private boolean isStuck(Piece piece, Form form, int left) {
    return owed.toPour().get(piece.id()) > 0 && needed(piece, form) > left;
  }

  private int needed(Piece piece, Form form) {
    return book.mould(piece.mould()).forms().stream()
        .filter(use -> use.form().equals(form.id()))
        .mapToInt(use -> use.count())
        .sum();
  }

  private Fault fault(String path, Form form, int left, List<Piece> stuck) {
    int most = stuck.stream().mapToInt(piece -> needed(piece, form)).max().orElseThrow();
    String whole = left == 0 ? "none" : "only " + left;
    return new Fault(
        path,
        whole + " whole, as " + gone(form) + " of form \"" + form.id() + "\" broke" + what(stuck),
        most
            + " or more: say from when on one is whole again (\"to\" beside \"broken\", or"
            + " \"mended\"; a date to come will do), count a new one in, or take these orders out"
            + " of the book; then all else is planned");
  }

  /** What cannot be poured, in which mould, and whom it is for. */
  private String what(List<Piece> stuck) {
    Map<Mould, List<Piece>> byMould =
        stuck.stream()
            .collect(
                Collectors.groupingBy(
                    piece -> book.mould(piece.mould()), LinkedHashMap::new, Collectors.toList()));
    List<String> parts = new ArrayList<>();
    byMould.forEach((mould, pieces) -> parts.add(mould.name() + " " + castings(pieces)));
    List<String> orders = owed.ordersToPour(stuck.stream().map(Piece::id).toList());
    return ": mould " + String.join(", mould ", parts) + ", for " + few(orders);
  }

  private String castings(List<Piece> pieces) {
    return "("
        + few(
            pieces.stream()
                .map(piece -> owed.toPour().get(piece.id()) + " x " + piece.name())
                .toList())
        + ")";
  }

  private static String few(List<String> all) {
    return all.size() <= MOST_NAMED
        ? String.join(", ", all)
        : String.join(", ", all.subList(0, MOST_NAMED))
            + " and "
            + (all.size() - MOST_NAMED)
            + " more";
  }
}
