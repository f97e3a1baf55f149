package strickle.demo;

import static strickle.demo.Entries.form;
import static strickle.demo.MouldEntry.mould;

import java.util.List;
import strickle.book.Form;
import strickle.book.Mould;

/** What shapes things: the forms on the shelf, and the moulds set up from them. */
final class DemoForms {

  private DemoForms() {}

  /** The three drums nest, so the middle one is either a core or an outer, never both at once. */
  static List<Form> forms() {
    return List.of(
        form("drum-a", "large drum", 1, "18.00", 200),
        form("drum-b", "middle drum", 1, "15.00", 200),
        form("drum-c", "small drum", 1, "12.00", 200),
        form("tealight-tray", "tealight tray", 2, "26.00", 60),
        form("wedge", "wedge form", 2, "31.00", 80),
        form("corner", "corner form", 2, "38.00", 90),
        form("hook-strip", "hook strip", 2, "22.00", 60),
        form("pot-block", "pot block", 1, "29.00", 70));
  }

  static List<Mould> moulds() {
    return List.of(
        tallLantern(),
        lowLantern(),
        fourTealightCups(),
        doorstop(),
        pairOfBookends(),
        threeHooks(),
        twoMatchPots());
  }

  private static Mould tallLantern() {
    return mould("lantern-tall", "tall lantern, large drum over middle drum")
        .of("drum-a", 1)
        .of("drum-b", 1)
        .holds(1, 1420, 2)
        .minutes(7, 6, 10)
        .sets(22)
        .atMost(120)
        .core(2350, 260, 1.5)
        .consumes("release-wax", "8")
        .build();
  }

  private static Mould lowLantern() {
    return mould("lantern-low", "low lantern, middle drum over small drum")
        .of("drum-b", 1)
        .of("drum-c", 1)
        .holds(1, 860, 2)
        .minutes(6, 5, 9)
        .sets(20)
        .atMost(120)
        .consumes("release-wax", "6")
        .build();
  }

  private static Mould fourTealightCups() {
    return mould("tealight-four", "four tealight cups")
        .of("tealight-tray", 1)
        .holds(4, 520, 4)
        .minutes(4, 6, 8)
        .sets(16)
        .consumes("release-wax", "3")
        .build();
  }

  private static Mould doorstop() {
    return mould("doorstop", "doorstop wedge")
        .of("wedge", 1)
        .holds(1, 640, 2)
        .minutes(4, 4, 6)
        .sets(18)
        .consumes("release-wax", "3")
        .build();
  }

  private static Mould pairOfBookends() {
    return mould("bookend-pair", "pair of bookends, both corner forms")
        .of("corner", 2)
        .holds(1, 1240, 3)
        .minutes(6, 6, 9)
        .sets(20)
        .atMost(144)
        .consumes("release-wax", "7")
        .build();
  }

  private static Mould threeHooks() {
    return mould("hooks-three", "three wall hooks")
        .of("hook-strip", 1)
        .holds(3, 270, 5)
        .minutes(5, 5, 7)
        .sets(14)
        .atMost(96)
        .consumes("brass-hook", "3")
        .consumes("release-wax", "2")
        .build();
  }

  private static Mould twoMatchPots() {
    return mould("match-pot-two", "two match pots")
        .of("pot-block", 1)
        .holds(2, 300, 4)
        .minutes(4, 4, 6)
        .sets(16)
        .consumes("release-wax", "2")
        .build();
  }
}
