package strickle.json;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strickle.book.Faulty;
import strickle.cure.AgeRule;
import strickle.cure.Calibration;
import strickle.cure.CementClass;
import strickle.cure.Ready;
import strickle.cure.Strength;

/**
 * What {@code strickle curing --json} writes.
 *
 * @param rule the rule of age in words
 * @param calibration what the studio's own castings say
 * @param referenceHours hours at 20 °C after which castings are ready
 * @param rooms when they are ready in these rooms
 * @param spent what one casting has been through
 * @param strength how strong it may be, for information only
 */
public record CuringAnswer(
    String rule,
    Optional<Calibration> calibration,
    Optional<Double> referenceHours,
    List<Room> rooms,
    Optional<Spent> spent,
    Optional<Strong> strength) {

  /** The word of its format. */
  public static final String FORMAT = "strickle-curing/1";

  private static final double HOURS_PER_DAY = 24;
  private static final double LEAST_DAYS = 3;

  /**
   * A room.
   *
   * @param temperatureC of it
   * @param factor hours of age in an hour there
   * @param readyHours when castings are ready; empty when they never are
   * @param stillHours what is left for a casting that has been through something
   */
  public record Room(
      double temperatureC, double factor, Optional<Ready> readyHours, Optional<Ready> stillHours) {}

  /**
   * What a casting has been through.
   *
   * @param hours elapsed
   * @param ageHours hours at 20 °C
   * @param degreeHours °C·h above the datum, for Nurse and Saul's rule
   */
  public record Spent(double hours, double ageHours, Optional<Double> degreeHours) {}

  /**
   * How strong it may be.
   *
   * @param ageDays at 20 °C
   * @param low part of the strength at 28 days, at the least
   * @param high at the most
   * @param belowADay whether the curves are not meant for such an age
   * @param en1992 the part by EN 1992-1-1 for each cement, at just that age
   * @param aci209 the part by ACI 209R-92, Type I cement under moist cure
   */
  public record Strong(
      double ageDays,
      double low,
      double high,
      boolean belowADay,
      List<Part> en1992,
      double aci209) {}

  /** What a cement has reached. */
  public record Part(CementClass cement, double part, Optional<Double> characteristicMpa) {}

  /**
   * The answer to a question.
   *
   * @throws Faulty when castings found ready say too little
   */
  public static CuringAnswer of(CuringQuestion question) {
    Optional<Calibration> fit = calibration(question);
    Optional<Double> reference = question.hours().or(() -> fit.map(Calibration::referenceHours));
    Optional<Spent> spent = spent(question);
    List<Room> rooms = new ArrayList<>();
    for (double celsius : question.rooms()) {
      reference.ifPresent(hours -> rooms.add(room(question.rule(), hours, fit, spent, celsius)));
    }
    Optional<Double> days =
        question
            .ageDays()
            .or(() -> spent.map(past -> past.ageHours() / HOURS_PER_DAY))
            .or(() -> reference.map(hours -> hours / HOURS_PER_DAY))
            .filter(age -> age > 0);
    return new CuringAnswer(
        rule(question.rule()),
        fit,
        reference,
        List.copyOf(rooms),
        spent,
        days.map(age -> strong(question, age)));
  }

  private static Optional<Calibration> calibration(CuringQuestion question) {
    if (question.records().isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(Calibration.of(question.rule(), question.records()));
    } catch (Faulty faulty) {
      throw new Faulty(faulty.faults().stream().map(fault -> fault.under(".records")).toList());
    }
  }

  private static Optional<Spent> spent(CuringQuestion question) {
    if (question.spent().isEmpty()) {
      return Optional.empty();
    }
    double elapsed = question.spent().stream().mapToDouble(one -> one.hours()).sum();
    Optional<Double> degrees =
        question.rule() instanceof AgeRule.NurseSaul saul
            ? Optional.of(saul.degreeHours(question.spent()))
            : Optional.empty();
    return Optional.of(new Spent(elapsed, question.rule().hours(question.spent()), degrees));
  }

  private static Room room(
      AgeRule rule,
      double hours,
      Optional<Calibration> fit,
      Optional<Spent> spent,
      double celsius) {
    double low = Math.min(fit.map(Calibration::lowHours).orElse(hours), hours * (1 - Ready.BAND));
    double high = Math.max(fit.map(Calibration::highHours).orElse(hours), hours * (1 + Ready.BAND));
    double had = spent.map(Spent::ageHours).orElse(0.0);
    Optional<Ready> still =
        spent.flatMap(
            past -> Ready.at(rule, left(low, had), left(hours, had), left(high, had), celsius));
    Optional<Ready> ready = Ready.at(rule, low, hours, high, celsius);
    return new Room(celsius, rule.factor(celsius), ready, still);
  }

  private static double left(double hours, double had) {
    return Math.max(0, hours - had);
  }

  private static Strong strong(CuringQuestion question, double days) {
    Strength band = Strength.band(days * HOURS_PER_DAY, question.cement());
    List<Part> parts =
        question.cement().map(List::of).orElse(List.of(CementClass.values())).stream()
            .map(cement -> part(question, days, cement))
            .toList();
    return new Strong(days, band.low(), band.high(), band.early(), parts, Strength.aci209(days));
  }

  private static Part part(CuringQuestion question, double days, CementClass cement) {
    Optional<Double> characteristic =
        question
            .characteristicMpa()
            .filter(mpa -> days > LEAST_DAYS)
            .map(mpa -> Strength.characteristicMpa(mpa, days, cement));
    return new Part(cement, Strength.fraction(days, cement), characteristic);
  }

  private static String plain(double number) {
    return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }

  private static String rule(AgeRule rule) {
    return switch (rule) {
      case AgeRule.En1992 standard -> "EN 1992-1-1 Annex B, Eq. B.10";
      case AgeRule.Arrhenius own ->
          "equivalent age, activation " + Math.round(own.kelvin()) + " K (E/R)";
      case AgeRule.NurseSaul saul -> "Nurse and Saul, datum " + plain(saul.datumC()) + " °C";
    };
  }
}
