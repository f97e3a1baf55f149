package strickle.page;

import com.microsoft.playwright.Browser;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * One browser for all tests of a process, started when the first needs it. Where classes are spread
 * over processes each class is a run of its own for JUnit, so it is no run that ends the browser
 * but the process: it goes when nobody holds its pipe any more.
 */
final class Browsers implements BeforeAllCallback {

  private static OpenBrowser open;

  /** The browser; only in tests that this extends. */
  static Browser browser() {
    return open.browser();
  }

  @Override
  public void beforeAll(ExtensionContext context) {
    if (open == null) {
      open = OpenBrowser.start();
    }
  }
}
