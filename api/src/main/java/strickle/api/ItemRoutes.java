package strickle.api;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.json.BookParts;
import strickle.json.ItemFile;
import strickle.json.contract.Answer;
import strickle.json.contract.Operation;
import strickle.json.contract.Parameter;
import strickle.json.contract.Shape;
import strickle.store.Entries;
import strickle.store.Entry;
import strickle.store.Kept;
import strickle.store.KeptMeshes;
import strickle.store.Made;
import strickle.store.Once;

/** Reading, creating, changing and removing the things of one list of the book. */
final class ItemRoutes {

  private static final int USUAL_PAGE = 200;
  private static final int LONGEST_PAGE = 1000;

  private final Collection collection;
  private final String root;
  private final Shape shape;

  private ItemRoutes(Collection collection) {
    this.collection = collection;
    this.root = "/api/" + collection.name();
    this.shape = Shape.of(collection.type());
  }

  /** The routes of a list. */
  static List<Route> of(Collection collection) {
    ItemRoutes routes = new ItemRoutes(collection);
    return List.of(
        routes.listing(),
        routes.creating(),
        routes.reading(),
        routes.changing(),
        routes.removing());
  }

  private Route listing() {
    Operation operation =
        operation("GET", root, "list", "All " + collection.name(), "In their order.")
            .with(
                Parameter.query(
                    "limit",
                    Parameter.Kind.WHOLE,
                    "How many on a page, 1 to " + LONGEST_PAGE + "; " + USUAL_PAGE + " without it.",
                    "50"))
            .with(
                Parameter.query(
                    "after", Parameter.Kind.TEXT, "The \"next\" of the page before.", ""))
            .answering(
                Answer.of(
                    Status.OK,
                    "One page.",
                    new Shape.PageOf(shape, collection.numbered()),
                    "ETag"));
    return new Route(operation, this::list);
  }

  private Reply list(Call call) {
    List<Entry> all = call.studio().now().entries().list(collection.name());
    int limit = call.whole("limit", USUAL_PAGE, 1, LONGEST_PAGE);
    int from = call.query("after").map(id -> place(all, id)).orElse(0);
    List<Entry> page = all.subList(from, Math.min(all.size(), from + limit));
    boolean more = from + page.size() < all.size();
    Optional<String> next = more ? Optional.of(page.get(page.size() - 1).id()) : Optional.empty();
    Optional<List<String>> ids =
        Optional.of(page.stream().map(Entry::id).toList()).filter(any -> collection.numbered());
    String json = ItemFile.page(page.stream().map(Entry::body).toList(), ids, next);
    return Matching.reading(call, Etag.of(json), () -> Reply.json(Status.OK, json));
  }

  private int place(List<Entry> all, String id) {
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i).id().equals(id)) {
        return i + 1;
      }
    }
    throw Refusal.malformed("after", '"' + id + '"', "the \"next\" of the page before");
  }

  private Route creating() {
    Operation operation =
        operation(
                "POST",
                root,
                "create",
                "A new " + collection.one(),
                "It comes last in its list. Its id must not be there yet.")
            .with(Idempotency.PARAMETER)
            .with(Who.PARAMETER)
            .taking(shape, collection.example())
            .answering(Answer.of(Status.CREATED, "It is there.", shape, "ETag", "Location"));
    return new Route(operation, this::create);
  }

  private Reply create(Call call) {
    String text = call.body();
    Optional<Once> once = Idempotency.of(call, root, text);
    String[] id = {""};
    Function<Kept, Made> work =
        now -> {
          Made made = made(now, text);
          return made;
        };
    if (once.isPresent()) {
      id[0] = call.studio().create(call.by(collection.one() + " created"), once.get(), work);
    } else {
      call.studio()
          .change(
              call.by(collection.one() + " created"),
              now -> {
                Made made = work.apply(now);
                id[0] = made.reply();
                return made.entries();
              });
    }
    return created(call, id[0]);
  }

  private Reply created(Call call, String id) {
    // Asked again later, it answers with what the thing is by then, if it is still there.
    String body =
        call.studio()
            .now()
            .entries()
            .find(collection.name(), id)
            .map(Entry::body)
            .orElseThrow(() -> Refusal.notThere(collection.one() + " " + id + " any more"));
    return Reply.json(Status.CREATED, ItemFile.pretty(body))
        .with("Location", Addresses.below(root, id))
        .with("ETag", Etag.of(body));
  }

  private Made made(Kept now, String text) {
    String body = ItemFile.kept(text, collection.type(), new KeptMeshes(now.entries()));
    String id = ItemFile.id(body).orElseGet(() -> nextNumber(collection, now.entries()));
    if (now.entries().find(collection.name(), id).isPresent()) {
      throw new Refusal(
          Problem.of(
              Status.CONFLICT,
              "There already",
              "There is a " + collection.one() + " " + id + " already."));
    }
    return new Made(now.entries().with(collection.name(), id, body), id);
  }

  /** An id for a thing that has none of its own, such as a pin. */
  static String nextNumber(Collection collection, Entries entries) {
    long most =
        entries.list(collection.name()).stream()
            .map(Entry::id)
            .filter(id -> id.matches("[0-9]{1,15}"))
            .mapToLong(Long::parseLong)
            .max()
            .orElse(0);
    return Long.toString(most + 1);
  }

  private Route reading() {
    Operation operation =
        single("GET", "read", "One " + collection.one(), "As the book has it.")
            .answering(Answer.of(Status.OK, "It is there.", shape, "ETag"));
    return new Route(operation, this::read);
  }

  private Reply read(Call call) {
    String body = found(call.studio().now(), call).body();
    return Matching.reading(
        call, Etag.of(body), () -> Reply.json(Status.OK, ItemFile.pretty(body)));
  }

  private Route changing() {
    Operation operation =
        single(
                "PUT",
                "change",
                "Another " + collection.one() + " in its place",
                "The whole of it, with the same id. The book must be right afterwards.")
            .with(Matching.PARAMETER)
            .with(Who.PARAMETER)
            .taking(shape, collection.example())
            .answering(Answer.of(Status.OK, "It is changed.", shape, "ETag"));
    return new Route(operation, this::change);
  }

  private Reply change(Call call) {
    String text = call.body();
    Kept kept =
        call.studio()
            .change(
                call.by(collection.one() + " " + call.path("id") + " changed"),
                now -> changed(now, call, text));
    String body = found(kept, call).body();
    return Reply.json(Status.OK, ItemFile.pretty(body)).with("ETag", Etag.of(body));
  }

  private Entries changed(Kept now, Call call, String text) {
    Entry before = found(now, call);
    String body = ItemFile.kept(text, collection.type(), new KeptMeshes(now.entries()));
    Matching.check(call, Etag.of(before.body()), () -> meanwhile(before, body));
    ItemFile.id(body).filter(id -> !id.equals(before.id())).ifPresent(id -> sameId(before, id));
    Entries after = now.entries().with(collection.name(), before.id(), body);
    int index = now.entries().list(collection.name()).indexOf(before);
    ThingPaths.of(collection, index)
        .told(() -> BookParts.book(after.parts(), new KeptMeshes(after)));
    return after;
  }

  private static void sameId(Entry before, String id) {
    throw new Faulty(List.of(otherId(before.id(), id)));
  }

  /** The fault of a thing that calls itself other than its address does. */
  static Fault otherId(String address, String id) {
    return new Fault("$.id", '"' + id + '"', "the id in the address, \"" + address + '"');
  }

  private List<ChangedMeanwhile> meanwhile(Entry before, String wanted) {
    return List.of(
        new ChangedMeanwhile(
            collection.name(),
            before.id(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            ItemFile.differing(before.body(), wanted)));
  }

  private Route removing() {
    Operation operation =
        single(
                "DELETE",
                "remove",
                "No such " + collection.one() + " any more",
                "Refused while something else in the book names it.")
            .with(Matching.PARAMETER)
            .with(Who.PARAMETER)
            .answering(Answer.empty(Status.DONE, "It is gone."));
    return new Route(operation, this::remove);
  }

  private Reply remove(Call call) {
    call.studio()
        .change(
            call.by(collection.one() + " " + call.path("id") + " removed"),
            now -> {
              Entry before = found(now, call);
              Matching.check(call, Etag.of(before.body()), () -> meanwhile(before, before.body()));
              return now.entries().without(collection.name(), before.id());
            });
    return Reply.empty(Status.DONE);
  }

  private Entry found(Kept now, Call call) {
    String id = call.path("id");
    return now.entries()
        .find(collection.name(), id)
        .orElseThrow(() -> Refusal.notThere(collection.one() + " " + id));
  }

  private Operation single(String method, String verb, String summary, String description) {
    return operation(method, root + "/{id}", verb, summary, description)
        .with(Parameter.path("id", "Which " + collection.one() + ".", "an-id"));
  }

  private Operation operation(
      String method, String path, String verb, String summary, String description) {
    String plural = collection.name();
    String noun = verb.equals("list") ? plural : collection.one();
    String id = verb + Character.toUpperCase(noun.charAt(0)) + noun.substring(1);
    return Operation.of(method, path, id, collection.topic(), summary + ".", description);
  }
}
