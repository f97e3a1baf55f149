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

  /** Once a plan is under way, a pin of a moment gone by says nothing any more. */
  private static boolean isOver(Facts facts, Pin pin) {
    return facts.history().isPresent() && facts.time().minute(pin.start()) < facts.now();
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
