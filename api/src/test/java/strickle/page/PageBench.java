package strickle.page;

import com.microsoft.playwright.Browser;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/**
 * What {@code api/bench page} runs: the real service with a studio of 120 castings, and one of 300
 * forms over four weeks, opened in Chromium at 1280 and 390 px; how soon the page is painted, how
 * fast it answers, whether it jumps, and how smoothly the Week's board moves.
 */
final class PageBench {

  private static final int CASTINGS = 120;
  private static final int WIDE_CASTINGS = 400;

  private static final double LARGEST_PAINT_MS = 500;
  private static final double INTERACTION_MS = 100;
  private static final double SHIFT = 0.02;

  private final Figures figures = new Figures();
  private final Browser browser;
  private final int times;

  private PageBench(Browser browser, int times) {
    this.browser = browser;
    this.times = times;
  }

  /**
   * Measures, prints and ends with 1 when a limit is missed.
   *
   * @param arguments the launcher, how many times each figure is taken, and "rooms" or "week" for
   *     one part only
   */
  public static void main(String[] arguments) {
    Path launcher = Path.of(arguments[0]);
    int times = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 5;
    Path folder = folder();
    long missed;
    try (OpenBrowser open = OpenBrowser.start()) {
      String parts = arguments.length > 2 ? arguments[2] : "all";
      missed = new PageBench(open.browser(), times).run(launcher, folder, parts);
    } finally {
      remove(folder);
    }
    System.exit(missed == 0 ? 0 : 1);
  }

  private static Path folder() {
    try {
      return Files.createTempDirectory("strickle-bench");
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

  private long run(Path launcher, Path folder, String parts) {
    System.out.printf(Locale.ROOT, "machine's load before: %.2f%n", load());
    if (!parts.equals("week")) {
      try (BenchStudio studio =
          BenchStudio.start(launcher, folder.resolve("rooms"), BenchStudio.ofCastings(CASTINGS))) {
        rooms(studio);
      }
    }
    if (!parts.equals("rooms")) {
      try (BenchStudio studio =
          BenchStudio.start(launcher, folder.resolve("week"), BenchStudio.wide(WIDE_CASTINGS))) {
        new BoardBench(browser, studio, figures, times).run();
      }
    }
    System.out.printf(Locale.ROOT, "machine's load after: %.2f%n", load());
    return figures.missed();
  }

  private static double load() {
    return ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage();
  }

  private void rooms(BenchStudio studio) {
    for (Look look : List.of(Look.WIDE, Look.NARROW)) {
      for (BenchRooms.Room room : BenchRooms.ALL) {
        for (int time = 0; time < times; time++) {
          visit(studio, look, room);
        }
        figures.print(System.out);
      }
    }
  }

  /**
   * The first visit of a reader whose browser has yet to start its process for the service, one of
   * a reader whose has, a second visit, and what they do there.
   */
  private void visit(BenchStudio studio, Look look, BenchRooms.Room room) {
    String name = room.name() + " at " + look.width();
    try (BenchWindow window = BenchWindow.open(browser, studio, look)) {
      paint(window.load(room.path()), name, "first of a new browser");
    }
    try (BenchWindow window = BenchWindow.open(browser, studio, look)) {
      paint(window.awake().load(room.path()), name, "first visit");
      paint(window.load(room.path()), name, "later visit");
      room.use().accept(window);
      Map<?, ?> taken = window.settled().take();
      hold(taken, "shift", name + ", layout shift in use", Figures.Kind.SHIFT, SHIFT);
      hold(taken, "slowest", name + ", slowest interaction", Figures.Kind.TIME, INTERACTION_MS);
      if (number(taken, "interactions") == 0) {
        throw new IllegalStateException("nothing was pressed in " + name);
      }
      if (number(taken, "slowest") > INTERACTION_MS) {
        figures.note(
            name + ": " + taken.get("slowestOf") + " took " + taken.get("slowest") + " ms");
      }
    }
  }

  private void paint(BenchWindow window, String name, String cache) {
    Map<?, ?> taken = window.take();
    String whole = name + ", largest paint, " + cache;
    hold(taken, "largest", whole, Figures.Kind.TIME, LARGEST_PAINT_MS);
    hold(taken, "shift", name + ", layout shift, loading", Figures.Kind.SHIFT, SHIFT);
    if (number(taken, "largest") == 0) {
      throw new IllegalStateException("no paint was noted in " + name);
    }
    String answered = name + ", layout shift, answered";
    hold(window.settled().take(), "shift", answered, Figures.Kind.SHIFT, SHIFT);
  }

  private void hold(Map<?, ?> taken, String what, String name, Figures.Kind kind, double limit) {
    figures.hold(name, kind, limit, number(taken, what));
    if (kind == Figures.Kind.SHIFT && number(taken, what) > limit) {
      figures.note(name + ": " + taken.get("shifts"));
    }
  }

  private static double number(Map<?, ?> taken, String what) {
    return ((Number) taken.get(what)).doubleValue();
  }
}
