package strickle.api;

import java.math.BigDecimal;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import strickle.book.Book;
import strickle.book.Studio;
import strickle.demo.Demo;
import strickle.demo.Size;
import strickle.json.BookParts;
import strickle.json.Message;
import strickle.json.contract.Answer;
import strickle.json.contract.Operation;
import strickle.json.contract.Shape;
import strickle.store.StudioName;
import strickle.store.Studios;

/** The studios of the database, and making the first one. */
final class StudioRoutes {

  private static final String TOPIC = "The studio";

  /** With what a studio begins. */
  public enum Beginning {
    EMPTY,
    DEMO
  }

  /**
   * A studio to be made.
   *
   * @param name by which it is opened, 1 to 80 characters
   * @param begin empty, or with the data of a made-up studio
   * @param currency of an empty one, by ISO 4217
   * @param timeZone of an empty one
   */
  public record StudioWanted(
      String name, Beginning begin, Optional<CurrencyUnit> currency, Optional<ZoneId> timeZone) {}

  /**
   * The studios there are.
   *
   * @param items by name
   */
  public record StudioNames(List<StudioName> items) {}

  private final Studios studios;

  private StudioRoutes(Studios studios) {
    this.studios = studios;
  }

  /** The routes. */
  static List<Route> of(Studios studios) {
    StudioRoutes routes = new StudioRoutes(studios);
    return List.of(
        new Route(
            Operation.of(
                    "GET",
                    "/api/studios",
                    "listStudios",
                    TOPIC,
                    "The studios of this database.",
                    "None on the first start.")
                .answering(Answer.of(Status.OK, "By name.", Shape.of(StudioNames.class))),
            call -> Reply.json(Status.OK, Message.write(new StudioNames(studios.all())))),
        new Route(
            Operation.of(
                    "POST",
                    "/api/studios",
                    "createStudio",
                    TOPIC,
                    "Make a studio.",
                    "Empty, or with the data of a made-up studio to look around in.")
                .taking(
                    Shape.of(StudioWanted.class), "{\"name\": \"Ash Lane\", \"begin\": \"demo\"}")
                .answering(Answer.of(Status.CREATED, "It is made.", Shape.of(StudioName.class))),
            routes::create));
  }

  private Reply create(Call call) {
    StudioWanted wanted = call.body(StudioWanted.class);
    if (!studios.all().isEmpty()) {
      throw new Refusal(
          Problem.of(Status.CONFLICT, "There already", "This database has its studio already."));
    }
    Book book = wanted.begin() == Beginning.DEMO ? Demo.book(Size.MEDIUM) : empty(wanted);
    StudioName made = studios.create(wanted.name(), Optional.empty(), BookParts.of(book)).studio();
    return Reply.json(Status.CREATED, Message.write(made));
  }

  private static Book empty(StudioWanted wanted) {
    Studio studio =
        new Studio(
            wanted.name(),
            wanted.currency().orElse(CurrencyUnit.USD),
            wanted.timeZone().orElse(ZoneId.of("UTC")),
            BigDecimal.ZERO,
            BigDecimal.ZERO,
            BigDecimal.ONE,
            10_000,
            List.of());
    return new Book(
        studio, List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
        List.of(), List.of(), List.of(), List.of());
  }
}
