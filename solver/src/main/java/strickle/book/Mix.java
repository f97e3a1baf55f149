package strickle.book;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A recipe.
 *
 * @param id 1 to 64 characters
 * @param name 1 to 200 characters
 * @param swatch its colour for the screen, like {@code #4a4f55}, or empty
 * @param dry the dry materials in parts by mass, at least one
 * @param pigment the pigments; a material stands once in {@code dry} and {@code pigment} together
 * @param water the water; with the pigments it leaves something of the whole for the dry materials
 * @param airPercent air in the wet mix by volume, 0 to below 80
 * @param wetDensityKgPerM3 density of the wet mix as measured, 200 to 5000, or empty to work it out
 * @param mixMinutes weighing and mixing a lot of any size, 0 to 100000
 * @param workingMinutes how long the mix can be poured, 1 to 100000
 * @param washMinutes washing up after a pour, 0 to 100000
 */
public record Mix(
    String id,
    String name,
    Optional<String> swatch,
    List<Part> dry,
    List<Dose> pigment,
    Water water,
    double airPercent,
    OptionalDouble wetDensityKgPerM3,
    int mixMinutes,
    int workingMinutes,
    int washMinutes) {

  private static final Pattern SWATCH = Pattern.compile("#[0-9a-fA-F]{6}");
  private static final double MOST_AIR_PERCENT = 80;

  /** Shares that come nearer to the whole than this are a slip, not a mix. */
  private static final double LEAST_LEFT = 1e-6;

  /**
   * Checks the mix and copies its lists.
   *
   * @throws Faulty with every fault, paths relative to the mix
   */
  public Mix {
    Check check = new Check();
    check.id(".id", id);
    check.name(".name", name);
    checkSwatch(check, swatch);
    dry = check.someOf(".dry", dry, "dry material");
    pigment = check.list(".pigment", pigment);
    checkEachOnce(check, dry, pigment);
    if (check.given(".water", water, "the water's percent and what it is of")) {
      check.that(
          leavesDry(pigment, water),
          ".water.percent",
          "percentages of water and total that leave nothing for the dry materials",
          "water and pigment that are less than the whole together");
    }
    check.that(
        0 <= airPercent && airPercent < MOST_AIR_PERCENT,
        ".airPercent",
        Show.number(airPercent),
        "a number from 0 to below 80");
    check.number(".wetDensityKgPerM3", wetDensityKgPerM3, 200, 5000);
    check.minutes(".mixMinutes", mixMinutes, 0);
    check.minutes(".workingMinutes", workingMinutes, 1);
    check.minutes(".washMinutes", washMinutes, 0);
    check.done();
  }

  private static void checkSwatch(Check check, Optional<String> swatch) {
    String right = "a colour like #4a4f55, or none";
    if (check.given(".swatch", swatch, right)) {
      swatch.ifPresent(
          s -> check.that(SWATCH.matcher(s).matches(), ".swatch", Show.text(s), right));
    }
  }

  // The weigh-out names every material once, so the recipe must too.
  private static void checkEachOnce(Check check, List<Part> dry, List<Dose> pigment) {
    check.distinct(".dry", dry, Part::material, ".material");
    check.distinct(".pigment", pigment, Dose::material, ".material");
    for (int i = 0; i < pigment.size(); i++) {
      String material = pigment.get(i).material();
      check.that(
          dry.stream().noneMatch(part -> part.material().equals(material)),
          ".pigment[" + i + "].material",
          Show.text(material),
          "one that is not among the dry materials already");
    }
  }

  // Of the whole: 1 = dry + pigment + water. Nothing dry is left whatever the dry materials are, so
  // the percentages alone tell.
  private static boolean leavesDry(List<Dose> pigment, Water water) {
    double ofTotal = part(pigment, Basis.TOTAL);
    double waterOfTotal = water.of() == Basis.TOTAL ? water.percent() / 100 : 0;
    double waterOfPigment = water.of() == Basis.DRY_AND_PIGMENT ? water.percent() / 100 : 0;
    double ofWater = part(pigment, Basis.WATER) + ofTotal;
    double left = (1 - ofTotal) * (1 - waterOfTotal) - ofWater * (waterOfTotal + waterOfPigment);
    return left > LEAST_LEFT && waterOfTotal < 1 && ofTotal < 1;
  }

  private static double part(List<Dose> pigment, Basis of) {
    return pigment.stream().filter(dose -> dose.of() == of).mapToDouble(Dose::percent).sum() / 100;
  }

  /** Whether the water or any pigment is given as a percentage of the cement. */
  public boolean countsCement() {
    return Stream.concat(pigment.stream().map(Dose::of), Stream.of(water.of()))
        .anyMatch(Basis.CEMENT::equals);
  }
}
