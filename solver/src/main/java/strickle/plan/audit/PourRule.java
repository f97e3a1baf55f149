package strickle.plan.audit;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import strickle.book.Mix;
import strickle.book.Mould;
import strickle.plan.Lot;
import strickle.plan.Run;
import strickle.plan.TaskKind;

/** Rule 1: what goes into a lot, and its pour. */
final class PourRule implements Rule {

  private static final double TOLERANCE_GRAMS = 1e-6;

  @Override
  public int number() {
    return 1;
  }

  @Override
  public void read(Facts facts, Findings findings) {
    Set<String> lots = facts.plan().lots().stream().map(Lot::id).collect(Collectors.toSet());
    for (Stint stint : facts.stints()) {
      boolean known = stint.task().kind() != TaskKind.POUR || lots.contains(stint.task().lot());
      findings.unless(
          known,
          stint.where(),
          "pours lot " + stint.task().lot() + ", which the plan does not have");
    }
    facts.plan().lots().forEach(lot -> lot(facts, lot, findings));
  }

  private static void lot(Facts facts, Lot lot, Findings findings) {
    runs(facts, lot, findings);
    pours(facts, lot, findings);
    Optional<Mix> mix = facts.mix(lot.mix());
    if (mix.isEmpty()) {
      findings.add(where(lot), "is of mix " + lot.mix() + ", which the book does not know");
    } else if (facts.courses(lot).size() == lot.runs().size()) {
      limits(facts, lot, mix.get(), findings);
    }
  }

  private static void runs(Facts facts, Lot lot, Findings findings) {
    findings.unless(!lot.runs().isEmpty(), where(lot), "has no runs");
    Set<String> poured = new HashSet<>();
    for (Run run : lot.runs()) {
      boolean first = poured.add(run.piece());
      findings.unless(first, where(lot), "has more than one run of piece " + run.piece());
      boolean known = facts.piece(run.piece()).isPresent();
      findings.unless(
          known,
          "run " + run.id(),
          "is of piece " + run.piece() + ", which the book does not know");
    }
    for (Course course : facts.courses(lot)) {
      String mix = course.piece().mix();
      boolean same = mix.equals(lot.mix());
      findings.unless(same, course.where(), "is of mix " + mix + ", its lot of mix " + lot.mix());
    }
  }

  private static void pours(Facts facts, Lot lot, Findings findings) {
    List<Stint> pours = facts.pours(lot.id());
    findings.unless(
        pours.size() == 1, where(lot), "has " + pours.size() + " pours; it needs just one");
    for (Stint pour : pours) {
      int spells = pour.task().spells().size();
      findings.unless(
          spells == 1, pour.where(), "is cut into " + spells + " spells; a pour is never cut");
    }
  }

  private static void limits(Facts facts, Lot lot, Mix mix, Findings findings) {
    List<Course> courses = facts.courses(lot);
    long pouring = perCasting(courses, Mould::pourMinutes);
    long minutes =
        perCasting(courses, Mould::prepMinutes) + mix.mixMinutes() + pouring + mix.washMinutes();
    for (Stint pour : facts.pours(lot.id())) {
      findings.unless(
          pour.minutes() == minutes || pour.isHistory(),
          pour.where(),
          "takes " + pour.minutes() + " minutes; the lot needs " + minutes);
    }
    findings.unless(
        pouring <= mix.workingMinutes(),
        where(lot),
        "takes " + pouring + " minutes to fill, the mix works for " + mix.workingMinutes());
    double grams = facts.wetGrams(courses);
    double limit = facts.book().studio().batchLimitGrams();
    findings.unless(
        grams <= limit + TOLERANCE_GRAMS,
        where(lot),
        "is " + Say.number(grams) + " g, the studio mixes at most " + Say.number(limit));
  }

  private static long perCasting(List<Course> courses, ToIntFunction<Mould> minutes) {
    return courses.stream()
        .mapToLong(c -> (long) c.run().castings() * minutes.applyAsInt(c.mould()))
        .sum();
  }

  private static String where(Lot lot) {
    return "lot " + lot.id();
  }
}
