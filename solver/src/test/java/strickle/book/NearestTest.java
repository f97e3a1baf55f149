package strickle.book;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestTest {

  private static final Collection<String> FIELDS =
      Set.of("volumeMl", "wastePercent", "prepMinutes", "pourMinutes", "setHours", "id", "forms");

  @ParameterizedTest
  @CsvSource({
    "volumeML, volumeMl",
    "volume, volumeMl",
    "vloumeMl, volumeMl",
    "wastePercnt, wastePercent",
    "prepMinuets, prepMinutes",
    "setHour, setHours",
    "form, forms",
    "ID, id",
    "idd, id"
  })
  void aSlipOfThePenIsUnderstood(String word, String meant) {
    assertEquals(Optional.of(meant), Nearest.to(word, FIELDS));
  }

  @ParameterizedTest
  @CsvSource({"colour", "x", "Hours", "''"})
  void aWordFarFromAllIsNot(String word) {
    assertEquals(Optional.empty(), Nearest.to(word, FIELDS));
  }

  @Test
  void ofSeveralAsNearTheFirstInTheAlphabetIsTaken() {
    assertEquals(Optional.of("tub-a"), Nearest.to("tub-x", List.of("tub-c", "tub-a", "tub-b")));
    assertEquals(Optional.of("tub-a"), Nearest.to("tub-x", List.of("tub-b", "tub-c", "tub-a")));
  }

  @Test
  void aNearerWordWinsWhateverTheOrder() {
    assertEquals(Optional.of("rack-2"), Nearest.to("rack-2x", List.of("rack-10", "rack-2")));
    assertEquals(Optional.of("rack-2"), Nearest.to("rack-2x", List.of("rack-2", "rack-10")));
  }

  @Test
  void twoLettersSwappedAreOneChange() {
    assertEquals(Optional.of("bo"), Nearest.to("ob", List.of("bo")));
    assertEquals(Optional.empty(), Nearest.to("xy", List.of("bo")));
  }

  @Test
  void veryLongWordsAreNotCompared() {
    assertEquals(Optional.empty(), Nearest.to("a".repeat(101), List.of("a".repeat(101))));
    assertEquals(Optional.of("a".repeat(99)), Nearest.to("a".repeat(100), List.of("a".repeat(99))));
  }

  @Test
  void theWordFoundIsTheNearestByTheDefinitionOfTheDistance() {
    Random random = new Random(7);
    for (int round = 0; round < 500; round++) {
      String word = word(random);
      List<String> known = List.of(word(random), word(random), word(random));
      assertEquals(byDefinition(word, known), Nearest.to(word, known), word + " in " + known);
    }
  }

  private static String word(Random random) {
    StringBuilder word = new StringBuilder();
    int length = 1 + random.nextInt(7);
    for (int i = 0; i < length; i++) {
      word.append((char) ('a' + random.nextInt(3)));
    }
    return word.toString();
  }

  private static Optional<String> byDefinition(String word, List<String> known) {
    return known.stream()
        .filter(k -> distance(word, k) <= Math.max(1, Math.max(word.length(), k.length()) / 3))
        .min(
            Comparator.comparingInt((String k) -> distance(word, k))
                .thenComparing(Comparator.naturalOrder()));
  }

  /** Optimal string alignment, straight from its recursive definition. */
  private static int distance(String a, String b) {
    if (a.isEmpty() || b.isEmpty()) {
      return a.length() + b.length();
    }
    String shortA = a.substring(1);
    String shortB = b.substring(1);
    int least = distance(shortA, shortB) + (a.charAt(0) == b.charAt(0) ? 0 : 1);
    least = Math.min(least, 1 + distance(shortA, b));
    least = Math.min(least, 1 + distance(a, shortB));
    boolean swapped =
        a.length() > 1
            && b.length() > 1
            && a.charAt(0) == b.charAt(1)
            && a.charAt(1) == b.charAt(0);
    return swapped ? Math.min(least, 1 + distance(a.substring(2), b.substring(2))) : least;
  }
}
