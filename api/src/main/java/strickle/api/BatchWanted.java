package strickle.api;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import java.util.stream.Stream;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.Material;
import strickle.book.Mix;
import strickle.json.BatchStock;
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
 * @param have what is on hand of a material, in place of what the book says
 * @param bags what a bag of a material holds, in place of the book's pack
 * @param spare moulds that stand by for what is left over, beside those of the book
 */
public record BatchWanted(
    Optional<String> mix,
    Optional<Mix> recipe,
    Optional<PastBatch> past,
    List<Material> materials,
    List<Filling> fillings,
    OptionalDouble scaleStepGrams,
    OptionalDouble roundUpGrams,
    List<Amount> have,
    List<Amount> bags,
    List<Spare> spare) {

  private static final int MOST_CASTINGS = 10_000;
  private static final double MOST_ML = 1e7;
  private static final double MOST_GRAMS = 1e9;

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

  /**
   * So much of a material.
   *
   * @param material its id; a dry material or pigment of the mix
   * @param grams above 0, at most 1000000000
   */
  public record Amount(String material, double grams) {

    /** Refuses what is out of range. */
    public Amount {
      new Ranges().above(".grams", OptionalDouble.of(grams), MOST_GRAMS, "a mass in grams").done();
    }
  }

  /**
   * A mould that stands by.
   *
   * @param name what it is called
   * @param volumeMl what it holds, above 0, at most 10000000 ml
   */
  public record Spare(String name, double volumeMl) {

    /** Refuses what is out of range. */
    public Spare {
      new Ranges()
          .must(!name.isBlank(), ".name", "nothing", "what it is called")
          .above(".volumeMl", OptionalDouble.of(volumeMl), MOST_ML, "a volume in ml")
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

  /**
   * How it is put on the scale.
   *
   * @throws Faulty when no scale is like that
   */
  Weighing weighing() {
    return named(
        () ->
            new Weighing(
                scaleStepGrams.orElse(Weighing.USUAL.stepGrams()), roundUpGrams.orElse(0)));
  }

  /** Tells faults of the scale by the field it is asked with. */
  static <T> T named(Supplier<T> work) {
    try {
      return work.get();
    } catch (Faulty faulty) {
      throw new Faulty(faulty.faults().stream().map(BatchWanted::named).toList());
    }
  }

  private static Fault named(Fault fault) {
    return fault.path().equals(".stepGrams")
        ? new Fault(".scaleStepGrams", fault.found(), fault.right())
        : fault;
  }

  /** What there is, beside what the book says; a material that was sent says it itself. */
  BatchStock stock() {
    Map<String, Double> onHand = grams(have);
    Map<String, Double> packs = grams(bags);
    for (Material sent : materials) {
      onHand.putIfAbsent(sent.id(), sent.onHand().doubleValue());
      packs.putIfAbsent(sent.id(), sent.pack().quantity().doubleValue());
    }
    Map<String, Double> free = new LinkedHashMap<>();
    spare.forEach(one -> free.put(one.name(), one.volumeMl()));
    return new BatchStock(onHand, packs, free);
  }

  private static Map<String, Double> grams(List<Amount> amounts) {
    Map<String, Double> grams = new LinkedHashMap<>();
    amounts.forEach(one -> grams.put(one.material(), one.grams()));
    return grams;
  }
}
