package strickle.demo;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import strickle.book.Book;
import strickle.book.Piece;
import strickle.mix.CastingMass;
import strickle.mix.Recipe;

/** What must hold of every piece of a book that is to be planned, whether ordered or not. */
final class LoneCastings {

  private static final int DAYS = 70;

  private LoneCastings() {}

  /** A casting begun on any day of the first ten weeks gets through, and keeps its most-waits. */
  static void getThroughFromAnyDay(Book book, OffsetDateTime from) {
    LoneCasting casting = new LoneCasting(book, from);
    for (Piece piece : book.pieces()) {
      for (int day = 0; day < DAYS; day++) {
        Instant begun = from.toInstant().plus(Duration.ofDays(day));
        assertTrue(casting.ready(piece, begun).isAfter(begun), piece.id());
      }
    }
  }

  /** A casting of any piece can be mixed in one lot. */
  static void fitTheBatchLimit(Book book) {
    for (Piece piece : book.pieces()) {
      Recipe recipe = Recipe.of(book.mix(piece.mix()), book::material);
      double grams = CastingMass.wetGrams(book.mould(piece.mould()), recipe);
      assertTrue(
          grams <= book.studio().batchLimitGrams(),
          () -> book.studio().name() + ", " + piece.id() + ": " + grams + " g");
    }
  }
}
