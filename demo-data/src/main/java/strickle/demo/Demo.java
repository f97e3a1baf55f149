package strickle.demo;

import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.List;
import strickle.book.Book;
import strickle.book.Order;

/**
 * The demo: an invented two-person studio that casts lanterns, tealight cups and small things for
 * the house in the evenings and on Saturdays.
 */
public final class Demo {

  private static final LocalDateTime START = LocalDateTime.parse("2027-03-01T00:00");

  private Demo() {}

  /**
   * The studio with orders enough for a size. The due dates are tight; nearly all can be met by a
   * plan that begins at {@link #start()}.
   */
  public static Book book(Size size) {
    return withOrders(
        switch (size) {
          case SMALL -> DemoOrders.small();
          case MEDIUM -> DemoOrders.medium();
          case LARGE -> DemoLargeOrders.large();
        });
  }

  /**
   * The same studio with few orders, of which one, "LATE-1", cannot be on time whatever is done: it
   * is due before its lantern can have gone through its route, counted from {@link #start()}.
   */
  public static Book lateBook() {
    return withOrders(DemoOrders.late());
  }

  /**
   * The moment the demo's plans begin: midnight of Monday 2027-03-01, in the studio's time zone.
   */
  public static OffsetDateTime start() {
    return START.atZone(DemoStudio.ZONE).toOffsetDateTime();
  }

  private static Book withOrders(List<Order> orders) {
    return new Book(
        DemoStudio.studio(),
        DemoStudio.people(),
        DemoStudio.stations(),
        DemoForms.forms(),
        DemoForms.moulds(),
        DemoMixes.materials(),
        DemoMixes.mixes(),
        DemoPieces.pieces(),
        orders,
        DemoStudio.channels(),
        DemoFairs.fairs(),
        List.of());
  }
}
