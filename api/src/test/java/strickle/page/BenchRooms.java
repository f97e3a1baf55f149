package strickle.page;

import java.util.List;
import java.util.function.Consumer;

/** The rooms that are measured, and what somebody does in each of them. */
final class BenchRooms {

  /**
   * A room.
   *
   * @param path its address
   * @param use clicks, keys and taps that change nothing in the studio
   */
  record Room(String path, Consumer<BenchWindow> use) {

    String name() {
      return path.substring(1);
    }
  }

  static final List<Room> ALL =
      List.of(
          new Room("/today", BenchRooms::today),
          new Room("/week", BenchRooms::week),
          new Room("/orders", BenchRooms::orders),
          new Room("/orders/new", BenchRooms::newOrder),
          new Room("/fairs", BenchRooms::fairs),
          new Room("/prices", BenchRooms::prices),
          new Room("/bench", BenchRooms::bench),
          new Room("/shelf", BenchRooms::shelf),
          new Room("/shopping", BenchRooms::shopping),
          new Room("/what-if", BenchRooms::whatIf),
          new Room("/history", BenchRooms::history),
          new Room("/settings", BenchRooms::settings));

  private BenchRooms() {}

  /** By each column in turn; on a narrow screen a table has no heads that could be touched. */
  private static void sort(BenchWindow window, int columns) {
    for (int column = 1; column < columns && !window.look().isTouched(); column++) {
      window.press("s-table thead th:nth-child(" + column + ") button");
    }
  }

  private static void today(BenchWindow window) {
    window.press("s-weigh s-tick label");
    window.press("s-weigh s-tick label");
    window.pressButton("Done, at other times…");
    window.key("Escape", 1);
    window.choose("s-weigh select");
    for (int day = 0; day < 4; day++) {
      window.press("s-room-today header a.button:nth-of-type(2)");
    }
  }

  private static void week(BenchWindow window) {
    window.pressButton("Board");
    window.drawn();
    for (String way : List.of("Person", "Order", "Form")) {
      window.pressButton(way);
    }
    window.press("s-week-board .bar.form");
    window.key("Escape", 1);
    window.press("s-week-board .bar.form");
    window.pressButton("Close");
    window.key("ArrowRight", 5);
    window.key("ArrowDown", 5);
    window.key("End", 1);
    window.choose("s-week-tools select");
    window.pressButton("True time");
    window.pressButton("Later");
    window.pressButton("Earlier");
    window.type("s-week-tools input", "cup 3");
    window.pressButton("List");
  }

  private static void orders(BenchWindow window) {
    sort(window, 7);
    window.press("s-table tbody a");
    window.settled();
    window.type("s-order-edit s-field:nth-of-type(2) input", "a neighbour");
    window.press("s-order-edit fieldset > button");
  }

  private static void newOrder(BenchWindow window) {
    window.type("s-order-edit s-field:nth-of-type(2) input", "a neighbour");
    window.choose("s-order-edit .line select");
    window.press("s-order-edit fieldset > button");
    window.type("s-order-edit .line s-field:nth-of-type(2) input", "2");
    window.key("Tab", 3);
  }

  private static void fairs(BenchWindow window) {
    window.press("s-table tbody a");
    window.settled();
    window.key("Tab", 5);
    window.press("s-fair-plan details summary");
  }

  private static void prices(BenchWindow window) {
    sort(window, 8);
    window.press("s-table tbody a");
    window.settled();
    window.press("#slider");
    window.key("ArrowRight", 12);
    window.type("s-price-piece .price s-field input", "9");
    window.press("s-price-piece details summary");
  }

  private static void bench(BenchWindow window) {
    window.type("s-bench-batch .moulds s-field input", "2");
    window.choose("s-bench-batch select");
    window.settled();
    window.press("s-room-bench nav a:nth-child(2)");
    window.press("s-room-bench nav a:nth-child(3)");
    window.settled();
  }

  private static void shelf(BenchWindow window) {
    window.press(".lists a");
    sort(window, 5);
    window.press("s-table tbody a");
    window.settled();
    window.type("s-shelf-edit s-field input", "cup");
    window.choose("s-shelf-edit select");
    window.key("Tab", 5);
  }

  private static void shopping(BenchWindow window) {
    window.press("s-tick label");
    window.press("s-tick label");
    sort(window, 7);
  }

  private static void whatIf(BenchWindow window) {
    window.choose("s-room-what-if select");
    window.key("Tab", 3);
  }

  private static void history(BenchWindow window) {
    window.press("s-history-line summary");
    window.settled();
    window.press("s-history-line summary");
    window.key("Tab", 3);
  }

  private static void settings(BenchWindow window) {
    window.choose("s-reader s-field:nth-of-type(1) select");
    window.choose("s-reader s-field:nth-of-type(2) select");
    window.choose("s-reader s-field:nth-of-type(3) select");
    window.type("s-reader s-field:nth-of-type(4) input", "Ada");
  }
}
