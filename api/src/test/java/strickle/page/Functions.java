package strickle.page;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * The page's modules in the browser they are written for: one page of the real service, with the
 * demo's studio, on which the page itself does not begin, so that its functions can be called one
 * by one. All tests of a process share it.
 */
final class Functions implements BeforeAllCallback {

  /**
   * What a function under test is given first: load(name) imports a module; wear(reader) makes the
   * reader and studio that the functions ask for.
   */
  private static final String TOOLS =
      """
      root => {
        const load = name => import(root + name);
        const wear = async ({locale = 'en-CA', units = 'metric', zone = 'UTC', currency = 'EUR'}) => {
          const {settings} = await load('app/settings.js');
          const {studio} = await load('app/studio.js');
          studio.book = {studio: {timeZone: zone, currency}};
          Object.assign(settings, {locale, units});
        };
        return {load, wear};
      }
      """;

  private static Open open;
  private static boolean isPlanned;

  private record Open(StudioHouse house, BrowserContext context, Page page) {

    static Open start() {
      StudioHouse house = StudioHouse.demo(newFolder());
      BrowserContext context =
          Browsers.browser()
              .newContext(
                  new Browser.NewContextOptions().setLocale("en-CA").setTimezoneId("Asia/Tokyo"));
      return new Open(house, context, window(house, context));
    }
  }

  private static Path newFolder() {
    try {
      Path folder = Files.createTempDirectory("strickle-functions");
      Runtime.getRuntime().addShutdownHook(new Thread(() -> remove(folder)));
      return folder;
    } catch (IOException cannot) {
      throw new UncheckedIOException(cannot);
    }
  }

  private static void remove(Path folder) {
    try (Stream<Path> files = Files.walk(folder)) {
      files.sorted(Comparator.reverseOrder()).forEach(file -> file.toFile().delete());
    } catch (IOException cannot) {
      throw new UncheckedIOException(cannot);
    }
  }

  /**
   * A window on which the page does not begin: its first pack is empty, and what a test asks for
   * comes out of the files by themselves.
   */
  private static Page window(StudioHouse house, BrowserContext context) {
    Page page = context.newPage();
    page.route(
        "**/pack/core.js",
        route ->
            route.fulfill(
                new Route.FulfillOptions().setContentType("text/javascript").setBody("")));
    page.navigate(house.address() + "/start");
    return page;
  }

  /**
   * Calls a function in the shared page.
   *
   * @param function of JavaScript that takes the tools {load, wear} and the argument
   * @param argument numbers, texts, truths, lists and maps of them
   * @return what it resolves to, in the same kinds
   */
  static Object call(String function, Object argument) {
    return call(open.page(), function, argument);
  }

  /** The same in another window of the same reader. */
  static Object call(Page window, String function, Object argument) {
    return window.evaluate(
        "([root, argument]) => (" + function + ")((" + TOOLS + ")(root), argument)",
        Arrays.asList(root(), argument));
  }

  /** A list as a function in the shared page gives it. */
  static List<?> list(String function, Object argument) {
    return (List<?>) call(function, argument);
  }

  private static String root() {
    return "/page/" + strickle.web.Page.now().print() + "/";
  }

  /** The shared page. */
  static Page page() {
    return open.page();
  }

  /** The service and studio of the shared page. */
  static StudioHouse house() {
    return open.house();
  }

  /** One more window of the same reader; whoever asks for it closes it. */
  static Page another() {
    return window(open.house(), open.context());
  }

  /** The same, with a plan in use. */
  static StudioHouse planned() {
    if (!isPlanned) {
      open.house().workByAPlan();
      isPlanned = true;
    }
    return open.house();
  }

  @Override
  public void beforeAll(ExtensionContext context) {
    if (open == null) {
      open = Open.start();
    }
  }
}
