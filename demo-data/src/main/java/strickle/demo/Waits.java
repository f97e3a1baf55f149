package strickle.demo;

import java.time.LocalDate;
import java.util.List;
import strickle.book.Person;
import strickle.book.WaitKind;

/** Draws the most that a wait may be, so that whoever ends it always comes in before it is over. */
final class Waits {

  /**
   * The coldest a generated room gets. The rate of setting there, by formats.md exp(13.65 - 4000 /
   * (273 + 8)) = 0.557, makes every cure 1.8 times as long.
   */
  static final int COLDEST_C = 8;

  private static final double COLD_FACTOR = 1.8;

  private final Dice dice;
  private final List<Person> people;
  private final LocalDate from;

  Waits(Dice dice, List<Person> people, LocalDate from) {
    this.dice = dice;
    this.people = people;
    this.from = from;
  }

  /** The most hours for a set: whoever comes in next after it may demould. */
  double setAtMost(double setHours) {
    return atMost(WaitKind.CURE, setHours, List.of());
  }

  /**
   * The most hours for a wait: its own length in the coldest room, then the longest time that
   * anyone of those who may end it is away, then a little.
   *
   * @param by the ids of those who may end it; none means everyone
   */
  double atMost(WaitKind kind, double hours, List<String> by) {
    List<Person> who = people.stream().filter(p -> by.isEmpty() || by.contains(p.id())).toList();
    double cold = kind == WaitKind.CURE ? COLD_FACTOR : 1;
    return Math.ceil(hours * cold) + OpenHours.longestClosedHours(who, from) + dice.from(2, 48);
  }
}
