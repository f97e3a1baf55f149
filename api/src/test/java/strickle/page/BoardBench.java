package strickle.page;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.options.BoundingBox;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/**
 * The Week's board with 300 forms over four weeks: how much of it is drawn, how soon, how smoothly.
 */
final class BoardBench {

  private static final double NODES = 800;
  private static final double FIRST_PAINT_MS = 150;
  private static final double FRAME_MS = 34;

  private static final int STEPS = 60;
  private static final int STEP_MS = 16;

  private final Browser browser;
  private final BenchStudio studio;
  private final Figures figures;
  private final int times;

  BoardBench(Browser browser, BenchStudio studio, Figures figures, int times) {
    this.browser = browser;
    this.studio = studio;
    this.figures = figures;
    this.times = times;
  }

  void run() {
    for (Look look : List.of(Look.WIDE, Look.NARROW)) {
      for (String days : List.of("7", "28")) {
        for (int time = 0; time < times; time++) {
          week(look, days);
        }
        figures.print(System.out);
      }
    }
    print();
    figures.print(System.out);
  }

  private static String place(String days) {
    return "/week?show=board&days=" + days;
  }

  private void week(Look look, String days) {
    String name = "board of 300, " + days + " days, at " + look.width();
    try (BenchWindow window = BenchWindow.open(browser, studio, look)) {
      window.load("/orders");
      firstPaint(window, name, days);
      window.settled();
      nodes(window, name);
      scroll(window, name);
      nodes(window, name);
      drag(window, name);
    }
  }

  private void nodes(BenchWindow window, String name) {
    figures.hold(
        name + ", nodes of the page",
        Figures.Kind.COUNT,
        NODES,
        window.number("() => measured.nodes()"));
  }

  /**
   * From the press on a link to the Week until bars are painted: once with its modules to be read,
   * once again.
   */
  private void firstPaint(BenchWindow window, String name, String days) {
    String press =
        "() => measured.boardPainted(() => { history.pushState(null, '', '"
            + place(days)
            + "'); dispatchEvent(new PopStateEvent('popstate')); })";
    figures.tell(name + ", first time in the room", Figures.Kind.TIME, window.number(press));
    window.settled();
    window.page().goBack();
    window.settled();
    figures.hold(name + ", first paint", Figures.Kind.TIME, FIRST_PAINT_MS, window.number(press));
  }

  private void scroll(BenchWindow window, String name) {
    middle(window);
    double[] down =
        window.framesOf(
            () -> {
              for (int step = 0; step < STEPS; step++) {
                wheel(window, step < STEPS / 2 ? 0 : 60, step < STEPS / 2 ? 120 : 0);
              }
            });
    figures.hold(name + ", scroll, 95 of 100 frames", Figures.Kind.TIME, FRAME_MS, p95(down));
  }

  private static void wheel(BenchWindow window, int right, int down) {
    window.page().mouse().wheel(right, down);
    window.page().waitForTimeout(STEP_MS);
  }

  private static void middle(BenchWindow window) {
    BoundingBox box = window.page().locator("s-week-board .view").boundingBox();
    window.page().mouse().move(box.x + box.width / 2, box.y + box.height / 2);
  }

  /** Takes a bar that can be seen and moves it about, to the edge too, where the board scrolls. */
  private void drag(BenchWindow window, String name) {
    window
        .page()
        .evaluate(
            "() => { const {viewNode} = measured.board(); viewNode.scrollLeft = viewNode.scrollTop = 0; }");
    window.drawn();
    Locator bar = window.page().locator("s-week-board .body .bar.form").first();
    bar.scrollIntoViewIfNeeded();
    BoundingBox from = bar.boundingBox();
    BoundingBox view = window.page().locator("s-week-board .view").boundingBox();
    double y = from.y + from.height / 2;
    double x = Math.max(from.x + 8, view.x + 100);
    double right = view.x + view.width - 10;
    double[] frames =
        window.framesOf(
            () -> {
              window.page().mouse().move(x, y);
              window.page().mouse().down();
              for (int step = 1; step <= STEPS; step++) {
                window.page().mouse().move(x + (right - x) * step / STEPS, y + step % 7 * 6);
                window.page().waitForTimeout(STEP_MS);
              }
              moved(window, name);
              window.page().keyboard().press("Escape");
              window.page().mouse().up();
            });
    figures.hold(name + ", drag, 95 of 100 frames", Figures.Kind.TIME, FRAME_MS, p95(frames));
  }

  private static void moved(BenchWindow window, String name) {
    if (window.page().locator("s-week-board .bar.dragged").count() != 1) {
      throw new IllegalStateException("nothing is being dragged on the " + name);
    }
  }

  private static double p95(double[] frames) {
    double[] sorted = frames.clone();
    Arrays.sort(sorted);
    return sorted[(int) Math.ceil(0.95 * sorted.length) - 1];
  }

  /** Printing asks for every row, and the board puts it on paper. */
  private void print() {
    try (BenchWindow window = BenchWindow.open(browser, studio, Look.WIDE)) {
      window.load(place("28"));
      window.page().evaluate("() => measured.watchPrint()");
      long begun = System.nanoTime();
      byte[] paper = window.page().pdf();
      figures.tell("board of 300, print", Figures.Kind.TIME, (System.nanoTime() - begun) / 1e6);
      Map<?, ?> printed = (Map<?, ?>) window.page().evaluate("() => measured.printed");
      int there = ((Number) printed.get("there")).intValue();
      int rows = ((Number) printed.get("rows")).intValue();
      figures.tell("board of 300, rows", Figures.Kind.COUNT, there);
      figures.hold("board of 300, rows missing on paper", Figures.Kind.COUNT, 0, there - rows);
      figures.tell("board of 300, bytes of the print", Figures.Kind.COUNT, paper.length);
    }
  }
}
