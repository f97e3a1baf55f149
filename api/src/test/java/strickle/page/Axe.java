package strickle.page;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

/** The rules of WCAG 2.2, A and AA, and good practice, as far as axe-core can try them. */
final class Axe {

  private static final String SCRIPT = read();

  private static final String THERE = "() => typeof axe !== 'undefined'";

  private static final String RULES =
      "() => ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']";

  private static final String RULES_OF_COLOUR = "() => ['color-contrast', 'link-in-text-block']";

  private static final String RUN =
      """
      runOnly => axe.run(document, {
        runOnly,
        resultTypes: ['violations'],
      }).then(found => found.violations.flatMap(rule => rule.nodes.map(node => ({
        rule: rule.id,
        where: node.target.flat(9).join(' '),
        what: node.failureSummary.replaceAll('\\n', ' '),
      }))))
      """;

  private Axe() {}

  private static String read() {
    try (InputStream in = Axe.class.getResourceAsStream("/axe.min.js")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException cannot) {
      throw new UncheckedIOException(cannot);
    }
  }

  /** What breaks a rule: the rule, where, and what is wrong. */
  static List<String> findings(Page page) {
    return findings(page, RULES);
  }

  /** Likewise, of the rules that another theme can break where the page stays what it is. */
  static List<String> findingsOfColour(Page page) {
    return findings(page, RULES_OF_COLOUR);
  }

  private static List<String> findings(Page page, String rules) {
    if (!(Boolean) page.evaluate(THERE)) {
      page.evaluate(SCRIPT); // not as a script of the page's, which its policy refuses
    }
    return ((List<?>) page.evaluate(RUN, page.evaluate(rules)))
        .stream()
            .map(finding -> (Map<?, ?>) finding)
            .map(one -> one.get("rule") + " at " + one.get("where") + ": " + one.get("what"))
            .toList();
  }
}
