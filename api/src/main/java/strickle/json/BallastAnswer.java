package strickle.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strickle.book.Book;
import strickle.book.Core;
import strickle.book.Piece;
import strickle.mix.Recipe;
import strickle.mix.Uplift;

/**
 * What {@code strickle ballast --json} writes.
 *
 * @param lift of the core that was described
 * @param pressure of the mix, when its depth was given
 * @param pieces the pieces of a book that are cast with a core
 */
public record BallastAnswer(
    Optional<Lift> lift, Optional<Pressure> pressure, List<PieceLift> pieces) {

  /** The word of its format. */
  public static final String FORMAT = "strickle-ballast/1";

  /**
   * What lifts a core, and what holds it down.
   *
   * @param displacedMl volume of the core below the surface
   * @param displacedGrams wet mix that it pushes aside
   * @param grossNewtons the push of the mix upward; below 0 it presses the core down
   * @param netNewtons the same less the core's weight
   * @param safetyFactor by how much the ballast exceeds that
   * @param ballastGrams to lay on it
   */
  public record Lift(
      double displacedMl,
      double displacedGrams,
      double grossNewtons,
      double netNewtons,
      double safetyFactor,
      double ballastGrams) {

    /** Reads the figures off an uplift. */
    public static Lift of(Uplift uplift, double safetyFactor) {
      return new Lift(
          uplift.submergedMl(),
          uplift.displacedGrams(),
          uplift.grossNewtons(),
          uplift.netNewtons(),
          safetyFactor,
          uplift.ballastGrams(safetyFactor));
    }
  }

  /**
   * How hard the mix presses.
   *
   * @param depthMm below the surface
   * @param pascals at that depth
   * @param wallWidthMm width of a wall, when it was given
   * @param wallNewtons the push on that wall, from the surface to the depth
   */
  public record Pressure(
      double depthMm, double pascals, Optional<Double> wallWidthMm, Optional<Double> wallNewtons) {}

  /** A piece that is cast with a core, by its id, and the lift in one casting. */
  public record PieceLift(String piece, String mould, String mix, Lift lift) {}

  /** Every piece of a book that is cast with a core. */
  public static BallastAnswer of(Book book) {
    List<PieceLift> pieces = new ArrayList<>();
    for (Piece piece : book.pieces()) {
      book.mould(piece.mould()).core().ifPresent(core -> pieces.add(lift(book, piece, core)));
    }
    return new BallastAnswer(Optional.empty(), Optional.empty(), List.copyOf(pieces));
  }

  private static PieceLift lift(Book book, Piece piece, Core core) {
    double density = Recipe.of(book.mix(piece.mix()), book::material).wetDensityKgPerM3();
    Uplift uplift = Uplift.hung(density, core.displacedMl(), core.massGrams());
    return new PieceLift(
        piece.id(), piece.mould(), piece.mix(), Lift.of(uplift, core.safetyFactor()));
  }
}
