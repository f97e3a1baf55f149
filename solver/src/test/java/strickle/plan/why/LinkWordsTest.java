package strickle.plan.why;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import strickle.book.Book;
import strickle.book.SampleBook;
import strickle.plan.Cover;

/** A chain of holds too long to be told whole. */
class LinkWordsTest {

  private static final int HOUR = 60;

  private final Book book = SampleBook.example();
  private final Moments moments =
      new Moments(
          MomentsTest.at("2027-04-05T00:00").atZone(book.studio().timeZone()).toOffsetDateTime(),
          book.studio().timeZone());
  private final Floor floor = Floor.of(book, Cover.AVERAGE, moments, Map.of(), List.of());
  private final Names names = new Names(floor, Serving.of(floor), SampleBook.gardenShop());
  private final LinkWords words =
      new LinkWords(names, moments, course -> new HoldWords(names, moments, course, floor::usage));
  private final Hold first = new Hold.Closed(0, 20 * HOUR, 21 * HOUR);

  /**
   * So many runs, each of which waits an hour for opening, and the last of which waits for none.
   */
  private static List<Links.Link> chain(int runs) {
    List<Links.Link> links = new ArrayList<>();
    for (int run = 1; run <= runs; run++) {
      int hour = 20 - run;
      Placed pour = new Placed("ana", hour * HOUR, hour * HOUR + 30, 30);
      Course course = Runs.course("L" + run + "-1", List.of(pour));
      Hold closed = new Hold.Closed(0, (hour - 1) * HOUR, hour * HOUR);
      links.add(
          new Links.Link(course, 0, Optional.of(closed).filter(any -> links.size() < runs - 1)));
    }
    return links;
  }

  @Test
  void aChainThatFitsIsToldWhole() {
    List<String> said = words.say(first, chain(3), 3);
    assertEquals(3, said.size());
    assertEquals("L3-1 is poured as early as it can be, Mon 5 Apr 17:00", said.get(2));
  }

  @Test
  void ofAChainThatDoesNotItsEndIsToldAndHowManyAreLeftOut() {
    List<String> whole = words.say(first, chain(8), 8);
    List<String> said = words.say(first, chain(8), 3);
    assertEquals(whole.subList(0, 2), said.subList(0, 2));
    assertEquals(
        "behind that, after 5 more such holds: L8-1 is poured as early as it can be,"
            + " Mon 5 Apr 12:00",
        said.get(2));
    assertEquals(3, said.size());
  }

  @Test
  void whereOnlyOneIsLeftOutItIsSaidSo() {
    assertEquals(
        "behind that, after one more such hold: L3-1 is poured as early as it can be,"
            + " Mon 5 Apr 17:00",
        words.say(first, chain(3), 2).get(1));
  }

  @Test
  void whereThereIsNoRoomNothingIsSaid() {
    assertEquals(List.of(), words.say(first, chain(3), 0));
    assertEquals(List.of(), words.say(first, List.of(), 4));
  }
}
