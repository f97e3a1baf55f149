package strickle.plan.audit;

import java.util.Optional;
import java.util.OptionalLong;
import strickle.book.Core;
import strickle.mix.Ballast;

/**
 * A run states whole grams of ballast for each casting, to the nearest, just when it has a core.
 */
final class BallastRule implements Rule {

  private static final double NEAREST_GRAMS = 0.5 + 1e-6;

  @Override
  public int number() {
    return 0;
  }

  @Override
  public void read(Facts facts, Findings findings) {
    for (Course course : facts.courses()) {
      Optional<Core> core = course.mould().core();
      OptionalLong stated = course.run().ballastGramsEach();
      if (core.isPresent()) {
        double due = Ballast.grams(core.get(), facts.recipe(course.mix()).wetDensityKgPerM3());
        core(course, stated, due, findings);
      } else {
        boolean none = stated.isEmpty();
        findings.unless(none, course.where(), "gives ballast, but its mould has no core");
      }
    }
  }

  private static void core(Course course, OptionalLong stated, double due, Findings findings) {
    findings.unless(
        Math.abs(stated.orElse(0) - due) <= NEAREST_GRAMS,
        course.where(),
        "ballast of " + stated.orElse(0) + " g each, but the core needs " + Say.number(due));
  }
}
