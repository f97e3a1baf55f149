package strickle.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The packs of the page as it is. */
class PagePacksTest {

  private static final Pattern MODULE =
      Pattern.compile("^// (\\S+)\nconst module\\$\\d+ = \\(\\(\\) => \\{$", Pattern.MULTILINE);
  private static final Pattern RETURNED =
      Pattern.compile("^return \\{(.*)};\n}\\)\\(\\);$", Pattern.MULTILINE);
  private static final Pattern EXPORTED =
      Pattern.compile("^export (?:async )?(?:const|function|class) (\\w+)", Pattern.MULTILINE);

  private final Page page = Page.now();
  private final Imports imports = new Imports(page.files(), Shell.named(page.files()));
  private final Map<String, String> packs =
      page.files().values().stream()
          .filter(file -> file.name().startsWith(Packs.FOLDER))
          .collect(Collectors.toMap(PageFile::name, PagePacksTest::text));

  @Test
  void thereIsOnePackForEachRoomAndOneForAll() {
    Set<String> expected = new TreeSet<>(Set.of(Packs.CORE));
    page.rooms().forEach(room -> expected.add(Packs.of(room)));
    assertEquals(expected, packs.keySet());
    assertTrue(packs.size() > 10, packs.keySet().toString());
  }

  @Test
  void noModuleIsEvaluatedTwice() {
    List<String> all = packs.values().stream().flatMap(pack -> modules(pack).stream()).toList();
    assertTrue(all.size() > 100, all.size() + " modules");
    assertEquals(all.size(), Set.copyOf(all).size());
  }

  @Test
  void whateverARoomNeedsIsInItsPackOrTheCoreBehindWhatItNeedsItself() {
    for (String room : page.rooms()) {
      List<String> evaluated = modules(packs.get(Packs.CORE) + packs.get(Packs.of(room)));
      for (String module : imports.closure(Packs.moduleOf(room))) {
        int at = evaluated.indexOf(module);
        assertTrue(at >= 0, room + " lacks " + module);
        imports
            .module(module)
            .needed()
            .forEach(each -> assertTrue(evaluated.indexOf(each) < at, module + " " + each));
      }
    }
  }

  @Test
  void everyExportOfAModuleIsReturned() {
    int found = 0;
    for (String pack : packs.values()) {
      List<String> returned = found(RETURNED, pack);
      List<String> modules = modules(pack);
      assertEquals(modules.size(), returned.size());
      for (int i = 0; i < modules.size(); i++) {
        for (String export : exportsOf(modules.get(i))) {
          assertTrue((", " + returned.get(i)).contains(", " + export + ": "), export);
          found++;
        }
      }
    }
    assertTrue(found > 200, found + " exports");
  }

  @Test
  void aPackHasNoImportButThatOfTheCoreAndOnlyTheCoreExports() {
    packs.forEach(
        (name, text) -> {
          List<String> outermost =
              Code.words(name, text).stream()
                  .filter(word -> word.depth() == 0)
                  .map(Code.Word::text)
                  .toList();
          assertEquals(List.of(name.equals(Packs.CORE) ? "export" : "import"), outermost, name);
        });
  }

  @Test
  void theImportMapSendsEachRoomToItsPack() {
    String at = "/page/" + page.print() + "/";
    String document = text(page.document("", Asks.NOTHING).orElseThrow());
    Map<String, String> sent = Imports.entries(document, at);
    for (String room : page.rooms()) {
      assertEquals(Packs.of(room), sent.get(at + Packs.moduleOf(room)));
    }
  }

  @Test
  void theModulesStayTheFilesTheyAre() {
    assertTrue(text(page.file("app/words.js").orElseThrow()).contains("\nexport function say("));
    assertFalse(packs.containsKey("app/words.js"));
  }

  private List<String> exportsOf(String module) {
    String file = text(page.file(module).orElseThrow());
    return module.startsWith(Libraries.FOLDER) ? List.of() : found(EXPORTED, file);
  }

  private static List<String> modules(String pack) {
    return found(MODULE, pack);
  }

  private static List<String> found(Pattern pattern, String text) {
    return pattern.matcher(text).results().map(each -> each.group(1)).toList();
  }

  private static String text(PageFile file) {
    return new String(file.bytes(), StandardCharsets.UTF_8);
  }
}
