package strickle.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every word that the page asks for is there, and one that is not shows no key. */
@FunctionTest
class WordsTest {

  private static final Path PAGE = Path.of("../web/src/main/resources/strickle/web");

  @Test
  void everyWordThatIsAskedForByItsNameIsThere() throws IOException {
    List<?> missing =
        Functions.list(
            """
            async ({load}, keys) => {
              const {hasWord} = await load('app/words.js');
              return keys.filter(key => !hasWord(key));
            }
            """,
            keys());
    assertEquals(List.of(), missing);
  }

  @Test
  void aWordThatIsNotThereShowsNoKey() {
    assertEquals(
        "",
        Functions.call(
            "async ({load}) => (await load('app/words.js')).say('week.pins.nothing')", List.of()));
  }

  @Test
  void oneThingIsCountedAsOne() {
    assertEquals(
        List.of("Bring 1 piece", "Bring 2 pieces"),
        Functions.list(
            """
            async ({load}) => {
              const {say} = await load('app/words.js');
              return [1, 2].map(count => say('fairs.earns', {count}).split(':')[0]);
            }
            """,
            List.of()));
  }

  /** What stands in quotes and begins like a word's name, wherever that is. */
  private static List<String> keys() throws IOException {
    String groups = String.join("|", groups());
    Pattern key = Pattern.compile("say\\(\\s*'((?:" + groups + ")(?:\\.[\\w-]+)+)'");
    Pattern chosen = Pattern.compile("[?:] '((?:" + groups + ")(?:\\.[\\w-]+)+)'");
    try (Stream<Path> files = Files.walk(PAGE)) {
      List<String> texts =
          files.filter(file -> file.toString().endsWith(".js")).map(WordsTest::text).toList();
      List<String> found =
          Stream.of(key, chosen)
              .flatMap(pattern -> texts.stream().flatMap(text -> all(pattern, text)))
              .distinct()
              .sorted()
              .toList();
      assertTrue(found.size() > 500, found.size() + " words asked for");
      return found;
    }
  }

  private static Stream<String> all(Pattern pattern, String text) {
    return pattern.matcher(text).results().map((MatchResult result) -> result.group(1));
  }

  private static List<String> groups() {
    Pattern group = Pattern.compile("^  '?([\\w-]+)'?: \\{$", Pattern.MULTILINE);
    return all(group, text(PAGE.resolve("words/en.js"))).toList();
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
