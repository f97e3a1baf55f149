package strickle.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import strickle.book.Core;
import strickle.book.FormUse;
import strickle.book.Mould;
import strickle.book.Use;

/** Writes one mould: its forms, what it holds, its minutes and its set. */
final class MouldEntry {

  private final String id;
  private final String name;
  private final List<FormUse> forms = new ArrayList<>();
  private final List<Use> consumes = new ArrayList<>();
  private int cavities;
  private double volumeMl;
  private double wastePercent;
  private int prepMinutes;
  private int pourMinutes;
  private int demouldMinutes;
  private double setHours;
  private OptionalDouble setAtMostHours = OptionalDouble.empty();
  private Optional<Core> core = Optional.empty();

  private MouldEntry(String id, String name) {
    this.id = id;
    this.name = name;
  }

  /** A mould; say next what it is set up from. */
  static MouldEntry mould(String id, String name) {
    return new MouldEntry(id, name);
  }

  /** A form it needs, and how many units of it. */
  MouldEntry of(String form, int count) {
    forms.add(new FormUse(form, count));
    return this;
  }

  /** What one filling is: pieces it gives, millilitres in all, percent lost in bucket and flash. */
  MouldEntry holds(int pieces, double ml, double waste) {
    cavities = pieces;
    volumeMl = ml;
    wastePercent = waste;
    return this;
  }

  /** Attended minutes of one casting: to prepare, to pour, to demould and clean. */
  MouldEntry minutes(int prep, int pour, int demould) {
    prepMinutes = prep;
    pourMinutes = pour;
    demouldMinutes = demould;
    return this;
  }

  /** Hours to set at 20 degrees Celsius. */
  MouldEntry sets(double hours) {
    setHours = hours;
    return this;
  }

  /** Hours after which it must not sit in the mould any longer. */
  MouldEntry atMost(double hours) {
    setAtMostHours = OptionalDouble.of(hours);
    return this;
  }

  /** A core that floats: what it displaces, its own mass, the safety factor for its ballast. */
  MouldEntry core(double displacedMl, double massGrams, double safetyFactor) {
    core = Optional.of(new Core(displacedMl, massGrams, safetyFactor));
    return this;
  }

  /** What every casting uses up. */
  MouldEntry consumes(String material, String quantity) {
    consumes.add(Entries.use(material, quantity));
    return this;
  }

  /** The mould as written. */
  Mould build() {
    return new Mould(
        id,
        name,
        forms,
        cavities,
        OptionalDouble.of(volumeMl),
        List.of(),
        Optional.empty(),
        wastePercent,
        prepMinutes,
        pourMinutes,
        demouldMinutes,
        setHours,
        setAtMostHours,
        core,
        consumes);
  }
}
