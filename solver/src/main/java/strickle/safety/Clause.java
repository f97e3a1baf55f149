package strickle.safety;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One clause of a step. What is put on is what is done, whatever it is put on with: to brush on
 * sealer is to seal. Otherwise the first known word says what is done, as it does in "sand the leaf
 * tray"; glue and a clamp name what is laid, too.
 *
 * @param acts what is done; empty when none of its words is known
 * @param named everything its words name, done here or not; nothing where packaging is closed
 * @param sure false when other words in it could mean another act
 */
record Clause(Set<Act> acts, Set<Act> named, boolean sure) {

  Clause {
    acts = Set.copyOf(acts);
    named = Set.copyOf(named);
  }

  /** Reads the words between two commas. */
  static Clause of(String text) {
    List<String> words = known(Vocabulary.wordsOf(text));
    EnumSet<Act> named = EnumSet.noneOf(Act.class);
    words.forEach(word -> named.add(act(word)));
    if (Vocabulary.names(text, Vocabulary.PACKAGING)) {
      named.removeAll(Act.PUTS_ON);
    }
    boolean other = Vocabulary.names(text, Vocabulary.NOT_THE_PIECE);
    Clause read = read(other ? words.stream().filter(Clause::stays).toList() : here(text, words));
    boolean doubt =
        Vocabulary.names(text, Vocabulary.PERHAPS_PACKAGING)
            && read.acts().stream().anyMatch(Act.PUTS_ON::contains);
    return new Clause(read.acts(), named, read.sure() && !doubt);
  }

  private static Clause read(List<String> words) {
    Set<Act> all = acts(words);
    if (words.isEmpty() || Act.LAYS.containsAll(all)) {
      return new Clause(all, all, true);
    }
    List<String> puts = words.stream().filter(word -> Act.PUTS_ON.contains(act(word))).toList();
    if (puts.isEmpty() || Vocabulary.STAYS.contains(words.get(0))) {
      return new Clause(Set.of(act(words.get(0))), all, all.size() == 1);
    }
    List<String> plain = puts.stream().filter(word -> !Vocabulary.COATS.contains(word)).toList();
    Set<Act> rest = acts(words.stream().filter(word -> !isMeans(word)).toList());
    Act act = act(plain.isEmpty() ? puts.get(0) : plain.get(0));
    return new Clause(Set.of(act), all, rest.isEmpty() || rest.equals(Set.of(act)));
  }

  // What something is put on with, and coats that take the act of the word beside them.
  private static boolean isMeans(String word) {
    return Vocabulary.APPLIES.contains(word) || Vocabulary.COATS.contains(word);
  }

  /** The known words up to one behind which nothing is put on; all when none stands before it. */
  private static List<String> here(String text, List<String> words) {
    List<String> before =
        known(
            Vocabulary.wordsOf(text).stream()
                .takeWhile(word -> !Vocabulary.TURNS.contains(word))
                .toList());
    return before.isEmpty() ? words : before;
  }

  private static List<String> known(List<String> words) {
    return words.stream().map(Vocabulary::plain).flatMap(Optional::stream).toList();
  }

  // Of what is done to a form or a carton, only what says nothing of a coat.
  private static boolean stays(String word) {
    return !Act.PUTS_ON.contains(act(word));
  }

  private static Set<Act> acts(List<String> words) {
    EnumSet<Act> acts = EnumSet.noneOf(Act.class);
    words.forEach(word -> acts.add(act(word)));
    return acts;
  }

  private static Act act(String plain) {
    return Vocabulary.act(plain).orElseThrow();
  }
}
