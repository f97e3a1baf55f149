package strickle.demo;

import static strickle.demo.OrderEntry.custom;
import static strickle.demo.OrderEntry.fair;

import java.util.List;
import java.util.stream.Stream;
import strickle.book.Order;

/** What the studio owes: a quiet fortnight, a busy month, and a promise that cannot be kept. */
final class DemoOrders {

  private DemoOrders() {}

  static List<Order> small() {
    return written(
        custom("S-1", "a porch light")
            .due("2027-03-17T18:00")
            .matters("2")
            .line("lantern-tall-basalt", 1),
        custom("S-2", "a hallway").due("2027-03-09T12:00").line("hook-fog", 7, "22.00"),
        custom("S-3", "a kitchen door").due("2027-03-06T12:00").line("doorstop-brick", 3),
        fair("S-4", "Breakwater spring market")
            .due("2027-03-08T20:00")
            .line("tealight-fog", 6)
            .line("tealight-brick", 3));
  }

  static List<Order> medium() {
    return written(
        custom("M-1", "a wedding table")
            .due("2027-03-18T20:00")
            .matters("3")
            .line("tealight-fog", 12, "12.50")
            .line("lantern-tall-basalt", 1),
        custom("M-2", "a reading room")
            .due("2027-03-18T17:00")
            .matters("2")
            .line("bookends-basalt", 2),
        custom("M-3", "a guest house by the harbour")
            .due("2027-03-08T18:00")
            .matters("2")
            .line("hook-fog", 7, "22.00")
            .line("doorstop-brick", 3),
        custom("M-4", "a neighbour's porch").due("2027-03-17T18:00").line("lantern-low-basalt", 2),
        custom("M-5", "a shop on the quay")
            .due("2027-03-10T18:00")
            .line("tealight-fog", 6, "7.00")
            .line("match-pot-brick", 3, "14.00")
            .line("hook-fog", 3, "12.00"),
        custom("M-6", "a garden party")
            .due("2027-04-03T12:00")
            .line("lantern-tall-basalt", 2)
            .line("lantern-low-basalt", 1),
        fair("M-7", "Breakwater spring market")
            .due("2027-03-26T20:00")
            .matters("2")
            .line("lantern-low-fog", 3)
            .line("tealight-brick", 11)
            .line("doorstop-brick", 2));
  }

  /** The tall lantern's waits alone are 136 hours; its order is due 132 hours after the start. */
  static List<Order> late() {
    return written(
        custom("LATE-1", "a housewarming on Saturday")
            .due("2027-03-06T12:00")
            .matters("2")
            .line("lantern-tall-basalt", 1),
        custom("LATE-2", "a hallway").due("2027-03-20T12:00").line("hook-fog", 5),
        custom("LATE-3", "a kitchen door").due("2027-03-20T12:00").line("doorstop-brick", 2));
  }

  /** The orders as written. */
  static List<Order> written(OrderEntry... orders) {
    return Stream.of(orders).map(OrderEntry::build).toList();
  }
}
