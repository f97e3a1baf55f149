package strickle.page;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.util.Map;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/** One browser for all tests, started when the first needs it and ended after the last. */
final class Browsers implements BeforeAllCallback {

  /** Longer than any page takes, also on a machine that does much else. */
  private static final double PATIENCE_MS = 30_000;

  private static Open open;

  private record Open(Playwright playwright, Browser browser) implements AutoCloseable {

    static Open start() {
      PlaywrightAssertions.setDefaultAssertionTimeout(PATIENCE_MS);
      Playwright playwright =
          Playwright.create(
              new Playwright.CreateOptions()
                  .setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
      Browser browser =
          playwright
              .chromium()
              .launch(
                  new BrowserType.LaunchOptions()
                      .setExecutablePath(Chromium.program())
                      .setHeadless(true)
                      .setArgs(Chromium.OPTIONS));
      return new Open(playwright, browser);
    }

    @Override
    public void close() {
      browser.close();
      playwright.close();
    }
  }

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
            .getOrComputeIfAbsent(Open.class, key -> Open.start(), Open.class);
  }
}
