package strickle.json;

import java.util.Optional;
import java.util.OptionalDouble;
import strickle.mix.Film;
import strickle.mix.Leaf;
import strickle.mix.Uptake;

/**
 * What {@code coat} found out, as its JSON says it.
 *
 * @param areaM2 of all pieces together
 * @param film of a coat that lies on the face
 * @param uptake of a coat that soaks in
 * @param leaf of sheets of metal
 */
public record CoatAnswer(
    double areaM2,
    int pieces,
    Optional<FilmPart> film,
    Optional<UptakePart> uptake,
    Optional<LeafPart> leaf) {

  private static final double CM2_PER_M2 = 10_000;

  /** The word of its format. */
  public static final String FORMAT = "strickle-coat/1";

  /** A film: its spreading rate, its wet thickness, and what is needed. */
  public record FilmPart(double m2PerLitre, double wetMicrons, double litres) {}

  /** What is taken up, with millilitres where the density is known. */
  public record UptakePart(double gramsPerM2, double grams, OptionalDouble ml) {}

  /** Leaf: sheets, whole books, what one sheet measures, and what the overlap eats. */
  public record LeafPart(long sheets, long books, double sheetCm2, double overlapPercent) {}

  /**
   * What is put on.
   *
   * @param film of a coat that lies on the face
   * @param uptake of a coat that soaks in
   * @param leaf sheets of metal
   * @param coats how many of film or uptake, 1 or more
   * @param wastePercent of it all, 0 to below 100
   * @param gramsPerMl of what soaks in, if that is known
   * @param perBook sheets in a book of leaf, 1 or more
   */
  public record Coating(
      Optional<Film> film,
      Optional<Uptake> uptake,
      Optional<Leaf> leaf,
      int coats,
      double wastePercent,
      OptionalDouble gramsPerMl,
      long perBook) {}

  /**
   * How much of a coating an area takes.
   *
   * @param areaM2 of all pieces together
   */
  public static CoatAnswer of(double areaM2, int pieces, Coating coating) {
    return new CoatAnswer(
        areaM2,
        pieces,
        coating.film().map(film -> film(film, areaM2, coating)),
        coating.uptake().map(uptake -> uptake(uptake, areaM2, coating)),
        coating.leaf().map(leaf -> leaf(leaf, areaM2, coating)));
  }

  private static FilmPart film(Film film, double areaM2, Coating coating) {
    double litres = film.litres(areaM2, coating.coats(), coating.wastePercent());
    return new FilmPart(film.m2PerLitre(), film.wetMicrons(), litres);
  }

  private static UptakePart uptake(Uptake uptake, double areaM2, Coating coating) {
    double grams = uptake.grams(areaM2, coating.coats(), coating.wastePercent());
    OptionalDouble dense = coating.gramsPerMl();
    OptionalDouble ml =
        dense.isPresent() ? OptionalDouble.of(grams / dense.getAsDouble()) : OptionalDouble.empty();
    return new UptakePart(uptake.gramsPerM2(), grams, ml);
  }

  private static LeafPart leaf(Leaf leaf, double areaM2, Coating coating) {
    long sheets = leaf.sheets(areaM2, coating.wastePercent());
    long books = Math.ceilDiv(sheets, coating.perBook());
    return new LeafPart(sheets, books, leaf.sheetM2() * CM2_PER_M2, leaf.overlapPercent());
  }
}
