package strickle.api;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import strickle.cure.AgeRule;
import strickle.cure.CementClass;
import strickle.cure.Found;
import strickle.cure.Stretch;
import strickle.json.CuringAnswer;
import strickle.json.CuringQuestion;

/**
 * What is asked of setting and curing. Without a rule of its own it is that of EN 1992-1-1 Annex B.
 *
 * @param hours hours at 20 °C after which castings are ready, above 0, at most 87600
 * @param records or castings that were found ready, to fit those hours to; from three on
 * @param roomsC rooms to tell the time for, -30 to 80 °C
 * @param spent hours a casting has had at temperatures
 * @param ageDays an age at 20 °C to tell the strength for, above 0, at most 36500 days
 * @param cement how fast the cement gains strength; without it all of them
 * @param characteristicMpa characteristic strength at 28 days, to tell it for an age above 3 days
 * @param activationKj activation energy in kJ/mol, 0 to 150, for a rule of one's own
 * @param activationKelvin the same over the gas constant, in kelvin, 0 to 20000
 * @param datumC Nurse and Saul's rule with this datum, -50 to 15 °C
 */
public record CuringWanted(
    OptionalDouble hours,
    List<Found> records,
    List<Double> roomsC,
    List<Stretch> spent,
    OptionalDouble ageDays,
    Optional<CementClass> cement,
    OptionalDouble characteristicMpa,
    OptionalDouble activationKj,
    OptionalDouble activationKelvin,
    OptionalDouble datumC) {

  /** Refuses what is out of range or does not go together. */
  public CuringWanted {
    long rules =
        Stream.of(activationKj, activationKelvin, datumC).filter(OptionalDouble::isPresent).count();
    boolean ready = hours.isPresent() || !records.isEmpty();
    boolean aged = ageDays.isPresent() || !spent.isEmpty();
    Ranges ranges =
        new Ranges()
            .above(".hours", hours, 87_600, "hours")
            .above(".ageDays", ageDays, 36_500, "days")
            .above(".characteristicMpa", characteristicMpa, 300, "MPa")
            .within(".activationKj", activationKj, 0, 150, "an energy in kJ/mol")
            .within(".activationKelvin", activationKelvin, 0, 20_000, "an activation in kelvin")
            .within(".datumC", datumC, -50, 15, "a temperature in °C")
            .must(rules < 2, ".activationKj", rules + " rules", "one rule, or none")
            .must(
                ready || aged, ".hours", "nothing to work out", "hours, records, spent or ageDays")
            .must(
                hours.isEmpty() || records.isEmpty(),
                ".hours",
                "hours beside records",
                "one of the two")
            .must(
                roomsC.isEmpty() || ready,
                ".roomsC",
                roomsC.size() + " rooms",
                "hours or records beside them, to say what is waited for")
            .must(
                characteristicMpa.isEmpty() || aged,
                ".characteristicMpa",
                "a strength",
                "ageDays or spent beside it, to say for which age");
    for (int i = 0; i < roomsC.size(); i++) {
      OptionalDouble room = OptionalDouble.of(roomsC.get(i));
      ranges.within(".roomsC[" + i + "]", room, -30, 80, "a temperature in °C");
    }
    ranges.done();
  }

  /**
   * What is known of it.
   *
   * @throws strickle.book.Faulty when the records say too little
   */
  CuringAnswer answer() {
    return CuringAnswer.of(
        new CuringQuestion(
            rule(),
            boxed(hours),
            records,
            roomsC,
            spent,
            boxed(ageDays),
            cement,
            boxed(characteristicMpa)));
  }

  private AgeRule rule() {
    if (activationKj.isPresent()) {
      return AgeRule.Arrhenius.ofEnergy(activationKj.getAsDouble());
    }
    if (activationKelvin.isPresent()) {
      return new AgeRule.Arrhenius(activationKelvin.getAsDouble());
    }
    return datumC.isPresent() ? new AgeRule.NurseSaul(datumC.getAsDouble()) : new AgeRule.En1992();
  }

  private static Optional<Double> boxed(OptionalDouble number) {
    return number.stream().boxed().findFirst();
  }
}
