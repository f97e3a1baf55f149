package strickle.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import strickle.web.ModuleText.Asked;
import strickle.web.ModuleText.Given;
import strickle.web.ModuleText.Passed;

/**
 * How a module is taken apart. The forms and what they mean: ECMA-262, clauses 16.2.2 and 16.2.3.
 */
class ModuleReaderTest {

  private static final String HERE = "rooms/week/week.js";
  private static final String WORDS = "app/words.js";

  @Test
  void importsOfEveryFormAreTakenOutOfTheBody() {
    ModuleText read =
        read(
            """
            import {say, nameOf as name} from '../../app/words.js';
            import words, {more} from '../../app/words.js';
            import * as all from "lit";
            import './tools.js';
            say();
            """);
    assertEquals(
        List.of(
            new Asked(WORDS, "say", "say"),
            new Asked(WORDS, "nameOf", "name"),
            new Asked(WORDS, "default", "words"),
            new Asked(WORDS, "more", "more"),
            new Asked("lib/lit.js", ModuleText.ALL, "all")),
        read.asked());
    assertEquals(List.of(WORDS, "lib/lit.js", "rooms/week/tools.js"), List.copyOf(read.needed()));
    assertEquals("say();", read.body().strip());
  }

  @Test
  void minifiedImportsAndExportsAreTakenOutToo() {
    ModuleText read =
        read("import{a as t,$b}from\"lit\";import\"lit\";const e=t/2;export{e as _$LE};");
    assertEquals(
        List.of(new Asked("lib/lit.js", "a", "t"), new Asked("lib/lit.js", "$b", "$b")),
        read.asked());
    assertEquals(List.of(new Given("_$LE", "e")), read.given());
    assertEquals("const e=t/2;", read.body());
  }

  @Test
  void whatIsDeclaredAndExportedIsDeclaredOnly() {
    ModuleText read =
        read(
            """
            export const one = 1;
            export function two() {}
            export async function three() { await two(); }
            export class Four { five = 5; }
            export function* six() {}
            export {one as seven, two};
            """);
    assertEquals(
        List.of(
            new Given("one", "one"),
            new Given("two", "two"),
            new Given("three", "three"),
            new Given("Four", "Four"),
            new Given("six", "six"),
            new Given("seven", "one"),
            new Given("two", "two")),
        read.given());
    assertTrue(read.body().startsWith("const one = 1;\nfunction two() {}\nasync function three()"));
    assertTrue(read.body().contains("\nclass Four {"));
  }

  @Test
  void aDefaultIsAConstantOfTheBody() {
    ModuleText read = read("export default {import: 'Take in', export: 'Give out'};\n");
    assertEquals(List.of(new Given("default", "module$default")), read.given());
    assertEquals("const module$default = {import: 'Take in', export: 'Give out'};\n", read.body());
  }

  @Test
  void whatIsExportedOfOthersIsNeededButNotNamedHere() {
    ModuleText read =
        read("export*from\"lit\";\nexport {say as tell} from '../../app/words.js';\n");
    assertEquals(
        List.of(
            new Passed("lib/lit.js", ModuleText.ALL, ModuleText.ALL),
            new Passed(WORDS, "say", "tell")),
        read.passed());
    assertEquals(List.of("lib/lit.js", WORDS), List.copyOf(read.needed()));
    assertEquals("", read.body().strip());
  }

  @Test
  void anImportForLaterIsMadeFromWhereThePackStands() {
    assertEquals(
        "async () => { await import(`../rooms/week/${name}.js`); }",
        read("async () => { await import(`./${name}.js`); }").body());
    assertEquals(
        "const later = () => import(`../words/${language}.js`);",
        read("const later = () => import(`../../words/${language}.js`);").body());
  }

  @Test
  void theAddressOfASourceMapIsLeftOut() {
    assertEquals("a();\n", read("a();\n//# sourceMappingURL=a.js.map\n").body());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "export let one = 1;",
        "export var one = 1;",
        "export const {one, two} = three;",
        "export default class One {}",
        "export default function () {}",
        "export {one as 'a text'};",
        "export * as one from 'lit';",
        "await one;",
        "for (const one of await two) {}",
        "const one = import.meta.url;",
        "function one() { return import.meta.url; }",
        "import('./one.js');",
        "import(one);",
        "function one() { import(`/${two}.js`); }",
        "import {one /* two */} from 'lit';",
        "import one two from 'lit';",
        "const module$1 = 1;"
      })
  void everyOtherFormIsRefusedWithTheFileAndWhatWasFound(String text) {
    IllegalStateException refused = assertThrows(IllegalStateException.class, () -> read(text));
    String message = refused.getMessage();
    assertTrue(message.startsWith(HERE + " cannot be put into a pack"), message);
    assertTrue(text.contains(message.substring(message.indexOf('"') + 1, message.length() - 1)));
  }

  private static ModuleText read(String text) {
    return ModuleReader.read(
        HERE,
        text,
        asked -> asked.startsWith(".") ? Imports.beside(HERE, asked) : "lib/" + asked + ".js");
  }
}
