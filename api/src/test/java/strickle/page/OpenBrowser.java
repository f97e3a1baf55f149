package strickle.page;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.util.Map;

/** The system's Chromium, running without a window of its own. */
record OpenBrowser(Playwright playwright, Browser browser) implements AutoCloseable {

  /** Longer than any page takes, also on a machine that does much else. */
  private static final double PATIENCE_MS = 60_000;

  /** Starts it. */
  static OpenBrowser start() {
    PlaywrightAssertions.setDefaultAssertionTimeout(PATIENCE_MS);
    Playwright playwright =
        Playwright.create(
            new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
    Browser browser =
        playwright
            .chromium()
            .launch(
                new BrowserType.LaunchOptions()
                    .setExecutablePath(Chromium.program())
                    .setHeadless(true)
                    .setArgs(Chromium.OPTIONS));
    return new OpenBrowser(playwright, browser);
  }

  @Override
  public void close() {
    browser.close();
    playwright.close();
  }
}
