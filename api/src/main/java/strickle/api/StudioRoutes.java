package strickle.api;

import java.math.BigDecimal;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import org.joda.money.CurrencyUnit;
import strickle.book.Book;
import strickle.book.Studio;
import strickle.demo.Demo;
import strickle.demo.Generator;
import strickle.demo.Size;
import strickle.json.BookFile;
import strickle.json.BookParts;
import strickle.json.Message;
import strickle.json.contract.Answer;
import strickle.json.contract.Operation;
import strickle.json.contract.Parameter;
import strickle.json.contract.Shape;
import strickle.store.Entries;
import strickle.store.Kept;
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
   * @param castings make a book up whose orders need so many castings, 1 to 2000, in place of the
   *     made-up studio
   * @param seed which of the many books of that size; 1 without it
   */
  public record StudioWanted(
      String name,
      Beginning begin,
      Optional<CurrencyUnit> currency,
      Optional<ZoneId> timeZone,
      OptionalInt castings,
      OptionalLong seed) {

    private static final int LONGEST = 80;

    /** Refuses what goes with the other beginning. */
    public StudioWanted {
      boolean empty = begin == Beginning.EMPTY;
      new Ranges()
          .must(
              !name.isBlank() && name.length() <= LONGEST,
              ".name",
              Call.shown(name),
              "a name of 1 to " + LONGEST + " characters")
          .must(castings.isEmpty() || !empty, ".castings", "castings of an empty studio", "demo")
          .must(
              castings.stream().allMatch(n -> 1 <= n && n <= Generator.MOST_CASTINGS),
              ".castings",
              "" + castings.orElse(0),
              "a whole number from 1 to " + Generator.MOST_CASTINGS)
          .must(seed.isEmpty() || castings.isPresent(), ".seed", "a seed", "castings beside it")
          .done();
    }

    private Book book() {
      if (begin == Beginning.EMPTY) {
        return empty(this);
      }
      return castings.isPresent()
          ? Generator.book(castings.getAsInt(), seed.orElse(1))
          : Demo.book(Size.MEDIUM);
    }
  }

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
                .toAnybody()
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
            routes::create),
        new Route(
            Operation.of(
                    "POST",
                    "/api/begin",
                    "beginAnew",
                    TOPIC,
                    "Begin anew in the studio that is open.",
                    "Empty, or with a made-up studio's data, in place of everything it holds: the"
                        + " book, meshes, what is noted, the plan in use. One change, which can be"
                        + " undone. The name goes into the book; the studio is opened as before.")
                .with(Matching.PARAMETER)
                .with(Who.PARAMETER)
                .taking(
                    Shape.of(StudioWanted.class),
                    "{\"name\": \"Ash Lane\", \"begin\": \"empty\", \"currency\": \"EUR\","
                        + " \"timeZone\": \"Europe/Vienna\"}")
                .answering(
                    Answer.of(
                        Status.OK,
                        "It begins.",
                        Shape.of(JournalRoutes.RevisionNow.class),
                        "ETag")),
            StudioRoutes::beginAnew),
        new Route(
            Operation.of(
                    "GET",
                    "/api/demo",
                    "readDemo",
                    TOPIC,
                    "A made-up book, to look at.",
                    "That of the demo studio, or one of any size. Plans of it begin on 2027-03-01.")
                .with(
                    Parameter.query(
                        "castings",
                        Parameter.Kind.WHOLE,
                        "How many castings its orders need, 1 to 2000; the demo studio without"
                            + " it.",
                        "30"))
                .with(
                    Parameter.query(
                        "seed",
                        Parameter.Kind.WHOLE,
                        "Which of the many books of that size; 1 without it.",
                        "1"))
                .answering(Answer.of(Status.OK, "The book.", BookRoutes.BOOK)),
            StudioRoutes::demo));
  }

  private static Reply beginAnew(Call call) {
    StudioWanted wanted = call.body(StudioWanted.class);
    Entries there = Entries.ofParts(BookParts.of(wanted.book()));
    Kept kept =
        call.studio()
            .change(
                call.by("begun anew"),
                now -> {
                  Matching.check(call, call.tag(now), () -> BookRoutes.since(call));
                  return there;
                });
    return JournalRoutes.revision(call, kept);
  }

  private static Reply demo(Call call) {
    int castings = call.whole("castings", 0, 1, Generator.MOST_CASTINGS);
    int seed = call.whole("seed", 1, 0, Integer.MAX_VALUE);
    Book book = castings == 0 ? Demo.book(Size.MEDIUM) : Generator.book(castings, seed);
    return Reply.json(Status.OK, BookFile.write(book));
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
      throw thereAlready(); // before a large book is made up for nothing
    }
    StudioName made =
        studios
            .createFirst(wanted.name(), BookParts.of(wanted.book()))
            .orElseThrow(StudioRoutes::thereAlready)
            .studio();
    return Reply.json(Status.CREATED, Message.write(made));
  }

  private static Refusal thereAlready() {
    return new Refusal(
        Problem.of(Status.CONFLICT, "There already", "This database has its studio already."));
  }

  /** Makes a studio with nothing in it that a password opens. */
  static StudioName createEmpty(Studios studios, String name, String passwordHash) {
    StudioWanted wanted =
        new StudioWanted(
            name,
            Beginning.EMPTY,
            Optional.empty(),
            Optional.empty(),
            OptionalInt.empty(),
            OptionalLong.empty());
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
