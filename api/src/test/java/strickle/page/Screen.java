package strickle.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Request;
import com.microsoft.playwright.Response;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.ReducedMotion;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * A window on the page, which notes everything that goes wrong in it: errors, what the browser
 * refuses, requests that fail, and anything asked of another address than the service's.
 */
final class Screen implements AutoCloseable {

  private static final Path PICTURES = Path.of("target", "pictures");

  private static final int PATIENCE_MS = 60_000;

  /**
   * A function of an element for {@link #focused}: whether it stands out as that which has focus.
   */
  static final String FOCUS_IS_SEEN =
      """
      e => {
        const style = getComputedStyle(e);
        return style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) > 0 ? 'yes' : 'no';
      }
      """;

  private final StudioHouse house;
  private Look look;
  private final BrowserContext context;
  private final Page page;
  private final List<String> troubles = new ArrayList<>();

  private Screen(StudioHouse house, Look look, BrowserContext context) {
    this.house = house;
    this.look = look;
    this.context = context;
    this.page = context.newPage();
    page.onConsoleMessage(
        message -> {
          if (message.type().equals("error")) {
            troubles.add("console: " + message.text());
          }
        });
    page.onPageError(error -> troubles.add("error: " + error));
    page.onRequest(this::note);
    page.onResponse(this::note);
  }

  /** A window of its own, with nothing remembered. */
  static Screen of(StudioHouse house, Look look) {
    BrowserContext context =
        Browsers.browser()
            .newContext(
                new Browser.NewContextOptions()
                    .setViewportSize(look.width(), look.height())
                    .setColorScheme(look.theme())
                    .setHasTouch(look.isTouched())
                    .setReducedMotion(ReducedMotion.REDUCE)
                    .setLocale("en-CA")
                    .setTimezoneId("America/Halifax"));
    context.setDefaultTimeout(PATIENCE_MS);
    context.clock().setFixedTime(StudioHouse.NOON.toEpochMilli());
    return new Screen(house, look, context);
  }

  /** Another window of the same browser, as somebody opens a second one. */
  Screen another() {
    return new Screen(house, look, context);
  }

  private void note(Request request) {
    if (!request.url().startsWith(house.address()) && request.url().startsWith("http")) {
      troubles.add("asked of outside: " + request.url());
    }
  }

  private void note(Response response) {
    if (response.status() >= 500) {
      troubles.add(response.status() + " of " + response.url());
    }
  }

  /** Puts the window's clock to a moment. */
  Screen at(Instant moment) {
    context.clock().setFixedTime(moment.toEpochMilli());
    return this;
  }

  /** Opens a room by its address, such as {@code /week}, and waits until it has settled. */
  Screen open(String path) {
    page.navigate(house.address() + path);
    return settled();
  }

  /** Waits until nothing is being loaded and no part of the page says that it is busy. */
  Screen settled() {
    page.waitForFunction(
        """
        () => {
          const all = root => [...root.querySelectorAll('*')]
            .flatMap(e => e.shadowRoot ? [e, ...all(e.shadowRoot)] : [e]);
          return document.readyState === 'complete'
            && customElements.get('s-app') !== undefined
            && !all(document).some(e => e.getAttribute('aria-busy') === 'true');
        }
        """);
    return this;
  }

  /** Playwright's page, for whatever is not said here. */
  Page page() {
    return page;
  }

  Locator button(String name) {
    return page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name));
  }

  Locator link(String name) {
    return page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName(name));
  }

  Locator heading(String name) {
    return page.getByRole(AriaRole.HEADING, new Page.GetByRoleOptions().setName(name));
  }

  /** A box by its label, letters only, whether or not it says that nothing is needed. */
  Locator field(String label) {
    return page.getByLabel(
        Pattern.compile("^\\s*" + label + "(\\s+not needed)?\\s*$")); // no label has signs
  }

  Locator button(Pattern name) {
    return page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name));
  }

  Locator link(Pattern name) {
    return page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName(name));
  }

  Locator heading(Pattern name) {
    return page.getByRole(AriaRole.HEADING, new Page.GetByRoleOptions().setName(name));
  }

  Locator text(Pattern text) {
    return page.getByText(text);
  }

  /** For what the service has to think about. */
  static LocatorAssertions.IsVisibleOptions patiently() {
    return new LocatorAssertions.IsVisibleOptions().setTimeout(PATIENCE_MS);
  }

  /** What a function says of the element that has focus, through all shadows. */
  String focused(String function) {
    return String.valueOf(
        page.evaluate(
            "() => { let e = document.activeElement;"
                + " while (e?.shadowRoot?.activeElement) { e = e.shadowRoot.activeElement; }"
                + " return e ? ("
                + function
                + ")(e) : ''; }"));
  }

  Locator text(String text) {
    return page.getByText(text);
  }

  /** The same window by day or by night, as when the system changes over. */
  Screen by(ColorScheme theme) {
    look = new Look(look.width(), theme);
    page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(theme));
    return settled();
  }

  /** Saves the whole page as a picture, for a person to look at. */
  Screen picture(String name) {
    page.screenshot(
        new Page.ScreenshotOptions()
            .setFullPage(true)
            .setPath(PICTURES.resolve(name + "-" + look + ".png")));
    return this;
  }

  /** Waits until what was asked for has been drawn. */
  void nextFrame() {
    page.evaluate("() => new Promise(done => requestAnimationFrame(() => setTimeout(done)))");
  }

  /** Somebody comes back to the window, which makes the page look what is new. */
  void returnTo() {
    page.evaluate("() => window.dispatchEvent(new Event('focus'))");
  }

  /** Prints the page on A4, and keeps what comes out beside the pictures. */
  byte[] paper(String name, Page.PdfOptions how) {
    Path file = PICTURES.resolve(name + ".pdf");
    return page.pdf(how.setFormat("A4").setPreferCSSPageSize(true).setPath(file));
  }

  /**
   * Nothing wider than the window, so that no one has to push the page sideways. A phone's
   * innerWidth grows with what is too wide, clientWidth does not.
   */
  Screen fitsTheWindow() {
    Object wider =
        page.evaluate(
            "() => document.documentElement.scrollWidth - document.documentElement.clientWidth");
    assertEquals(0, Math.max(0, ((Number) wider).intValue()), "pixels wider than the window");
    return this;
  }

  /** Holds what is shown against the rules of accessibility that can be tried by a program. */
  Screen isAccessible() {
    assertEquals(List.of(), Axe.findings(page), "on " + page.url() + " at " + look);
    return this;
  }

  /** Holds its colours against those rules, for another theme than all rules were tried in. */
  Screen hasReadableColours() {
    assertEquals(List.of(), Axe.findingsOfColour(page), "on " + page.url() + " at " + look);
    return this;
  }

  /** What went wrong so far. */
  List<String> troubles() {
    return troubles;
  }

  /** Forgets what went wrong so far, when that was the point. */
  Screen forgetTroubles() {
    troubles.clear();
    return this;
  }

  /** Nothing has gone wrong since it was asked last. */
  void hadNoTroubles() {
    List<String> since = List.copyOf(troubles);
    troubles.clear();
    assertEquals(List.of(), since, "what went wrong on the page");
  }

  /** Ends it; nothing may have gone wrong. */
  @Override
  public void close() {
    context.close();
    hadNoTroubles();
  }
}
