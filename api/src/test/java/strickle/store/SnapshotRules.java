package strickle.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import strickle.json.BookParts;

/** What holds of snapshots in whatever database a studio lies. */
abstract class SnapshotRules extends StudioStoreHouse {

  @Test
  void theFirstChangeOfADayKeepsTheDayBefore() {
    studio.change(by("one"), station("rack-1", 1));
    studio.change(by("two"), station("rack-2", 1));
    clock.set(Instant.parse("2027-04-06T07:00:00Z"));
    studio.change(by("three"), station("rack-3", 1));
    List<Snapshot> snapshots = studio.snapshots();
    assertEquals(2, snapshots.size());
    Kept restored = studio.restore("maren", snapshots.get(1).id()).orElseThrow();
    assertEquals(BOOK, restored.book());
    assertTrue(studio.undo("maren").orElseThrow().entries().find("stations", "rack-3").isPresent());
  }

  @Test
  void anUndoThatComesFirstOnADayKeepsTheDayBeforeToo() {
    studio.change(by("one"), station("rack-1", 1));
    Kept evening = studio.change(by("two"), station("rack-2", 1));
    clock.set(Instant.parse("2027-04-06T07:00:00Z"));
    studio.undo("maren");
    studio.change(by("three"), station("rack-3", 1));
    List<Snapshot> snapshots = studio.snapshots();
    assertEquals(2, snapshots.size());
    Kept restored = studio.restore("maren", snapshots.get(0).id()).orElseThrow();
    assertEquals(evening.book(), restored.book());
  }

  @Test
  void aSnapshotThatIsRemovedIsGoneAndNothingElse() {
    studio.change(by("one"), station("rack-1", 1));
    String day = studio.snapshots().get(0).id();
    String asked = studio.takeSnapshot("before the fair").id();
    Kept before = studio.now();
    List<JournalLine> journal = studio.journal(Long.MAX_VALUE, 10);
    StudioStore other = studios.create("Birch Yard", Optional.of("hash"), BookParts.of(BOOK));
    assertFalse(other.removeSnapshot(asked));
    assertTrue(studio.removeSnapshot(asked));
    assertFalse(studio.removeSnapshot(asked));
    assertEquals(Optional.empty(), studio.restore("maren", asked));
    assertEquals(List.of(day), studio.snapshots().stream().map(Snapshot::id).toList());
    assertEquals(before, reopened().now());
    assertEquals(journal, studio.journal(Long.MAX_VALUE, 10));
  }

  @Test
  void theSnapshotOfADayThatWasRemovedIsNotTakenAgainThatDay() {
    studio.change(by("one"), station("rack-1", 1));
    assertTrue(studio.removeSnapshot(studio.snapshots().get(0).id()));
    studio.change(by("two"), station("rack-2", 1));
    assertEquals(List.of(), studio.snapshots());
    clock.set(Instant.parse("2027-04-06T07:00:00Z"));
    studio.change(by("three"), station("rack-3", 1));
    assertEquals(1, studio.snapshots().size());
  }

  @Test
  void aClockThatOnceJumpedAheadEndsNoDailySnapshots() {
    clock.set(Instant.parse("2099-01-01T09:00:00Z"));
    studio.change(by("one"), station("rack-1", 1));
    clock.set(Instant.parse("2027-04-06T00:00:00.5Z"));
    studio.change(by("two"), station("rack-2", 1));
    studio.change(by("three"), station("rack-3", 1));
    assertEquals(
        List.of("2099-01-01", "2027-04-06"),
        studio.snapshots().stream().map(one -> one.at().toString().substring(0, 10)).toList());
  }
}
