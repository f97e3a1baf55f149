package strickle.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static strickle.plan.Studios.MONDAY;
import static strickle.plan.Studios.TUESDAY;
import static strickle.plan.Studios.pin;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import strickle.book.Book;
import strickle.book.Draft;

class PinnedLotTest {

  private static final Book TWO =
      Draft.of(Studios.tiles())
          .people(Studios.weekdays("ana"), Studios.weekdays("ben"))
          .pieces(Studios.piece("tile", "slab"), Studios.piece("slate", "slab"))
          .book();

  @Test
  void pinsOfOnePersonAtOneMomentAreOneLot() {
    Book book =
        Draft.of(TWO)
            .pins(
                pin("slate", 1, TUESDAY + "09:00", "ana"),
                pin("tile", 1, MONDAY + "09:00", "ben"),
                pin("tile", 2, MONDAY + "09:00", "ana"),
                pin("tile", 3, TUESDAY + "09:00", "ana"))
            .book();
    LocalDateTime monday = LocalDateTime.parse(MONDAY + "09:00");
    LocalDateTime tuesday = LocalDateTime.parse(TUESDAY + "09:00");
    assertEquals(
        List.of(
            new PinnedLot("ana", monday, Map.of("tile", 2), List.of(2)),
            new PinnedLot("ben", monday, Map.of("tile", 1), List.of(1)),
            new PinnedLot("ana", tuesday, Map.of("slate", 1, "tile", 3), List.of(0, 3))),
        PinnedLot.of(book));
  }

  @Test
  void aBookWithoutPinsHasNone() {
    assertEquals(List.of(), PinnedLot.of(TWO));
  }
}
