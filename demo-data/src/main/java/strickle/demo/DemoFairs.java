package strickle.demo;

import static strickle.demo.Entries.amount;
import static strickle.demo.Entries.demand;

import java.time.LocalDateTime;
import java.util.List;
import strickle.book.Fair;

/** Where the studio sets up its table this spring, and what may sell there. */
final class DemoFairs {

  private DemoFairs() {}

  static List<Fair> fairs() {
    return List.of(
        new Fair(
            "breakwater",
            "Breakwater spring market",
            LocalDateTime.parse("2027-03-27T10:00"),
            amount("85.00"),
            "card",
            List.of(
                demand("lantern-low-fog", 1, 2, 4, "66.00"),
                demand("tealight-brick", 4, 10, 20, "14.00"),
                demand("doorstop-brick", 1, 3, 6, "32.00"),
                demand("bookends-basalt", 0, 1, 3, "82.00"),
                demand("match-pot-brick", 2, 4, 8, "28.00"))),
        new Fair(
            "orchard-lane",
            "Orchard Lane market",
            LocalDateTime.parse("2027-04-17T10:00"),
            amount("60.00"),
            "own-table",
            List.of(
                demand("tealight-fog", 6, 14, 24, "14.00"),
                demand("tealight-brick", 6, 12, 24, "14.00"),
                demand("match-pot-brick", 1, 4, 9, "28.00"),
                demand("hook-fog", 2, 6, 12, "24.00"))));
  }
}
