package strickle.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import strickle.book.Book;
import strickle.cure.RoomPace;
import strickle.demo.Generator;

class ExactWeekAgesTest {

  private static final int HORIZON = 30 * 24 * 60;
  private static final List<Double> HOURS = List.of(0.0, 14.4, 23.5, 24.0, 101.0, 168.0);

  private static final Book BOOK =
      List.of(1, 2, 3, 4, 5, 6, 7, 8).stream()
          .map(seed -> Generator.book(6, seed))
          .filter(book -> book.studio().climate().size() > 2)
          .findFirst()
          .orElseThrow();

  private static final OffsetDateTime FROM = Generator.start(BOOK);
  private static final ExactWeekTime TIME = new ExactWeekTime(FROM, BOOK.studio().timeZone());

  @Test
  void aWaitEndsAtTheMinuteTheRoomSays() {
    ExactWeekAges ages = new ExactWeekAges(BOOK, TIME, HORIZON);
    RoomPace pace = RoomPace.of(BOOK.studio().climate(), TIME.zone());
    for (double hours : HOURS) {
      for (int from = 0; from < HORIZON / 2; from += 97) {
        int end = TIME.minute(pace.end(TIME.at(from).toInstant(), hours));
        assertEquals(end, ages.end(from, hours, true), from + " and " + hours + " h");
      }
    }
  }

  @Test
  void thePiecesOfLineGiveEveryMinuteExactly() {
    ExactWeekAges ages = new ExactWeekAges(BOOK, TIME, HORIZON);
    for (double hours : HOURS) {
      int next = 0;
      for (ExactWeekAges.Piece piece : ages.pieces(hours, true, 0, HORIZON / 2)) {
        assertEquals(next, piece.first());
        for (int from = piece.first(); from <= piece.last(); from++) {
          long over = piece.height() + piece.slope() * (from - piece.first());
          long end = Math.ceilDiv(over, ExactWeekAges.PARTS);
          assertEquals(ages.end(from, hours, true), end, from + " and " + hours + " h");
        }
        next = piece.last() + 1;
      }
      assertEquals(HORIZON / 2 + 1, next);
    }
  }

  @Test
  void theLatestBeginningIsOverInTimeAndAMinuteLaterIsNot() {
    ExactWeekAges ages = new ExactWeekAges(BOOK, TIME, HORIZON);
    for (double hours : HOURS) {
      int latest = ages.latest(HORIZON / 2, hours, true);
      assertTrue(ages.end(latest, hours, true) <= HORIZON / 2);
      assertTrue(ages.end(latest + 1, hours, true) > HORIZON / 2);
    }
  }
}
