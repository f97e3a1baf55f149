package strickle.safety;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import strickle.book.Step;

/**
 * A step of a route, and what its words say it does.
 *
 * @param step the step
 * @param acts what it does; empty when none of its words is known
 * @param named everything its words name, done here or not, but the closing of a carton
 * @param sure false when other words in it could mean another act
 * @param wet whether it works with water
 * @param dusty whether it takes something off without water: "sand, then rinse" does
 */
record Doing(Step step, Set<Act> acts, Set<Act> named, boolean sure, boolean wet, boolean dusty) {

  private static final Pattern CLAUSES =
      Pattern.compile("\\s*(?:\\band\\b|\\bthen\\b|[,;&+/]|[.]\\s)\\s*");

  Doing {
    acts = Set.copyOf(acts);
    named = Set.copyOf(named);
  }

  /**
   * Reads a step, clause by clause; see {@link Clause}.
   *
   * @param coats whether it uses up something that is a coating
   */
  static Doing of(Step step, boolean coats) {
    List<Clause> clauses = CLAUSES.splitAsStream(step.step()).map(Clause::of).toList();
    EnumSet<Act> acts = EnumSet.noneOf(Act.class);
    EnumSet<Act> named = EnumSet.noneOf(Act.class);
    clauses.forEach(clause -> acts.addAll(clause.acts()));
    clauses.forEach(clause -> named.addAll(clause.named()));
    boolean sure = clauses.stream().allMatch(Clause::sure);
    // What uses up a coating to seal, paint, gild or glue with says nothing more by its use.
    if (coats && acts.stream().noneMatch(Act.PUTS_ON::contains)) {
      acts.add(Act.SEAL);
      sure = false;
    }
    boolean wet = clauses.stream().anyMatch(Clause::wet);
    return new Doing(step, acts, named, sure, wet, dusty(clauses));
  }

  // What is wet stays so in the clauses behind: wet sand and polish.
  private static boolean dusty(List<Clause> clauses) {
    return clauses.stream()
        .takeWhile(clause -> !clause.wet())
        .anyMatch(clause -> clause.acts().contains(Act.SAND));
  }

  boolean does(Act act) {
    return acts.contains(act);
  }

  /** Whether it leaves a coat that has to dry. */
  boolean coats() {
    return does(Act.SEAL) || does(Act.PAINT);
  }

  /** Whether its words name a coat or a glue, whatever is done with it. */
  boolean handlesCoats() {
    return coats()
        || does(Act.GLUE)
        || named.stream().anyMatch(EnumSet.of(Act.SEAL, Act.PAINT, Act.GLUE)::contains);
  }

  /** Whether it names something that is put on, and is read as something else. */
  boolean passesOver() {
    return named.stream().anyMatch(Act.PUTS_ON::contains)
        && acts.stream().noneMatch(Act.PUTS_ON::contains);
  }

  /** Whether it does nothing that could mark a wet coat. */
  boolean leavesCoatsAlone() {
    return acts.isEmpty() || acts.equals(Set.of(Act.LOOK));
  }

  /** Whether it takes off of a coat what is too much, as wax is buffed and oil is wiped. */
  boolean rubsOut(Doing coat) {
    return Vocabulary.names(step.step(), Vocabulary.TOO_MUCH)
        || (Vocabulary.names(step.step(), Vocabulary.RUBS_OUT)
            && Vocabulary.names(coat.step().step(), Vocabulary.RUBBED_OUT)
            && acts.stream().noneMatch(Act.PUTS_ON::contains));
  }

  /** Whether something is laid in it, or held where it was laid. */
  boolean lays() {
    return does(Act.LAY) || does(Act.LEAF) || does(Act.PRESS);
  }

  /** Its words as somebody would quote them. */
  String quoted() {
    return '"' + step.step() + '"';
  }
}
