package strickle.mix;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import strickle.book.Dose;
import strickle.book.Material;
import strickle.book.Mix;
import strickle.book.Part;

/**
 * The pigment of a mix against its dry mix and against its cement, side by side. The limit is one
 * of the cement: ASTM C979 §1.4, at most 10 % of its mass, and of a blend the total is not to
 * exceed the most of any pigment in it.
 *
 * @param pigments each pigment
 * @param total all of them together
 * @param limit what the total is held against
 * @param verdict whether that keeps to the limit
 */
public record PigmentCheck(List<Against> pigments, Against total, Limit limit, Verdict verdict) {

  /** The most pigment in percent of the cement (ASTM C979 §1.4). */
  public static final double MOST_PERCENT_OF_CEMENT = 10;

  /** Ten percent by way of other percentages is still ten percent. */
  private static final double ROUND_OFF = 1e-9;

  /** Copies the list. */
  public PigmentCheck {
    pigments = List.copyOf(pigments);
  }

  /** What the check says. */
  public enum Verdict {
    /** There is no pigment. */
    NONE,
    /** At most the limit. */
    WITHIN,
    /** Above the limit. */
    TOO_MUCH,
    /** The cement in a dry material is not known, or there is none. */
    CANNOT_BE_CHECKED
  }

  /**
   * The most pigment a mix may hold.
   *
   * @param percentOfCement 10, or the least most of any of its pigments when that is less
   * @param of the pigment whose most that is; empty when it is the 10 of the standard
   * @param unknown the pigments of which no most of their own is known
   */
  public record Limit(double percentOfCement, Optional<String> of, List<String> unknown) {

    /** Copies the list. */
    public Limit {
      unknown = List.copyOf(unknown);
    }

    private static Limit of(List<Portion> pigments, Function<String, Material> materials) {
      double least = MOST_PERCENT_OF_CEMENT;
      Optional<String> whose = Optional.empty();
      List<String> unknown = new ArrayList<>();
      for (Portion pigment : pigments) {
        OptionalDouble most = materials.apply(pigment.material()).mostPercentOfCement();
        if (most.isEmpty()) {
          unknown.add(pigment.material());
        } else if (pigment.grams() > 0 && most.getAsDouble() < least) {
          least = most.getAsDouble();
          whose = Optional.of(pigment.material());
        }
      }
      return new Limit(least, whose, unknown);
    }
  }

  /**
   * A mass of pigment against what is mixed with it.
   *
   * @param material the pigment's id, or "all"
   * @param percentOfDry of all dry materials, pigment not counted among them
   * @param percentOfDryAndPigment of the dry mix when the pigment counts as part of it, as in a bag
   *     that holds both
   * @param percentOfCement of the cement; empty when that is not known or there is none
   */
  public record Against(
      String material,
      double percentOfDry,
      double percentOfDryAndPigment,
      OptionalDouble percentOfCement) {}

  /**
   * Checks a mix.
   *
   * @throws strickle.book.Faulty when the mix cannot be worked out, paths relative to it
   */
  public static PigmentCheck of(Mix mix, Function<String, Material> materials) {
    Recipe recipe = Recipe.of(mix, materials);
    double dry = mix.dry().stream().mapToDouble(Part::parts).sum();
    List<Portion> portions = recipe.forDry(dry);
    List<Portion> pigments =
        portions.stream().filter(portion -> isPigment(mix, portion.material())).toList();
    double all = pigments.stream().mapToDouble(Portion::grams).sum();
    OptionalDouble cement = cement(mix, materials);
    List<Against> each = new ArrayList<>();
    for (Portion portion : pigments) {
      each.add(against(portion.material(), portion.grams(), dry, dry + all, cement));
    }
    Limit limit = Limit.of(pigments, materials);
    return new PigmentCheck(
        each, against("all", all, dry, dry + all, cement), limit, verdict(all, cement, limit));
  }

  private static boolean isPigment(Mix mix, String material) {
    return mix.pigment().stream().map(Dose::material).anyMatch(material::equals);
  }

  private static Against against(
      String material, double grams, double dry, double whole, OptionalDouble cement) {
    OptionalDouble percent =
        cement.isPresent()
            ? OptionalDouble.of(100 * grams / cement.getAsDouble())
            : OptionalDouble.empty();
    return new Against(material, 100 * grams / dry, 100 * grams / whole, percent);
  }

  private static Verdict verdict(double all, OptionalDouble cement, Limit limit) {
    if (all == 0) {
      return Verdict.NONE;
    }
    if (cement.isEmpty()) {
      return Verdict.CANNOT_BE_CHECKED;
    }
    boolean within = 100 * all / cement.getAsDouble() <= limit.percentOfCement() + ROUND_OFF;
    return within ? Verdict.WITHIN : Verdict.TOO_MUCH;
  }

  /** The cement on the scale of the parts; empty when a material does not tell, or none is. */
  static OptionalDouble cement(Mix mix, Function<String, Material> materials) {
    double cement = 0;
    for (Part part : mix.dry()) {
      OptionalDouble percent = materials.apply(part.material()).cementPercent();
      if (percent.isEmpty()) {
        return OptionalDouble.empty();
      }
      cement += part.parts() * percent.getAsDouble() / 100;
    }
    return cement > 0 ? OptionalDouble.of(cement) : OptionalDouble.empty();
  }
}
