package strickle.api;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import strickle.book.Material;
import strickle.book.Mix;
import strickle.mix.PastBatch;
import strickle.mix.Weighing;

/**
 * A batch to be weighed out, of one of three: a mix of the book, a mix that is in no book yet, or
 * one that was mixed once.
 *
 * @param mix the id of a mix in the book
 * @param recipe a mix, whole, whether the book has it or not
 * @param past a batch that was mixed once, in grams, and what it filled, in millilitres
 * @param materials materials that the book does not have, or has otherwise
 * @param fillings what it is for, at least one
 * @param scaleStepGrams what the scale counts in, 0.001 to 100000; 0.1 without it
 * @param roundUpGrams round the batch up to a whole multiple of this; not without it
 */
public record BatchWanted(
    Optional<String> mix,
    Optional<Mix> recipe,
    Optional<PastBatch> past,
    List<Material> materials,
    List<Filling> fillings,
    OptionalDouble scaleStepGrams,
    OptionalDouble roundUpGrams) {

  private static final int MOST_CASTINGS = 10_000;
  private static final double MOST_ML = 1e7;

  /**
   * What is to be filled: a mould of the book or a volume.
   *
   * @param mould the mould's id
   * @param volumeMl or a volume, above 0, at most 10000000 ml
   * @param castings how often, 1 to 10000
   * @param wastePercent what is lost beside it, 0 to 100; the mould's own without it, 0 for a
   *     volume
   */
  public record Filling(
      Optional<String> mould, OptionalDouble volumeMl, int castings, OptionalDouble wastePercent) {

    /** Refuses what is out of range. */
    public Filling {
      new Ranges()
          .must(
              mould.isPresent() != volumeMl.isPresent(),
              ".mould",
              mould.isPresent() ? "a mould beside a volume" : "nothing",
              "a mould of the book or volumeMl")
          .above(".volumeMl", volumeMl, MOST_ML, "a volume in ml")
          .must(
              1 <= castings && castings <= MOST_CASTINGS,
              ".castings",
              "" + castings,
              "a whole number from 1 to " + MOST_CASTINGS)
          .within(".wastePercent", wastePercent, 0, 100, "a percentage")
          .done();
    }
  }

  /** Refuses several mixes or none, and nothing to fill. */
  public BatchWanted {
    long ways = Stream.of(mix, recipe, past).filter(Optional::isPresent).count();
    new Ranges()
        .must(ways == 1, ".mix", ways == 0 ? "nothing" : ways + " at once", "mix, recipe or past")
        .must(!fillings.isEmpty(), ".fillings", "none", "at least one")
        .done();
  }

  /** How it is put on the scale. */
  Weighing weighing() {
    return new Weighing(scaleStepGrams.orElse(Weighing.USUAL.stepGrams()), roundUpGrams.orElse(0));
  }
}
