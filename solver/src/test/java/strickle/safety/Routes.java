package strickle.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import strickle.book.After;
import strickle.book.Book;
import strickle.book.Draft;
import strickle.book.Piece;
import strickle.book.SampleBook;
import strickle.book.Step;
import strickle.book.WaitKind;

/** Books with routes to be read. */
final class Routes {

  static final double DRY_LATER = 24;

  private Routes() {}

  static void assertSilent(Step... steps) {
    assertEquals(List.of(), RouteSense.of(book(DRY_LATER, steps)));
  }

  static Advice only(Step... steps) {
    List<Advice> advice = RouteSense.of(book(DRY_LATER, steps));
    assertEquals(1, advice.size(), advice.toString());
    return advice.get(0);
  }

  static Book two(Step one, Step other) {
    return Draft.of(SampleBook.example())
        .pieces(piece("planter-slate", DRY_LATER, one), piece("other", DRY_LATER, other))
        .book();
  }

  static Book book(double finalDryHours, Step... steps) {
    return Draft.of(SampleBook.example())
        .pieces(piece("planter-slate", finalDryHours, steps))
        .book();
  }

  static Piece piece(String id, double finalDryHours, Step... steps) {
    Piece p = SampleBook.planterSlate();
    return new Piece(
        id,
        p.name(),
        p.mould(),
        p.mix(),
        p.goodPercent(),
        p.onHand(),
        p.typicalRun(),
        List.of(steps),
        finalDryHours,
        p.packing(),
        p.price(),
        p.leftoverValue());
  }

  static Step step(String words, WaitKind wait, double hours) {
    return step(words, wait, hours, 4);
  }

  static Step step(String words, WaitKind wait, double hours, int each) {
    return step(words, wait, hours, each, OptionalDouble.empty());
  }

  static Step step(String words, WaitKind wait, double hours, OptionalDouble most) {
    return step(words, wait, hours, 4, most);
  }

  static Step step(String words, WaitKind wait, double hours, int each, OptionalDouble most) {
    After after = new After(wait, hours, most);
    return new Step(words, 3, each, after, List.of(), List.of(), Optional.empty());
  }
}
