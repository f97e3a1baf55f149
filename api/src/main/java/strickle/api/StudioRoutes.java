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
   * The studios there are for who asks.
   *
   * @param items the one that is open, if any
   * @param closed whether there are others, each opened by its name and password
   */
  public record StudioNames(List<StudioName> items, boolean closed) {}

  private final Studios studios;
  private final Access access;

  private StudioRoutes(Studios studios, Access access) {
    this.studios = studios;
    this.access = access;
  }

  /** The routes. */
  static List<Route> of(Studios studios, Access access) {
    StudioRoutes routes = new StudioRoutes(studios, access);
    return List.of(
        new Route(
            Operation.of(
                    "GET",
                    "/api/studios",
                    "listStudios",
                    TOPIC,
                    "The studio that is open.",
                    "None on the first start, and none before one is opened by its password: then"
                        + " \"closed\" is true.")
                .answering(Answer.of(Status.OK, "It.", Shape.of(StudioNames.class))),
            routes::list),
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

  private Reply list(Call call) {
    if (studios.all().isEmpty()) {
      return names(List.of(), false);
    }
    try {
      return names(List.of(access.studio(call.context()).studio()), studios.all().size() > 1);
    } catch (Refusal notOpen) {
      return names(List.of(), true);
    }
  }

  private static Reply names(List<StudioName> items, boolean closed) {
    return Reply.json(Status.OK, Message.write(new StudioNames(items, closed)));
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

  /** Makes a studio with nothing in it that a password opens. */
  static StudioName createEmpty(Studios studios, String name, String passwordHash) {
    StudioWanted wanted =
        new StudioWanted(name, Beginning.EMPTY, Optional.empty(), Optional.empty());
    return studios.create(name, Optional.of(passwordHash), BookParts.of(empty(wanted))).studio();
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
