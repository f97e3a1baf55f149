package strickle.plan.audit;

import strickle.book.Pin;
import strickle.plan.Lot;

/** Rule 9: pins are kept. */
final class PinsRule implements Rule {

  @Override
  public int number() {
    return 9;
  }

  @Override
  public void read(Facts facts, Findings findings) {
    for (Pin pin : facts.book().pins()) {
      if (isOver(facts, pin)) {
        continue;
      }
      boolean kept = facts.plan().lots().stream().anyMatch(lot -> keeps(facts, lot, pin));
      findings.unless(
          kept,
          "pin of " + pin.piece() + " at " + pin.start(),
          "no lot with " + pin.castings() + " castings is poured by " + pin.person() + " then");
    }
  }

  /** A pin of a moment gone by, or whose lot has been poured earlier on its day. */
  private static boolean isOver(Facts facts, Pin pin) {
    if (facts.history().isEmpty()) {
      return false;
    }
    return facts.time().minute(pin.start()) < facts.now()
        || facts.courses().stream()
            .filter(Course::isPoured)
            .filter(course -> course.run().piece().equals(pin.piece()))
            .filter(course -> course.run().castings() == pin.castings())
            .flatMap(course -> course.pour().stream())
            .anyMatch(pour -> facts.time().date(pour.start()).equals(pin.start().toLocalDate()));
  }

  private static boolean keeps(Facts facts, Lot lot, Pin pin) {
    return lot.runs().stream()
            .anyMatch(run -> run.piece().equals(pin.piece()) && run.castings() == pin.castings())
        && facts.pours(lot.id()).stream()
            .anyMatch(
                pour ->
                    pour.start() == facts.time().minute(pin.start())
                        && pour.task().person().equals(pin.person()));
  }
}
