package strickle.api;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import strickle.book.Book;
import strickle.book.Studio;
import strickle.json.BookFile;
import strickle.json.BookParts;
import strickle.json.ItemFile;
import strickle.json.contract.Answer;
import strickle.json.contract.Operation;
import strickle.json.contract.Shape;
import strickle.store.Difference;
import strickle.store.Entries;
import strickle.store.Entry;
import strickle.store.JournalLine;
import strickle.store.Kept;
import strickle.store.KeptMeshes;
import strickle.store.StudioStore;

/** The book as a whole, and the studio's own data. */
final class BookRoutes {

  private static final String TOPIC = "The book";

  /** A whole book. */
  static final Shape BOOK = new Shape.Of(Book.class, "strickle-book/1");

  private static final Shape STUDIO = Shape.of(Studio.class);
  private static final int MOST_TOLD = 50;

  private BookRoutes() {}

  /** The routes. */
  static List<Route> all() {
    BookTexts texts = new BookTexts();
    return List.of(
        new Route(
            Operation.of(
                    "GET",
                    "/api/book",
                    "readBook",
                    TOPIC,
                    "The whole book.",
                    "What the studio owns, makes and owes, as the file strickle-book/1 has it.")
                .answering(Answer.of(Status.OK, "The book.", BOOK, "ETag")),
            call -> read(call, texts)),
        new Route(
            Operation.of(
                    "PUT",
                    "/api/book",
                    "changeBook",
                    TOPIC,
                    "Another book in its place.",
                    "The whole of it, in one change that can be undone.")
                .with(Matching.PARAMETER)
                .with(Who.PARAMETER)
                .taking(BOOK, "")
                .answering(Answer.of(Status.OK, "It is changed.", BOOK, "ETag")),
            BookRoutes::change),
        new Route(
            Operation.of(
                    "GET",
                    "/api/studio",
                    "readStudio",
                    TOPIC,
                    "The studio's own data.",
                    "Name, currency, time zone, wage, overhead, batch limit and climate.")
                .answering(Answer.of(Status.OK, "The data.", STUDIO, "ETag")),
            BookRoutes::readStudio),
        new Route(
            Operation.of(
                    "PUT",
                    "/api/studio",
                    "changeStudio",
                    TOPIC,
                    "Other data of the studio.",
                    "The whole of them; the book must be right afterwards.")
                .with(Matching.PARAMETER)
                .with(Who.PARAMETER)
                .taking(STUDIO, "")
                .answering(Answer.of(Status.OK, "They are changed.", STUDIO, "ETag")),
            BookRoutes::changeStudio));
  }

  private static Reply read(Call call, BookTexts texts) {
    StudioStore studio = call.studio();
    Kept now = studio.now();
    return Matching.reading(
        call, call.tag(now), () -> Reply.json(Status.OK, texts.of(studio, now)));
  }

  private static Reply change(Call call) {
    String text = call.body();
    StudioStore studio = call.studio();
    Kept kept =
        studio.change(
            call.by("the whole book replaced"),
            now -> {
              Matching.check(call, call.tag(now), () -> since(call));
              Book book = BookFile.parse(text, new KeptMeshes(now.entries()));
              List<String> lists = new ArrayList<>(BookParts.LISTS);
              lists.add(BookParts.STUDIO);
              return now.entries().replacing(lists, BookParts.of(book));
            });
    return Reply.json(Status.OK, BookFile.write(kept.book())).with("ETag", call.tag(kept));
  }

  /** What has been changed since the reader of an ETag of the book read it, newest first. */
  static List<ChangedMeanwhile> since(Call call) {
    StudioStore studio = call.studio();
    // Every line of the journal made one revision; the first revision came before the first line.
    long read = call.header(Matching.HEADER).map(Etag::revision).orElse(0L);
    return studio.journal(Long.MAX_VALUE, MOST_TOLD).stream()
        .filter(line -> read > 0 && line.number() >= read)
        .flatMap(line -> changes(studio, line))
        .limit(MOST_TOLD)
        .toList();
  }

  private static Stream<ChangedMeanwhile> changes(StudioStore studio, JournalLine line) {
    return studio.journalDifferences(line.number()).stream()
        .map(
            difference ->
                new ChangedMeanwhile(
                    difference.collection(),
                    difference.id(),
                    Optional.of(line.what()),
                    Optional.of(line.who()),
                    Optional.of(line.at()),
                    fields(difference)));
  }

  private static List<String> fields(Difference difference) {
    if (difference.before().isEmpty() || difference.after().isEmpty()) {
      return List.of();
    }
    return ItemFile.differing(difference.before().get().body(), difference.after().get().body());
  }

  private static Reply readStudio(Call call) {
    String body = studio(call.studio().now().entries()).body();
    return Matching.reading(
        call, Etag.of(body), () -> Reply.json(Status.OK, ItemFile.pretty(body)));
  }

  private static Reply changeStudio(Call call) {
    String text = call.body();
    Kept kept =
        call.studio()
            .change(
                call.by("the studio's own data changed"),
                now -> {
                  Entry before = studio(now.entries());
                  Matching.check(call, Etag.of(before.body()), List::of);
                  String body = ItemFile.kept(text, Studio.class, new KeptMeshes(now.entries()));
                  return now.entries().with(BookParts.STUDIO, BookParts.STUDIO, body);
                });
    String body = studio(kept.entries()).body();
    return Reply.json(Status.OK, ItemFile.pretty(body)).with("ETag", Etag.of(body));
  }

  private static Entry studio(Entries entries) {
    return entries.find(BookParts.STUDIO, BookParts.STUDIO).orElseThrow();
  }
}
