package strickle.plan.audit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strickle.book.Mix;
import strickle.mix.Recipe;
import strickle.mix.Share;
import strickle.plan.Lot;
import strickle.plan.Weighed;

/**
 * A lot weighs what its castings take, to 0.1 g; its weigh-out names every material of the mix and
 * water once, each with its share, and adds up to the lot.
 */
final class WeighOutRule implements Rule {

  /** So that the weights add up, one may be rounded to the farther of its two tenths. */
  private static final double ROUNDING_GRAMS = 0.1;

  private static final double TOLERANCE_GRAMS = 1e-6;

  @Override
  public int number() {
    return 0;
  }

  @Override
  public void read(Facts facts, Findings findings) {
    for (Lot lot : facts.plan().lots()) {
      wetGrams(facts, lot, findings);
      sum(lot, findings);
      Optional<Mix> mix = facts.mix(lot.mix());
      mix.ifPresent(known -> materials(lot, facts.recipe(known), findings));
    }
  }

  private static void wetGrams(Facts facts, Lot lot, Findings findings) {
    List<Course> courses = facts.courses(lot);
    if (courses.size() < lot.runs().size()) {
      return;
    }
    double due = facts.wetGrams(courses);
    findings.unless(
        Math.abs(lot.wetGrams() - due) <= ROUNDING_GRAMS / 2 + TOLERANCE_GRAMS,
        where(lot),
        "wetGrams " + lot.wetGrams() + ", but its castings take " + Say.number(due));
    tenths(lot, "wetGrams", lot.wetGrams(), findings);
  }

  private static void sum(Lot lot, Findings findings) {
    double sum = lot.weighOut().stream().mapToDouble(Weighed::grams).sum();
    findings.unless(
        Math.abs(sum - lot.wetGrams()) <= TOLERANCE_GRAMS,
        where(lot),
        "the weigh-out adds up to " + Say.number(sum) + " g, the lot is " + lot.wetGrams() + " g");
  }

  private static void materials(Lot lot, Recipe recipe, Findings findings) {
    Map<String, Double> shares = new HashMap<>();
    for (Share share : recipe.shares()) {
      shares.put(share.material(), share.fraction());
    }
    for (Weighed weighed : lot.weighOut()) {
      Double share = shares.remove(weighed.material());
      if (share == null) {
        findings.add(where(lot), weighed.material() + " is not in the mix, or stands there twice");
      } else {
        material(lot, weighed, share * lot.wetGrams(), findings);
      }
    }
    shares.keySet().forEach(id -> findings.add(where(lot), id + " is missing in the weigh-out"));
  }

  private static void material(Lot lot, Weighed weighed, double due, Findings findings) {
    findings.unless(
        Math.abs(weighed.grams() - due) <= ROUNDING_GRAMS + TOLERANCE_GRAMS,
        where(lot),
        weighed.grams() + " g of " + weighed.material() + ", but the mix takes " + Say.number(due));
    tenths(lot, weighed.material(), weighed.grams(), findings);
  }

  private static void tenths(Lot lot, String what, double grams, Findings findings) {
    findings.unless(
        Math.abs(grams * 10 - Math.rint(grams * 10)) <= TOLERANCE_GRAMS,
        where(lot),
        what + " of " + grams + " g is not given to 0.1 g");
  }

  private static String where(Lot lot) {
    return "lot " + lot.id();
  }
}
