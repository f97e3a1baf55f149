package strickle.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import strickle.book.Fault;
import strickle.book.Faulty;

class SyntaxTest {

  private static final String VALUE =
      "a value: a text in double quotes, a number, true, false, null, { or [";
  private static final String NAME = "a field name in double quotes, and no comma before a }";
  private static final String NUMBER = "a number such as 12, 0.5 or -3";

  @Test
  void emptyFilesAreToldHowToBegin() {
    String right =
        "; right would be a studio book, beginning with" + " {\"format\": \"strickle-book/1\", …";
    assertEquals("$: found an empty file" + right, ExampleBook.fault(""));
    assertEquals("$: found an empty file" + right, ExampleBook.fault(" \r\n\t"));
    assertEquals("$: found an empty file" + right, ExampleBook.fault("\uFEFF"));
  }

  @Test
  void anythingButAnObjectIsToldHowToBegin() {
    String right =
        "; right would be a studio book, beginning with" + " {\"format\": \"strickle-book/1\", …";
    assertEquals("$: found [1, \"a\"]" + right, ExampleBook.fault("[1, \"a\"]"));
    assertEquals("$: found null" + right, ExampleBook.fault("null"));
    assertEquals("$: found 12" + right, ExampleBook.fault("12"));
  }

  @Test
  void missingAndSpareCommasAreTold() {
    broken("{\"a\": 1\n \"b\": 2}", "'\"' at line 2, column 2", "a comma or }");
    broken("{\"a\": 1; \"b\": 2}", "\";\" at line 1, column 8", "a comma or }");
    broken("[1 2]", "\"2\" at line 1, column 4", "a comma or ]");
    broken("[1x]", "\"1x\" at line 1, column 2", "a comma or ]");
    broken("{\"a\": 1,\n}", "\"}\" at line 2, column 1", NAME);
    broken("{\"a\": 1,, \"b\": 2}", "\",\" at line 1, column 9", NAME);
    broken("[1,]", "\"]\" at line 1, column 4", VALUE);
  }

  @Test
  void fieldsNeedNamesInQuotesAndColons() {
    broken("{volume: 1}", "\"volume\" at line 1, column 2", NAME);
    broken("{'a': 1}", "\"'\" at line 1, column 2", NAME);
    broken(
        "{\"a\" 1}",
        "\"1\" at line 1, column 6",
        "a colon (:) between a field's name and its value");
  }

  @Test
  void wordsAndNumbersThatAreNoneAreToldWhole() {
    broken("{\"a\": tru}", "\"tru\" at line 1, column 7", VALUE);
    broken("{\"a\": NaN}", "\"NaN\" at line 1, column 7", VALUE);
    broken("{\"a\": True}", "\"True\" at line 1, column 7", VALUE);
    broken("{\"a\": }", "\"}\" at line 1, column 7", VALUE);
    broken("{\"a\": 01}", "\"01\" at line 1, column 7", NUMBER);
    broken("{\"a\": 1.}", "\"1.\" at line 1, column 7", NUMBER);
    broken("{\"a\": -}", "\"-\" at line 1, column 7", NUMBER);
    broken("{\"a\": +1}", "\"+1\" at line 1, column 7", NUMBER);
  }

  @Test
  void textsEndOnTheirLine() {
    broken(
        "{\"a\": \"x\ny\"}",
        "\"\\n\" at line 1, column 9",
        "a text on one line; \\n stands for a line break, \\t for a tab");
    broken(
        "{\"a\": \"xy",
        "the end of the text at line 1, column 10",
        "a double quote at the end of every text");
    broken(
        "{\"a\": \"\\q\"}",
        "\"q\" at line 1, column 9",
        "one of \" \\ / b f n r t after a \\, or u and four digits 0-9 a-f");
  }

  @Test
  void filesThatBreakOffAreToldWhatIsOpen() {
    broken("{\"a\":\n", "the end of the text at line 2, column 1", "the rest, up to the closing }");
    broken(
        "{\"a\": [1", "the end of the text at line 1, column 9", "the rest, up to the closing ]");
  }

  @Test
  void bracketsCloseWhatTheyOpened() {
    broken(
        "{\"a\": [1}", "\"}\" at line 1, column 9", "a ] first, for the list that is still open");
    broken("{]", "\"]\" at line 1, column 2", "a } first, for the object that is still open");
  }

  @Test
  void commentsAreNoJson() {
    broken("// mine\n{}", "\"/\" at line 1, column 1", "no comments, as JSON has none");
  }

  @Test
  void nothingStandsAfterTheBook() {
    String right = "nothing after the end of the first value";
    String whole = ExampleBook.json().strip();
    long lines = whole.lines().count();
    broken(whole + "}", "\"}\" at line " + lines + ", column 2", right);
    broken(whole + "\n{}", "\"{\" at line " + (lines + 1) + ", column 1", right);
    broken(whole + "\nrest", "\"rest\" at line " + (lines + 1) + ", column 1", right);
  }

  @Test
  void placesAreRightFarIntoALongFile() {
    String far = "{\"pins\": [\n" + "1,\n".repeat(100_000);
    broken(far + "  x]}", "\"x\" at line 100002, column 3", VALUE);
    String twice = far + "1], \"a\": 0, \"a\": 1}";
    assertEquals(
        "the field \"a\" a second time at line 100002, column 13",
        ExampleBook.faults(twice).get(0).found());
  }

  @Test
  void columnsCountCharactersAndLinesEndInAnyWay() {
    broken("{\"🏺\": x}", "\"x\" at line 1, column 7", VALUE);
    broken("{\r\n\"a\":\rx}", "\"x\" at line 3, column 1", VALUE);
  }

  @Test
  void bytesThatAreNotUtf8AreRefused() {
    byte[] latin = "{\"format\":\n \"Gießerei\"}".getBytes(StandardCharsets.ISO_8859_1);
    assertEquals(
        "$: found bytes that are not UTF-8 at line 2, column 6;"
            + " right would be a file saved as UTF-8",
        bytes(latin));
    byte[] wide = "{}".getBytes(StandardCharsets.UTF_16);
    assertEquals(
        "$: found bytes that are not UTF-8 at line 1, column 1;"
            + " right would be a file saved as UTF-8",
        bytes(wide));
    byte[] cutOff = {'{', (byte) 0xE2, (byte) 0x82};
    assertEquals(
        "$: found bytes that are not UTF-8 at line 1, column 2;"
            + " right would be a file saved as UTF-8",
        bytes(cutOff));
  }

  @ParameterizedTest
  @CsvSource({
    "DEPTH, 'nesting of { and [ of more than 40 levels', at most 40 levels",
    "NAME, a field name of more than 200 characters, at most 200 characters",
    "NUMBER, a number of more than 400 digits, at most 400 digits",
    "TEXT, a text or number of more than 100000 characters, at most 100000 characters"
  })
  void whatIsTooLongOrTooDeepIsRefused(String kind, String found, String right) {
    String json =
        switch (kind) {
          case "DEPTH" -> "[".repeat(41);
          case "NAME" -> "{\"" + "n".repeat(201) + "\": 1}";
          case "NUMBER" -> "[" + "1".repeat(401) + "]";
          default -> "[\"" + "t".repeat(100_001) + "\"]";
        };
    Fault fault = ExampleBook.faults(json).get(0);
    assertEquals("$", fault.path());
    assertEquals(found, fault.found().substring(0, fault.found().indexOf(" at line 1, column ")));
    assertEquals(right, fault.right());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"[1}", "{]", "{", "[", "{\"a\"", "tru", "{\"a\":NaN}", "//", "\u0000", "]"})
  void whatTheParserSaysOfItselfIsNotTold(String json) {
    List<Fault> faults = ExampleBook.faults(json);
    for (String word : List.of("Feature", "Source", "token", "JsonRead", "Exception", "code ")) {
      assertFalse(faults.toString().contains(word), faults.toString());
    }
  }

  private static void broken(String json, String found, String right) {
    assertEquals("$: found " + found + "; right would be " + right, ExampleBook.fault(json));
  }

  private static String bytes(byte[] json) {
    return Assertions.assertThrows(
            Faulty.class, () -> BookFile.parse(json, Meshes.in(ExampleBook.NOWHERE)))
        .getMessage();
  }
}
