package strickle.page;

import com.microsoft.playwright.Browser;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/** One browser for all tests, started when the first needs it and ended after the last. */
final class Browsers implements BeforeAllCallback {

  private static OpenBrowser open;

  /** The browser; only in tests that this extends. */
  static Browser browser() {
    return open.browser();
  }

  @Override
  public void beforeAll(ExtensionContext context) {
    open =
        context
            .getRoot()
            .getStore(ExtensionContext.Namespace.create(Browsers.class))
            .getOrComputeIfAbsent(OpenBrowser.class, key -> OpenBrowser.start(), OpenBrowser.class);
  }
}
