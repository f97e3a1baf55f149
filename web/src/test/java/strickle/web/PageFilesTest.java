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
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What the page is made of: everything that is asked for is there, and nothing from elsewhere. */
class PageFilesTest {

  private static final Pattern OUTSIDE =
      Pattern.compile("(?i)(https?:)?//(?!www\\.w3\\.org/)[a-z]");

  private final Page page = Page.now();
  private final Map<String, String> named = Shell.named(page.files());
  private final Imports imports = new Imports(page.files(), named);

  @Test
  void whateverAModuleImportsIsAFileOfThePage() {
    Set<String> missing = new TreeSet<>();
    own(".js")
        .forEach(
            file ->
                imports.module(file.name()).needed().stream()
                    .filter(name -> page.file(name).isEmpty())
                    .forEach(name -> missing.add(file.name() + " asks for " + name)));
    assertEquals(Set.of(), missing);
  }

  @Test
  void everyEntryOfTheImportMapLeadsToAFileOrAFolderOfThePage() {
    List<String> astray =
        named.values().stream()
            .filter(
                name ->
                    page.files().keySet().stream()
                        .noneMatch(name.endsWith("/") ? at -> at.startsWith(name) : name::equals))
            .toList();
    assertTrue(named.size() > 5);
    assertEquals(List.of(), astray);
  }

  @Test
  void nothingIsAskedForFromOutside() {
    List<String> outside =
        Stream.of(".js", ".css", ".html", ".svg")
            .flatMap(this::own)
            .filter(file -> OUTSIDE.matcher(withoutComments(text(file))).find())
            .map(PageFile::name)
            .toList();
    assertEquals(List.of(), outside);
  }

  @Test
  void theDocumentOfARoomNamesThePacksItBeginsWithAndNothingElse() {
    String at = "/page/" + page.print() + "/";
    String document = text(page.document("week", Asks.STUDIO).orElseThrow());
    List<String> named =
        Pattern.compile("<link rel=\"modulepreload\" href=\"" + at + "([^\"]+)\">")
            .matcher(document)
            .results()
            .map(link -> link.group(1))
            .toList();
    assertEquals(List.of("pack/core.js", "pack/week.js"), named);
    assertTrue(document.contains("<script type=\"module\" src=\"" + at + "pack/core.js\">"));
    assertFalse(document.contains("{page}") || document.contains("{room}"), "a place is left open");
  }

  @Test
  void thePolicyAllowsNothingUnsafe() {
    assertFalse(page.policy().contains("unsafe"), page.policy());
    assertTrue(page.policy().contains("'sha256-"), page.policy());
  }

  @Test
  void aDocumentHasNoInlineScriptButTheImportMapAndWhatAsksForAStudioThatIsOpen() {
    Pattern inline = Pattern.compile("<script(?![^>]*\\ssrc=)");
    String closed = text(page.document("", Asks.NOTHING).orElseThrow());
    assertEquals(1, inline.matcher(closed).results().count());
    assertFalse(closed.contains("/api/"), closed);
    String document = text(page.document("", Asks.STUDIO_AND_PLAN).orElseThrow());
    assertEquals(2, inline.matcher(document).results().count());
    assertTrue(document.contains("'/api/book'"), document);
    assertFalse(Pattern.compile("<style|\\sstyle=|\\son[a-z]+=").matcher(document).find());
  }

  @Test
  void noTemplateHasAnInlineStyleThatThePolicyWouldRefuse() {
    List<String> inline =
        own(".js")
            .filter(
                file -> Pattern.compile("<[a-z][^>`]*\\sstyle=[\"']").matcher(text(file)).find())
            .map(PageFile::name)
            .toList();
    assertEquals(List.of(), inline);
  }

  private Stream<PageFile> own(String ending) {
    return page.files().values().stream()
        .filter(file -> !file.name().startsWith(Libraries.FOLDER))
        .filter(file -> !file.name().startsWith(Packs.FOLDER))
        .filter(file -> file.name().endsWith(ending));
  }

  private static String text(PageFile file) {
    return new String(file.bytes(), StandardCharsets.UTF_8);
  }

  private static String withoutComments(String text) {
    return text.replaceAll("(?s)/\\*.*?\\*/", "").replaceAll("(?m)(^|\\s)// .*$", "");
  }
}
