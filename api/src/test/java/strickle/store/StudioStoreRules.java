package strickle.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import strickle.book.Faulty;
import strickle.demo.Demo;
import strickle.demo.Size;
import strickle.json.BookParts;
import strickle.json.StudioFile;

/** What holds of a studio in whatever database it lies. */
abstract class StudioStoreRules extends StudioStoreHouse {

  @Test
  void whatWasPutInIsThereAndMakesTheSameBook() {
    assertEquals(BOOK, studio.now().book());
    assertEquals(1, studio.now().revision());
    assertEquals(BOOK, reopened().now().book());
  }

  @Test
  void aChangeIsThereForEverybodyAndInTheJournal() {
    Kept kept = studio.change(by("a rack more"), station("rack-9", 4));
    assertEquals(2, kept.revision());
    assertEquals(kept, reopened().now());
    JournalLine line = studio.journal(Long.MAX_VALUE, 10).get(0);
    assertEquals("a rack more", line.what());
    assertEquals("maren", line.who());
    assertEquals(clock.instant(), line.at());
    Difference difference = studio.journalDifferences(line.number()).get(0);
    assertEquals(Optional.empty(), difference.before());
    assertEquals(kept.entries().find("stations", "rack-9"), difference.after());
  }

  @Test
  void whatLeavesNoValidBookIsRefusedAndNothingIsChanged() {
    Kept before = studio.now();
    assertThrows(
        Faulty.class, () -> studio.change(by("a mould less"), kept -> gone(kept, "moulds")));
    assertEquals(before, studio.now());
    assertEquals(before, reopened().now());
    assertEquals(List.of(), studio.journal(Long.MAX_VALUE, 10));
  }

  @Test
  void aChangeThatChangesNothingLeavesNoTrace() {
    assertEquals(1, studio.change(by("nothing"), Kept::entries).revision());
    assertEquals(1, reopened().now().revision());
    assertEquals(List.of(), studio.journal(Long.MAX_VALUE, 10));
  }

  @Test
  void undoAndRedoGoBackAndForthThroughEveryChange() {
    List<Kept> states = new ArrayList<>(List.of(studio.now()));
    for (int i = 0; i < 5; i++) {
      states.add(studio.change(by("rack " + i), station("rack-" + i, i + 1)));
    }
    for (int i = 4; i >= 0; i--) {
      assertEquals(states.get(i).entries(), studio.undo("maren").orElseThrow().entries());
    }
    assertEquals(Optional.empty(), studio.undo("maren"));
    for (int i = 1; i <= 5; i++) {
      assertEquals(states.get(i).entries(), studio.redo("maren").orElseThrow().entries());
    }
    assertEquals(Optional.empty(), studio.redo("maren"));
    assertEquals(16, reopened().now().revision());
  }

  @Test
  void aChangeAfterAnUndoEndsWhatCouldBeRedone() {
    studio.change(by("one"), station("rack-1", 1));
    studio.change(by("two"), station("rack-2", 1));
    studio.undo("maren");
    studio.change(by("three"), station("rack-3", 1));
    assertEquals(Optional.empty(), studio.redo("maren"));
    Kept back = studio.undo("maren").orElseThrow();
    assertTrue(back.entries().find("stations", "rack-1").isPresent());
    assertFalse(back.entries().find("stations", "rack-3").isPresent());
  }

  @Test
  void afterFiveHundredRandomChangesARestartAndAsManyUndosTheStudioIsTheFirstOne() {
    String first = StudioFile.write(studio.now().entries().parts());
    Random random = new Random(7);
    int done = 0;
    while (done < 500) {
      long before = studio.now().revision();
      String id = "rack-" + random.nextInt(40);
      int places = 1 + random.nextInt(30);
      boolean remove = random.nextInt(3) == 0;
      studio.change(
          by(id),
          kept ->
              remove
                  ? kept.entries().without("stations", id)
                  : kept.entries()
                      .with("stations", id, String.format(Locale.ROOT, STATION, id, id, places)));
      done += studio.now().revision() > before ? 1 : 0;
    }
    StudioStore after = reopened();
    assertNotEquals(first, StudioFile.write(after.now().entries().parts()));
    for (int i = 0; i < 500; i++) {
      assertTrue(after.undo("maren").isPresent());
    }
    assertEquals(first, StudioFile.write(after.now().entries().parts()));
  }

  @Test
  void ofManyChangesAtOnceNoneIsLost() throws ExecutionException, InterruptedException {
    Studios other = new Studios(opened.open(), clock);
    StudioStore twin = other.named("Ash Lane").orElseThrow();
    try (ExecutorService people = Executors.newFixedThreadPool(16)) {
      List<Future<Kept>> changes =
          IntStream.range(0, 200)
              .mapToObj(
                  i ->
                      people.submit(
                          () ->
                              (i % 2 == 0 ? studio : twin)
                                  .change(by("rack " + i), station("many-" + i, 1))))
              .toList();
      for (Future<Kept> change : changes) {
        change.get();
      }
    }
    Kept now = reopened().now();
    assertEquals(201, now.revision());
    assertEquals(
        200,
        now.entries().list("stations").stream().filter(e -> e.id().startsWith("many-")).count());
  }

  @Test
  void ofAHundredCreationsWithOneKeyOneHappens() throws ExecutionException, InterruptedException {
    Once once = new Once("key-1", "hash");
    try (ExecutorService people = Executors.newFixedThreadPool(16)) {
      List<Future<String>> replies =
          IntStream.range(0, 100)
              .mapToObj(i -> people.submit(() -> created(once, "once-" + i)))
              .toList();
      String first = replies.get(0).get();
      for (Future<String> reply : replies) {
        assertEquals(first, reply.get());
      }
    }
    assertEquals(2, studio.now().revision());
    assertThrows(KeyReused.class, () -> created(new Once("key-1", "other"), "once-more"));
    assertEquals(2, studio.now().revision());
  }

  @Test
  void aCreationIsForgottenAfterSevenDays() {
    created(new Once("key-1", "hash"), "once-1");
    clock.set(Instant.parse("2027-04-12T09:00:00Z"));
    created(new Once("key-2", "hash"), "once-2");
    assertEquals(2, rows("creation"));
    clock.set(Instant.parse("2027-04-12T09:00:01Z"));
    created(new Once("key-3", "hash"), "once-3");
    assertEquals(2, rows("creation"));
  }

  @Test
  void sessionsThatHaveEndedGoWhenTheNextIsOpened() {
    String id = studio.studio().id();
    studios.openSession(id, "first", Instant.parse("2027-04-06T00:00:00Z"));
    studios.openSession(id, "second", Instant.parse("2027-04-07T00:00:00Z"));
    clock.set(Instant.parse("2027-04-06T00:00:00Z"));
    assertEquals(Optional.empty(), studios.session("first"));
    studios.openSession(id, "third", Instant.parse("2027-04-08T00:00:00Z"));
    assertEquals(2, rows("session"));
    assertTrue(studios.session("second").isPresent());
  }

  private int rows(String table) {
    return database.read(
        handle -> handle.createQuery("select count(*) from " + table).mapTo(Integer.class).one());
  }

  @Test
  void studiosOfOneDatabaseDoNotSeeEachOther() {
    StudioStore other =
        studios.create("Birch Yard", Optional.of("hash"), BookParts.of(Demo.book(Size.MEDIUM)));
    other.change(by("a rack"), station("theirs", 3));
    assertEquals(BOOK, studio.now().book());
    assertEquals(List.of(), studio.journal(Long.MAX_VALUE, 10));
    assertEquals(List.of(), studio.snapshots());
    assertEquals(Optional.empty(), studio.snapshotFile(other.snapshots().get(0).id()));
    assertEquals(Optional.empty(), studio.undo("maren"));
    assertThrows(
        IllegalArgumentException.class,
        () -> studios.create("Birch Yard", Optional.empty(), BookParts.of(BOOK)));
  }

  @Test
  void aFirstStudioIsMadeWhereNoneIsAndNotBesideAnother() {
    assertEquals(Optional.empty(), studios.createFirst("Birch Yard", BookParts.of(BOOK)));
    assertEquals(Optional.empty(), studios.createFirst("Ash Lane", BookParts.of(BOOK)));
    assertEquals(1, studios.all().size());
  }
}
