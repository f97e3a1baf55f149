package strickle.price;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;
import strickle.book.Book;
import strickle.book.Mix;
import strickle.book.Mould;
import strickle.book.Piece;
import strickle.book.Step;

/**
 * The minutes of a piece's typical run, poured as a lot of its own.
 *
 * @param book where the piece's mould and mix are looked up
 */
public record StandardMinutes(Book book) implements MinutesOfPiece {

  /** Refuses a missing book. */
  public StandardMinutes {
    Objects.requireNonNull(book, "book");
  }

  @Override
  public PriceBasis basis() {
    return PriceBasis.STANDARD;
  }

  /**
   * (n x prep + mix + n x pour + wash + n x demould + Σ steps (setup + n x cavities x each)) / (n x
   * cavities x g), with n = {@code typicalRun} and g = {@code goodPercent}/100. Source: the task
   * minutes of a plan in the format of book and plan (rules 1 to 3 of a valid plan), for one run.
   *
   * @return always a value
   */
  @Override
  public Optional<BigDecimal> perGoodPiece(Piece piece) {
    Mould mould = book.mould(piece.mould());
    BigDecimal castings = BigDecimal.valueOf(piece.typicalRun());
    BigDecimal started = castings.multiply(BigDecimal.valueOf(mould.cavities()));
    BigDecimal good = started.multiply(Exact.fraction(piece.goodPercent()));
    BigDecimal minutes =
        pourAndDemould(castings, mould, book.mix(piece.mix())).add(route(started, piece));
    return Optional.of(Exact.divide(minutes, good));
  }

  private static BigDecimal pourAndDemould(BigDecimal castings, Mould mould, Mix mix) {
    long eachCasting = (long) mould.prepMinutes() + mould.pourMinutes() + mould.demouldMinutes();
    long eachLot = (long) mix.mixMinutes() + mix.washMinutes();
    return castings.multiply(BigDecimal.valueOf(eachCasting)).add(BigDecimal.valueOf(eachLot));
  }

  private static BigDecimal route(BigDecimal started, Piece piece) {
    BigDecimal minutes = BigDecimal.ZERO;
    for (Step step : piece.route()) {
      minutes =
          minutes
              .add(BigDecimal.valueOf(step.setupMinutes()))
              .add(started.multiply(BigDecimal.valueOf(step.minutesEach())));
    }
    return minutes;
  }
}
