package strickle.safety;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * One clause of a step. What is put on is what is done, whatever it is put on with: to brush on
 * sealer is to seal. Otherwise the first known word says what is done, as it does in "sand the leaf
 * tray"; glue and a clamp name what is laid, too.
 *
 * @param acts what is done; empty when none of its words is known
 * @param named everything its words name, done here or not; nothing where packaging is closed
 * @param sure false when other words in it could mean another act
 * @param wet whether it works with water
 */
record Clause(Set<Act> acts, Set<Act> named, boolean sure, boolean wet) {

  // Something is put on, and what it is nobody knows.
  private static final Pattern PUT_ON =
      Pattern.compile("^(brush|wipe|wiping|rub|dab|roll|dip)[a-z]*\\s+(on|in|into)\\b.*");

  Clause {
    acts = Set.copyOf(acts);
    named = Set.copyOf(named);
  }

  /** Reads the words between two commas. */
  static Clause of(String text) {
    List<String> words = known(text, Vocabulary.wordsOf(text));
    EnumSet<Act> named = acts(words);
    if (Vocabulary.names(text, Vocabulary.PACKAGING) || isCement(words)) {
      named.removeAll(Act.PUTS_ON);
    }
    boolean other = Vocabulary.names(text, Vocabulary.NOT_THE_PIECE);
    Read read = read(other ? words.stream().filter(Clause::stays).toList() : here(text, words));
    boolean unknown = PUT_ON.matcher(String.join(" ", Vocabulary.wordsOf(text))).matches();
    Set<Act> acts = unknown && read.isNothingPutOn() ? Set.of() : read.acts();
    boolean wet = acts.contains(Act.WET) || Vocabulary.names(text, Vocabulary.WATER);
    return new Clause(acts, named, read.sure() && !isDoubtful(text, acts), wet);
  }

  /** What the words do, and whether they leave no doubt. */
  private record Read(Set<Act> acts, boolean sure) {
    boolean isNothingPutOn() {
      return acts.equals(Set.of(Act.HANDLE)) || acts.equals(Set.of(Act.SAND));
    }
  }

  private static Read read(List<String> words) {
    Set<Act> all = acts(words);
    if (words.isEmpty() || Act.LAYS.containsAll(all)) {
      return new Read(all, true);
    }
    List<String> puts = words.stream().filter(word -> Act.PUTS_ON.contains(act(word))).toList();
    if (puts.isEmpty() || Vocabulary.STAYS.contains(words.get(0))) {
      return new Read(Set.of(act(words.get(0))), all.size() == 1);
    }
    if (isCement(words)) {
      return new Read(Set.of(Act.WET), true);
    }
    return glues(words, puts) ? new Read(Set.of(Act.GLUE, Act.LAY), false) : puts(words, puts);
  }

  // A slurry coat is no coat that closes the face.
  private static boolean isCement(List<String> words) {
    return words.stream().anyMatch(Vocabulary.CEMENT_COATS::contains)
        && words.stream().filter(word -> Act.PUTS_ON.contains(act(word))).allMatch("coat"::equals);
  }

  // To mount with epoxy is to glue; spray glue is glue.
  private static boolean glues(List<String> words, List<String> puts) {
    Set<Act> plain = acts(puts.stream().filter(word -> !Vocabulary.COATS.contains(word)).toList());
    boolean glue = plain.equals(Set.of(Act.GLUE)) || Vocabulary.GLUES_TOO.containsAll(puts);
    return glue && acts(words).contains(Act.LAY);
  }

  private static Read puts(List<String> words, List<String> puts) {
    List<String> plain = puts.stream().filter(word -> !Vocabulary.COATS.contains(word)).toList();
    Set<Act> rest = acts(words.stream().filter(word -> !isMeans(word)).toList());
    Act act = act(plain.isEmpty() ? puts.get(0) : plain.get(0));
    return new Read(Set.of(act), rest.isEmpty() || rest.equals(Set.of(act)));
  }

  // Boxes and lids may be packaging, and wax a candle.
  private static boolean isDoubtful(String text, Set<Act> acts) {
    boolean candle =
        Vocabulary.names(text, Vocabulary.WAX) && Vocabulary.names(text, Vocabulary.CANDLE);
    boolean box = Vocabulary.names(text, Vocabulary.PERHAPS_PACKAGING);
    return (candle || box) && acts.stream().anyMatch(Act.PUTS_ON::contains);
  }

  // What something is put on with, and coats that take the act of the word beside them.
  private static boolean isMeans(String word) {
    return Vocabulary.APPLIES.contains(word) || Vocabulary.COATS.contains(word);
  }

  /** The known words up to one behind which nothing is put on; all when none stands before it. */
  private static List<String> here(String text, List<String> words) {
    List<String> before =
        known(
            text,
            Vocabulary.wordsOf(text).stream()
                .takeWhile(word -> !Vocabulary.TURNS.contains(word))
                .toList());
    return before.isEmpty() ? words : before;
  }

  /** Words of a text in their plain form: felt is trimmed, not cut, and edges eased are sanded. */
  private static List<String> known(String text, List<String> words) {
    boolean edge = Vocabulary.names(text, Vocabulary.EDGES);
    boolean soft = Vocabulary.names(text, Vocabulary.SOFT);
    List<String> plain =
        words.stream()
            .map(word -> edge && Vocabulary.EASES.contains(word) ? "sand" : word)
            .map(word -> soft && Vocabulary.plain(word).equals(Optional.of("cut")) ? "trim" : word)
            .map(Vocabulary::plain)
            .flatMap(Optional::stream)
            .toList();
    boolean stays = !plain.isEmpty() && Vocabulary.STAYS.contains(plain.get(0));
    return stays
        ? plain.stream().filter(word -> !Vocabulary.SHADES.contains(word)).toList()
        : plain;
  }

  // Of what is done to a form or a carton, only what says nothing of a coat.
  private static boolean stays(String word) {
    return !Act.PUTS_ON.contains(act(word));
  }

  private static EnumSet<Act> acts(List<String> words) {
    EnumSet<Act> acts = EnumSet.noneOf(Act.class);
    words.forEach(word -> acts.add(act(word)));
    return acts;
  }

  private static Act act(String plain) {
    return Vocabulary.act(plain).orElseThrow();
  }
}
