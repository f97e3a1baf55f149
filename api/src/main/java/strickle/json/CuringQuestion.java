package strickle.json;

import java.util.List;
import java.util.Optional;
import strickle.cure.AgeRule;
import strickle.cure.CementClass;
import strickle.cure.Found;
import strickle.cure.Stretch;

/**
 * What {@code strickle curing} is asked.
 *
 * @param rule the rule of age
 * @param hours hours at 20 °C after which castings are ready, when they are given
 * @param records castings that were found ready, else
 * @param rooms temperatures to tell the time for, in °C
 * @param spent what one casting has been through
 * @param ageDays an age at 20 °C to tell the strength for
 * @param cement the class of the cement, when it is known
 * @param characteristicMpa the strength at 28 days, when it is known
 */
public record CuringQuestion(
    AgeRule rule,
    Optional<Double> hours,
    List<Found> records,
    List<Double> rooms,
    List<Stretch> spent,
    Optional<Double> ageDays,
    Optional<CementClass> cement,
    Optional<Double> characteristicMpa) {}
