package strickle.page;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

/**
 * A window that measures itself, by what the browser notes of paints, shifts, presses and frames.
 */
final class BenchWindow implements AutoCloseable {

  private static final String MEASURE = read();

  private static final double PATIENCE_MS = 20_000;

  /** By then a browser has started what it starts once, and beside it. */
  private static final double STARTED_MS = 700;

  private static final String SETTLED =
      """
      but => {
        const every = root => [...root.querySelectorAll('*')]
          .flatMap(one => one.shadowRoot ? [one, ...every(one.shadowRoot)] : [one]);
        return document.readyState === 'complete' && customElements.get('s-app') !== undefined
          && !every(document).some(one => one.getAttribute('aria-busy') === 'true' && !(but && one.matches(but)));
      }
      """;

  private final BenchStudio studio;
  private final Look look;
  private final BrowserContext context;
  private final Page page;

  private BenchWindow(BenchStudio studio, Look look, BrowserContext context) {
    this.studio = studio;
    this.look = look;
    this.context = context;
    this.page = context.newPage();
    page.onPageError(
        error -> {
          throw new IllegalStateException("on " + page.url() + ": " + error);
        });
  }

  private static String read() {
    try (InputStream in = BenchWindow.class.getResourceAsStream("measure.js")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .replace("BEGINS", BenchStudio.BEGINS + "T12:00Z");
    } catch (IOException cannot) {
      throw new UncheckedIOException(cannot);
    }
  }

  /** A window of a reader who was never here: nothing is kept in it. */
  static BenchWindow open(Browser browser, BenchStudio studio, Look look) {
    BrowserContext context =
        browser.newContext(
            new Browser.NewContextOptions()
                .setViewportSize(look.width(), look.height())
                .setHasTouch(look.isTouched())
                .setLocale("en-CA"));
    context.addInitScript(MEASURE);
    return new BenchWindow(studio, look, context);
  }

  /**
   * Has the browser start what it needs for any site (a process, its fonts and formats) with an
   * answer that is no part of the page; nothing of the page is kept or compiled by that.
   */
  BenchWindow awake() {
    page.navigate(studio.address() + "/health");
    page.waitForTimeout(STARTED_MS);
    return this;
  }

  /**
   * Loads an address and waits until the room is drawn. An answer that the service thinks about for
   * seconds may still be on its way: {@link #settled} waits for it.
   */
  BenchWindow load(String path) {
    page.navigate(studio.address() + path);
    page.waitForFunction(SETTLED, ".answer");
    return drawn();
  }

  /** Waits until nothing is busy and what there is has been drawn. */
  BenchWindow settled() {
    page.waitForFunction(SETTLED);
    return drawn();
  }

  /** Waits until what is to be drawn has been. */
  BenchWindow drawn() {
    page.evaluate("() => measured.drawn()");
    return this;
  }

  /** What was noted since the last time. */
  Map<?, ?> take() {
    return (Map<?, ?>) page.evaluate("() => measured.take()");
  }

  /** A number that a function says. */
  double number(String function) {
    return ((Number) page.evaluate(function)).doubleValue();
  }

  /** How long each frame took while something was done. */
  double[] framesOf(Runnable work) {
    page.evaluate("() => measured.watchFrames()");
    work.run();
    return ((List<?>) page.evaluate("() => measured.framesTaken()"))
        .stream().mapToDouble(frame -> ((Number) frame).doubleValue()).toArray();
  }

  /** Clicks or taps the first of what a selector finds, when it finds anything. */
  void press(String selector) {
    press(page.locator(selector).first());
  }

  /** Clicks or taps the first button of a name, when there is one. */
  void pressButton(String name) {
    press(page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name)).first());
  }

  private void press(Locator what) {
    if (what.count() == 0 || !what.isVisible()) {
      return;
    }
    if (look.isTouched()) {
      what.tap(new Locator.TapOptions().setTimeout(PATIENCE_MS));
    } else {
      what.click(new Locator.ClickOptions().setTimeout(PATIENCE_MS));
    }
    drawn();
  }

  /** Presses a key so many times. */
  void key(String key, int times) {
    for (int i = 0; i < times; i++) {
      page.keyboard().press(key);
      drawn();
    }
  }

  /** Types a text, letter by letter, into the first of what a selector finds, when there is one. */
  void type(String selector, String text) {
    if (page.locator(selector).count() > 0 && page.locator(selector).first().isVisible()) {
      page.locator(selector).first().focus();
      text.codePoints().forEach(letter -> key(Character.toString(letter), 1));
    }
  }

  /** Chooses in the first box of choices that a selector finds, with keys as a person does. */
  void choose(String selector) {
    if (page.locator(selector).count() > 0) {
      page.locator(selector).first().focus();
      key("ArrowDown", 2);
    }
  }

  Page page() {
    return page;
  }

  Look look() {
    return look;
  }

  @Override
  public void close() {
    context.close();
  }
}
