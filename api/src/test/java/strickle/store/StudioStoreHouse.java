package strickle.store;

import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import strickle.book.Book;
import strickle.demo.Demo;
import strickle.demo.Size;
import strickle.json.BookParts;

/** A studio in whatever database, for tests. */
abstract class StudioStoreHouse {

  static final Book BOOK = Demo.book(Size.SMALL);
  static final String STATION = "{\"id\":\"%s\",\"name\":\"%s\",\"places\":%d}";

  final SettableClock clock = new SettableClock(Instant.parse("2027-04-05T09:00:00Z"));
  OpenedTwice opened;
  Database database;
  Studios studios;
  StudioStore studio;

  /** A new, empty database. */
  abstract OpenedTwice fresh();

  @BeforeEach
  void open() {
    opened = fresh();
    database = opened.open();
    studios = new Studios(database, clock);
    studio = studios.create("Ash Lane", Optional.empty(), BookParts.of(BOOK));
  }

  @AfterEach
  void close() {
    opened.close();
  }

  String created(Once once, String id) {
    return studio.create(
        by("created"), once, kept -> new Made(station(id, 1).apply(kept), "made " + id));
  }

  StudioStore reopened() {
    return new Studios(opened.open(), clock).named("Ash Lane").orElseThrow();
  }

  static By by(String what) {
    return new By("maren", what);
  }

  static Function<Kept, Entries> station(String id, int places) {
    String body = String.format(Locale.ROOT, STATION, id, id, places);
    return kept -> kept.entries().with("stations", id, body);
  }

  static Entries gone(Kept kept, String collection) {
    return kept.entries().without(collection, kept.entries().list(collection).get(0).id());
  }
}
