package strickle.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
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

  /** Always a value. */
  @Override
  public Optional<BigDecimal> perGoodPiece(Piece piece) {
    return Optional.of(split(piece).perGoodPiece());
  }

  /** The minutes of the typical run, by what they are spent on. */
  public MinuteSplit split(Piece piece) {
    return split(piece, piece.typicalRun());
  }

  /**
   * The minutes of a run of n castings poured as a lot of its own: n x prep + mix + n x pour + wash
   * + n x demould + Σ steps (setup + n x cavities x each), for n x cavities x g good pieces, with g
   * = {@code goodPercent}/100. Source: the task minutes of a plan in the format of book and plan
   * (rules 1 to 3 of a valid plan), for one run.
   *
   * @param castings n, 1 or more
   */
  public MinuteSplit split(Piece piece, int castings) {
    Mix mix = book.mix(piece.mix());
    List<MinuteItem> items = new ArrayList<>();
    items.add(mixing(mix));
    items.add(washing(mix));
    items.addAll(ofRun(piece, castings));
    Mould mould = book.mould(piece.mould());
    BigDecimal started = BigDecimal.valueOf((long) castings * mould.cavities());
    return new MinuteSplit(
        items, castings, 1, started.multiply(Exact.fraction(piece.goodPercent())));
  }

  /** What a run takes beside its share in the mixing and washing up of its lot. */
  List<MinuteItem> ofRun(Piece piece, int castings) {
    Mould mould = book.mould(piece.mould());
    List<MinuteItem> items = new ArrayList<>();
    items.add(each("preparing moulds", castings, mould.prepMinutes()));
    items.add(each("pouring", castings, mould.pourMinutes()));
    items.add(each("taking out of moulds", castings, mould.demouldMinutes()));
    long started = (long) castings * mould.cavities();
    for (Step step : piece.route()) {
      items.add(item("setting up: " + step.step(), MinuteKind.SETUP, step.setupMinutes()));
      items.add(item(step.step(), MinuteKind.PIECE, started * step.minutesEach()));
    }
    return items;
  }

  /** Mixing a lot. */
  static MinuteItem mixing(Mix mix) {
    return item("mixing", MinuteKind.LOT, mix.mixMinutes());
  }

  /** Washing up after a lot. */
  static MinuteItem washing(Mix mix) {
    return item("washing up", MinuteKind.LOT, mix.washMinutes());
  }

  private static MinuteItem each(String what, long castings, int minutes) {
    return item(what, MinuteKind.CASTING, castings * minutes);
  }

  private static MinuteItem item(String what, MinuteKind kind, long minutes) {
    return new MinuteItem(what, kind, BigDecimal.valueOf(minutes));
  }
}
