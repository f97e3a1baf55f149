package strickle.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** What goes into which pack, on a page of a few lines. */
class PacksTest {

  private final Map<String, String> page = new TreeMap<>();

  PacksTest() {
    page.put("main.js", "import './app/one.js';\nstart();\n");
    page.put("app/one.js", "export const one = 1;\n");
    page.put("app/two.js", "export const two = 2;\nexport {one} from './one.js';\n");
    page.put("rooms/a/a.js", "import {one as two} from '../../app/two.js';\nimport './own.js';\n");
    page.put("rooms/a/own.js", "export default 3;\n");
    page.put("rooms/b/b.js", "import * as all from '../../app/two.js';\nimport z from 'lib';\n");
    page.put("lib/z.js", "const z = 4;\nexport {z as default};\n");
    page.put("words/a.js", "export default {};\n");
  }

  @Test
  void theCoreHoldsWhatThePageBeginsWithAndWhatSeveralRoomsNeed() {
    Map<String, String> expected =
        Map.of(
            "main.js", "pack/core.js",
            "app/one.js", "pack/core.js",
            "app/two.js", "pack/core.js",
            "rooms/a/a.js", "pack/a.js",
            "rooms/a/own.js", "pack/a.js",
            "rooms/b/b.js", "pack/b.js",
            "lib/z.js", "pack/b.js");
    assertEquals(expected, packs().packOfModules());
  }

  @Test
  void theCoreEvaluatesEachModuleBehindThoseItNeedsAndExportsThem() {
    assertEquals(
        """
        // app/one.js
        const module$0 = (() => {
        const one = 1;

        return {one: one};
        })();
        // main.js
        const module$1 = (() => {

        start();

        return {};
        })();
        // app/two.js
        const module$2 = (() => {
        const two = 2;


        return {two: two, one: module$0.one};
        })();
        export {module$0, module$1, module$2};
        """,
        text("pack/core.js"));
  }

  @Test
  void aRoomTakesFromTheCoreWhatItDoesNotHold() {
    assertEquals(
        """
        import {module$2} from './core.js';
        // rooms/a/own.js
        const module$3 = (() => {
        const module$default = 3;

        return {default: module$default};
        })();
        // rooms/a/a.js
        const module$4 = (() => {
        const two = module$2.one;



        return {};
        })();
        """,
        text("pack/a.js"));
    assertTrue(text("pack/b.js").contains("const all = module$2;\nconst z = module$5.default;\n"));
  }

  @Test
  void allOfAModuleIsPassedOnButItsDefault() {
    page.put("app/two.js", "export * from './one.js';\n");
    page.put("app/one.js", "export const one = 1;\nexport default 2;\n");
    assertTrue(text("pack/core.js").contains("return {one: module$0.one};"));
  }

  @Test
  void aRoomThatAnotherRoomNeedsIsInTheCore() {
    page.put("rooms/b/b.js", "import '../a/a.js';\n");
    assertEquals("pack/core.js", packs().packOfModules().get("rooms/a/a.js"));
    assertTrue(text("pack/a.js").startsWith("import {} from './core.js';"));
  }

  @Test
  void modulesThatNeedEachOtherAreRefused() {
    page.put("app/one.js", "import './two.js';\n");
    refused("app/one.js needs itself, by way of [main.js, app/one.js, app/two.js]");
  }

  @Test
  void whatAModuleDoesNotExportCannotBeAskedForNorPassedOn() {
    page.put("app/one.js", "export const other = 1, one = 1;\n");
    refused("app/two.js asks app/one.js for one: not there");
    page.put("main.js", "import {two} from './app/one.js';\n");
    refused("main.js asks app/one.js for two: not there");
  }

  @Test
  void oneNameForTwoThingsIsRefused() {
    page.put("app/two.js", "export const one = 2;\nexport * from './one.js';\n");
    refused("app/two.js exports one twice");
  }

  @Test
  void aModuleThatIsMissingOrHasNoNameIsRefused() {
    page.put("main.js", "import './app/none.js';\n");
    refused("app/none.js is no file of the page");
    page.put("main.js", "import 'none';\n");
    refused("main.js asks for none: nothing is it");
  }

  @Test
  void aModuleInNoPackMustNotAskForOneThatIsEvaluatedAlready() {
    page.put("words/a.js", "import '../app/one.js';\n");
    refused("words/a.js is in no pack, but asks for [app/one.js]");
  }

  private void refused(String message) {
    assertEquals(
        message, assertThrows(IllegalStateException.class, () -> packs().files()).getMessage());
  }

  private String text(String pack) {
    return new String(packs().files().get(pack).bytes(), StandardCharsets.UTF_8);
  }

  private Packs packs() {
    Map<String, PageFile> files = new HashMap<>();
    page.forEach(
        (name, text) -> files.put(name, new PageFile(name, text.getBytes(StandardCharsets.UTF_8))));
    return new Packs(new Imports(files, Map.of("lib", "lib/z.js")), Set.of("a", "b"));
  }
}
