package strickle.cli;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What {@code coat} found out, as its JSON says it.
 *
 * @param areaM2 of all pieces together
 * @param film of a coat that lies on the face
 * @param uptake of a coat that soaks in
 * @param leaf of sheets of metal
 */
record CoatAnswer(
    double areaM2,
    int pieces,
    Optional<FilmPart> film,
    Optional<UptakePart> uptake,
    Optional<LeafPart> leaf) {

  /** A film: its spreading rate, its wet thickness, and what is needed. */
  record FilmPart(double m2PerLitre, double wetMicrons, double litres) {}

  /** What is taken up, with millilitres where the density is known. */
  record UptakePart(double gramsPerM2, double grams, OptionalDouble ml) {}

  /** Leaf: sheets, whole books, what one sheet measures, and what the overlap eats. */
  record LeafPart(long sheets, long books, double sheetCm2, double overlapPercent) {}
}
