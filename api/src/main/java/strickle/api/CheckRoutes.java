package strickle.api;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.Studio;
import strickle.json.AnswerFile;
import strickle.json.BookFile;
import strickle.json.BookParts;
import strickle.json.CheckAnswer;
import strickle.json.ItemFile;
import strickle.json.Message;
import strickle.json.contract.Answer;
import strickle.json.contract.Operation;
import strickle.json.contract.Parameter;
import strickle.json.contract.Shape;
import strickle.plan.Effort;
import strickle.plan.PlanRequest;
import strickle.plan.Planning;
import strickle.plan.UsualStart;
import strickle.safety.Advice;
import strickle.safety.RouteSense;
import strickle.store.Entries;
import strickle.store.Entry;
import strickle.store.Kept;
import strickle.store.KeptMeshes;

/** Whether the book can be planned, and what would come of a thing before it is saved. */
final class CheckRoutes {

  private static final String TOPIC = "Checks";
  private static final Shape CHECK = Shape.of(ItemCheck.class);

  private final Thinking thinking;
  private final Clock clock;

  private CheckRoutes(Thinking thinking, Clock clock) {
    this.thinking = thinking;
    this.clock = clock;
  }

  /** The routes. */
  static List<Route> of(Thinking thinking, Clock clock) {
    CheckRoutes routes = new CheckRoutes(thinking, clock);
    List<Route> all = new ArrayList<>();
    all.add(new Route(reading(), routes::read));
    Collection.ALL.forEach(
        one -> all.add(new Route(checking(one), call -> routes.item(call, one))));
    all.add(
        new Route(
            checking("studio", "checkStudio", "the studio's own data", Shape.of(Studio.class)),
            routes::studio));
    all.add(
        new Route(checking("book", "checkBook", "a whole book", BookRoutes.BOOK), routes::book));
    return all;
  }

  private static Operation reading() {
    return Operation.of(
            "GET",
            "/api/check",
            "readCheck",
            TOPIC,
            "Whether the book can be planned, and what makes no sense in it.",
            "Lays out one schedule, for what only that can show. Advice on routes refuses nothing.")
        .with(
            Parameter.query(
                "from",
                Parameter.Kind.TEXT,
                "The first moment that may be planned, local; as for a plan without it.",
                "2027-04-05T00:00"))
        .with(
            Parameter.query(
                "cover",
                Parameter.Kind.NUMBER,
                "In how many of a hundred cases castings have to bring what is asked for, 50 to"
                    + " 99.9; on average without it.",
                "90"))
        .answering(
            Answer.of(
                Status.OK, "What was found.", new Shape.Of(CheckAnswer.class, CheckAnswer.FORMAT)));
  }

  private static Operation checking(Collection collection) {
    String one = collection.one();
    String id = "check" + Character.toUpperCase(one.charAt(0)) + one.substring(1);
    Operation operation =
        checking(collection.name(), id, "a " + one, Shape.of(collection.type()))
            .with(
                Parameter.query(
                    "id",
                    Parameter.Kind.TEXT,
                    "The id of the " + one + " in whose place it would come; a new one without it.",
                    "an-id"));
    return operation.taking(operation.body().orElseThrow(), collection.example());
  }

  private static Operation checking(String path, String id, String what, Shape shape) {
    return Operation.of(
            "POST",
            "/api/check/" + path,
            id,
            TOPIC,
            "What would come of " + what + " if it were saved.",
            "Nothing is changed. Faults would refuse it; hindrances keep things from being planned;"
                + " advice refuses nothing.")
        .taking(shape, "")
        .answering(Answer.of(Status.OK, "What was found.", CHECK));
  }

  private Reply read(Call call) {
    Book book = call.studio().now().book();
    OffsetDateTime from = from(call, book);
    OptionalDouble cover =
        call.decimal("cover")
            .map(Number::doubleValue)
            .map(OptionalDouble::of)
            .orElseGet(OptionalDouble::empty);
    CheckAnswer answer =
        Queries.told(BookBound.NAMES, () -> thinking.of(() -> check(book, from, cover)));
    return Reply.json(Status.OK, AnswerFile.write(CheckAnswer.FORMAT, answer));
  }

  private static CheckAnswer check(Book book, OffsetDateTime from, OptionalDouble cover) {
    String name = book.studio().name();
    PlanRequest request = new PlanRequest(from, Effort.ofSchedules(1), 0).covering(cover);
    try {
      return CheckAnswer.of(name, book, Planning.of(book, request, progress -> {}).run());
    } catch (Faulty faulty) {
      return CheckAnswer.of(name, faulty.faults());
    }
  }

  private OffsetDateTime from(Call call, Book book) {
    return call.time("from")
        .map(at -> PlanRoutes.in(book, at))
        .orElseGet(() -> UsualStart.of(book, clock));
  }

  private Reply item(Call call, Collection collection) {
    String text = call.body();
    Kept now = call.studio().now();
    return checked(() -> item(now, collection, text, call.query("id")));
  }

  private ItemCheck item(Kept now, Collection collection, String text, Optional<String> address) {
    String body = ItemFile.kept(text, collection.type(), new KeptMeshes(now.entries()));
    Optional<String> own = ItemFile.id(body);
    String id =
        address.or(() -> own).orElseGet(() -> ItemRoutes.nextNumber(collection, now.entries()));
    Optional<Entry> before = now.entries().find(collection.name(), id);
    address
        .filter(given -> before.isEmpty())
        .ifPresent(
            given -> {
              throw Refusal.notThere(collection.one() + " " + given);
            });
    List<Fault> faults = new ArrayList<>();
    own.filter(given -> !given.equals(id))
        .ifPresent(given -> faults.add(ItemRoutes.otherId(id, given)));
    if (address.isEmpty() && before.isPresent()) {
      faults.add(new Fault("$.id", '"' + id + '"', "an id that no " + collection.one() + " has"));
    }
    PlanRoutes.must(faults);
    Entries after = now.entries().with(collection.name(), id, body);
    List<Entry> list = after.list(collection.name());
    int index = list.indexOf(after.find(collection.name(), id).orElseThrow());
    ThingPaths paths = ThingPaths.of(collection, index);
    return found(now, after, paths);
  }

  private Reply studio(Call call) {
    String text = call.body();
    Kept now = call.studio().now();
    return checked(
        () -> {
          String body = ItemFile.kept(text, Studio.class, new KeptMeshes(now.entries()));
          Entries after = now.entries().with(BookParts.STUDIO, BookParts.STUDIO, body);
          return found(now, after, new ThingPaths("$.studio"));
        });
  }

  private Reply book(Call call) {
    String text = call.body();
    Kept now = call.studio().now();
    return checked(
        () -> {
          Book book = BookFile.parse(text, new KeptMeshes(now.entries()));
          return found(book, RouteSense.of(book), new ThingPaths("$"), true);
        });
  }

  private static Reply checked(Supplier<ItemCheck> work) {
    ItemCheck check;
    try {
      check = work.get();
    } catch (Faulty faulty) {
      check = ItemCheck.faulty(faulty.faults());
    }
    return Reply.json(Status.OK, Message.write(check));
  }

  private ItemCheck found(Kept now, Entries after, ThingPaths paths) {
    Book book = paths.told(() -> BookParts.book(after.parts(), new KeptMeshes(after)));
    List<Advice> before = RouteSense.of(now.book());
    List<Advice> advice =
        RouteSense.of(book).stream()
            .filter(one -> paths.holds(one.path()) || !before.contains(one))
            .toList();
    return found(book, advice, paths, paths.prefix().startsWith("$.pieces"));
  }

  private ItemCheck found(Book book, List<Advice> advice, ThingPaths paths, boolean routes) {
    List<Fault> hindrances = Planning.faults(book, UsualStart.of(book, clock));
    return new ItemCheck(
        true,
        List.of(),
        paths.seen(hindrances),
        advice.stream().map(one -> seen(one, paths)).toList(),
        routes ? steps(book, paths, RouteSense.unread(book)) : List.of(),
        routes ? steps(book, paths, RouteSense.passedOver(book)) : List.of());
  }

  private static Advice seen(Advice one, ThingPaths paths) {
    return new Advice(
        paths.seen(one.path()), one.said(), one.because(), one.rather(), one.basis(), one.sure());
  }

  private static List<String> steps(Book book, ThingPaths paths, List<String> steps) {
    List<String> own = new ArrayList<>();
    for (int i = 0; i < book.pieces().size(); i++) {
      if (paths.holds("$.pieces[" + i + "]")) {
        book.pieces().get(i).route().forEach(step -> own.add(step.step()));
      }
    }
    return steps.stream().filter(own::contains).toList();
  }
}
