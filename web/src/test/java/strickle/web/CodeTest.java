package strickle.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Which words of a module are code. What counts as what: ECMA-262, clause 12. */
class CodeTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "// import a",
        "/* export a\n * import b */",
        "/** @param {import('./outbox.js').Waiting} waiting */",
        "const a = 'import b';",
        "const a = \"it's \\\" export b\";",
        "const a = `\nimport b ${c} export d`;",
        "const a = `one ${say(`two ${three} import`)} export`;",
        "const a = `\\${` + 'import';",
        "const a = /import [/'\"`] export/g;",
        "const a = b.replace(/\\/'/, '') || /[`]/;",
        "if (a) { return /import'/; }",
        "a.import(); this.#import(b); b?.export;",
        "const imports = exported + $import;"
      })
  void aWordIsNoCodeInACommentTextTemplateExpressionOrAsAProperty(String text) {
    assertEquals(List.of(), Code.words("a.js", text));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "a / b; import c; d / e",
        "(a) / b; import c; d / e",
        "a[0] / 'x'; import c; d / e",
        "`${a / b}`; import c; 'd'",
        "const a = /x/g, b = 'y'; import c",
        "a = b++ / c; import d"
      })
  void whatStandsBehindADivisionIsReadOn(String text) {
    List<Code.Word> words = Code.words("a.js", text);
    assertEquals(1, words.size(), words.toString());
    assertEquals(text.indexOf("import"), words.getFirst().at());
  }

  @Test
  void aWordKnowsHowManyBracesItStandsIn() {
    String text = "export a; {import b; `${ {c: await d} } ${e}`; } await f";
    List<String> words =
        Code.words("a.js", text).stream().map(word -> word.text() + word.depth()).toList();
    assertEquals(List.of("export0", "import1", "await3", "await0"), words);
  }

  @ParameterizedTest
  @ValueSource(strings = {"a = 'b", "a = `b ${c}", "/* a", "a = 'b\n'", "{ a", "a }", "`${a"})
  void whatIsNotClosedIsRefusedWithItsFile(String text) {
    IllegalStateException refused =
        assertThrows(IllegalStateException.class, () -> Code.words("app/a.js", text));
    assertTrue(refused.getMessage().startsWith("app/a.js "), refused.getMessage());
  }
}
