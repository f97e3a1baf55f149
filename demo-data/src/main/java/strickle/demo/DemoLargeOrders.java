package strickle.demo;

import static strickle.demo.DemoOrders.written;
import static strickle.demo.OrderEntry.custom;
import static strickle.demo.OrderEntry.fair;

import java.util.List;
import java.util.stream.Stream;
import strickle.book.Order;

/** A whole spring of orders, with stock for two markets among them. */
final class DemoLargeOrders {

  private DemoLargeOrders() {}

  static List<Order> large() {
    return Stream.of(firstWeeks(), beforeBreakwater(), afterBreakwater(), lastWeeks())
        .flatMap(List::stream)
        .toList();
  }

  private static List<Order> firstWeeks() {
    return written(
        custom("L-01", "a wedding table")
            .due("2027-03-23T20:00")
            .matters("3")
            .line("tealight-fog", 20, "12.50")
            .line("lantern-low-fog", 1),
        custom("L-02", "a reading room")
            .due("2027-03-18T17:00")
            .matters("2")
            .line("bookends-basalt", 2),
        custom("L-03", "a neighbour's porch").due("2027-03-17T18:00").line("lantern-low-basalt", 2),
        custom("L-04", "a guest house by the harbour")
            .due("2027-03-13T12:00")
            .matters("2")
            .line("hook-fog", 12, "22.00")
            .line("doorstop-brick", 4),
        custom("L-05", "a tea room")
            .due("2027-03-16T12:00")
            .line("tealight-fog", 12)
            .line("doorstop-brick", 2));
  }

  private static List<Order> beforeBreakwater() {
    return written(
        custom("L-06", "a shop on the quay")
            .due("2027-03-20T17:00")
            .line("match-pot-brick", 6, "14.00")
            .line("tealight-brick", 8, "7.00"),
        custom("L-07", "a boat shed").due("2027-03-19T17:00").line("hook-fog", 9),
        fair("L-08", "Breakwater spring market")
            .due("2027-03-26T20:00")
            .matters("2")
            .line("tealight-brick", 24)
            .line("doorstop-brick", 5)
            .line("match-pot-brick", 6),
        custom("L-09", "a retirement present")
            .due("2027-03-25T18:00")
            .matters("2")
            .line("bookends-basalt", 1)
            .line("lantern-tall-basalt", 1));
  }

  private static List<Order> afterBreakwater() {
    return written(
        custom("L-10", "an office of three desks")
            .due("2027-03-29T17:00")
            .line("bookends-basalt", 3)
            .line("match-pot-brick", 4),
        custom("L-11", "a garden party")
            .due("2027-04-08T20:00")
            .line("lantern-tall-basalt", 3)
            .line("lantern-low-basalt", 1),
        custom("L-12", "a school hall").due("2027-03-30T12:00").line("hook-fog", 15, "20.00"),
        custom("L-13", "a shop on the quay, second order")
            .due("2027-04-06T17:00")
            .line("tealight-fog", 16, "7.00")
            .line("match-pot-brick", 8, "14.00")
            .line("tealight-brick", 12, "7.00"),
        custom("L-14", "a bakery")
            .due("2027-04-01T08:00")
            .line("doorstop-brick", 3)
            .line("hook-fog", 6));
  }

  private static List<Order> lastWeeks() {
    return written(
        custom("L-15", "a house on the point")
            .due("2027-04-13T20:00")
            .line("lantern-low-basalt", 2)
            .line("lantern-low-fog", 1)
            .line("doorstop-brick", 3),
        custom("L-16", "a library corner").due("2027-04-13T17:00").line("bookends-basalt", 4),
        custom("L-17", "a summer terrace")
            .due("2027-04-24T20:00")
            .line("lantern-tall-basalt", 4)
            .line("lantern-low-basalt", 1)
            .line("lantern-low-fog", 2),
        fair("L-18", "Orchard Lane market")
            .due("2027-04-16T20:00")
            .matters("2")
            .line("tealight-fog", 19)
            .line("tealight-brick", 20)
            .line("doorstop-brick", 2)
            .line("match-pot-brick", 6)
            .line("lantern-low-fog", 3)
            .line("bookends-basalt", 1)
            .line("hook-fog", 4));
  }
}
