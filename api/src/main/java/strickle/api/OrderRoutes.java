package strickle.api;

import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.json.BookParts;
import strickle.json.Message;
import strickle.json.contract.Answer;
import strickle.json.contract.Operation;
import strickle.json.contract.Parameter;
import strickle.json.contract.Shape;
import strickle.paper.OrderImport;
import strickle.paper.OrderTable;
import strickle.store.Kept;

/** Orders from a spreadsheet into the book. */
final class OrderRoutes {

  private static final String NAME = "orders";

  /**
   * What came of a table of orders.
   *
   * @param added orders the book did not have
   * @param changed orders it had otherwise
   * @param same orders it had already
   * @param leftOut ids of the orders with a bad row, which were left out
   * @param faults each bad row with its line and column
   * @param revision where the studio stands then
   */
  public record OrdersTaken(
      long added,
      long changed,
      long same,
      List<String> leftOut,
      List<Fault> faults,
      long revision) {

    private OrdersTaken at(long now) {
      return new OrdersTaken(added, changed, same, leftOut, faults, now);
    }
  }

  private OrderRoutes() {}

  /** The routes. */
  static List<Route> all() {
    Operation importing =
        Operation.of(
                "POST",
                "/api/orders.csv",
                "importOrders",
                "Out of the studio",
                "Orders from a table.",
                "CSV (RFC 4180), a row for each line of an order: order, due, piece, quantity and,"
                    + " if wanted, for, kind, weight, price (in the studio's currency). An order"
                    + " the book has already is replaced, none is removed. Every bad row is told"
                    + " with its line and column, and then nothing is changed, unless keepGood is"
                    + " true: then all orders without a bad row are taken.")
            .with(
                Parameter.query(
                    "keepGood",
                    Parameter.Kind.FLAG,
                    "Take the good orders even when others are bad; false without it.",
                    "true"))
            .with(Matching.PARAMETER)
            .with(Who.PARAMETER)
            .taking(
                new Shape.Text("text/csv"),
                """
                order,for,due,weight,piece,quantity,price
                A-2,a florist,2027-05-08T10:00,2,tray-slate,6,17.50
                """)
            .answering(
                Answer.of(Status.OK, "They are taken.", Shape.of(OrdersTaken.class), "ETag"));
    return List.of(new Route(importing, OrderRoutes::take));
  }

  private static Reply take(Call call) {
    boolean keepGood = call.flag("keepGood");
    String csv = call.body();
    AtomicReference<OrdersTaken> taken = new AtomicReference<>();
    Kept kept =
        call.studio()
            .change(
                call.by("orders taken from a table"),
                now -> {
                  Matching.check(call, call.tag(now), () -> BookRoutes.since(call));
                  Book book = now.book();
                  OrderImport read = OrderTable.read(book, NAME, csv);
                  if (!read.faults().isEmpty() && !keepGood) {
                    throw new Faulty(read.faults());
                  }
                  taken.set(told(read, book, now.revision()));
                  return now.entries().replacing(List.of(NAME), BookParts.of(read.into(book)));
                });
    OrdersTaken answer = taken.get().at(kept.revision());
    return Reply.json(Status.OK, Message.write(answer)).with("ETag", call.tag(kept));
  }

  private static OrdersTaken told(OrderImport read, Book book, long revision) {
    long added = read.added(book);
    long changed = read.changed(book);
    long same = read.orders().size() - added - changed;
    return new OrdersTaken(added, changed, same, read.leftOut(), read.faults(), revision);
  }
}
