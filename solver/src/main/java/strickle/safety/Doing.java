package strickle.safety;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import strickle.book.Step;

/**
 * A step of a route, and what its words say it does.
 *
 * @param step the step
 * @param acts what it does; empty when none of its words is known
 * @param sure false when other words in it could mean another act
 * @param wet whether it works with water
 * @param dry whether its words say that it works dry
 */
record Doing(Step step, Set<Act> acts, boolean sure, boolean wet, boolean dry) {

  private static final Pattern CLAUSES = Pattern.compile("\\s*(?:\\band\\b|\\bthen\\b|[,;&+])\\s*");
  private static final Pattern WORDS = Pattern.compile("[^\\p{L}]+");
  private static final Set<String> WATER = Set.of("wet", "water", "damp", "slurry");
  private static final String DRY = "dry";

  /** What uses up a coating by itself, so that its use says nothing more. */
  private static final Set<Act> STICKS = Set.of(Act.SEAL, Act.PAINT, Act.LEAF, Act.GLUE);

  /** They belong together: glue the felt, press the pads on. */
  private static final Set<Act> LAYS = Set.of(Act.GLUE, Act.LAY, Act.PRESS);

  private static final Map<String, Act> BY_WORD =
      Stream.of(Act.values())
          .flatMap(act -> act.words().stream().map(word -> Map.entry(word, act)))
          .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, Map.Entry::getValue));

  Doing {
    acts = Set.copyOf(acts);
  }

  /**
   * Reads a step. The first known word of each clause is what is done, as it is in "sand the leaf
   * tray"; glue and a clamp name what is laid, too.
   *
   * @param coats whether it uses up something that is a coating
   */
  static Doing of(Step step, boolean coats) {
    EnumSet<Act> acts = EnumSet.noneOf(Act.class);
    boolean sure = true;
    for (String clause : CLAUSES.split(step.step().toLowerCase(Locale.ROOT), -1)) {
      List<Act> found = acts(clause);
      boolean together = LAYS.containsAll(found);
      acts.addAll(together ? found : found.subList(0, 1));
      sure &= together || found.size() <= 1;
    }
    if (coats && acts.stream().noneMatch(STICKS::contains)) {
      acts.add(Act.SEAL);
      sure = false;
    }
    Set<String> words = words(step);
    boolean wet = acts.contains(Act.WET) || words.stream().anyMatch(WATER::contains);
    return new Doing(step, acts, sure, wet, words.contains(DRY));
  }

  boolean does(Act act) {
    return acts.contains(act);
  }

  /** Whether it leaves a coat that has to dry. */
  boolean coats() {
    return does(Act.SEAL) || does(Act.PAINT);
  }

  /** Whether something is laid in it, or held where it was laid. */
  boolean lays() {
    return does(Act.LAY) || does(Act.LEAF) || does(Act.PRESS);
  }

  /** Its words as somebody would quote them. */
  String quoted() {
    return '"' + step.step() + '"';
  }

  private static Set<String> words(Step step) {
    return WORDS
        .splitAsStream(step.step().toLowerCase(Locale.ROOT))
        .collect(Collectors.toUnmodifiableSet());
  }

  private static List<Act> acts(String clause) {
    return WORDS
        .splitAsStream(clause)
        .filter(BY_WORD::containsKey)
        .map(BY_WORD::get)
        .distinct()
        .toList();
  }
}
