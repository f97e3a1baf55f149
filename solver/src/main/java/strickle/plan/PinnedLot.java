package strickle.plan;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import strickle.book.Book;
import strickle.book.Pin;

/**
 * The pins of one person at one moment: they are one lot.
 *
 * @param person id of who pours
 * @param start when, local time
 * @param castings castings of each piece, in the order in which the runs are placed
 * @param places which pins of the book these are, counted from 0
 */
record PinnedLot(
    String person, LocalDateTime start, Map<String, Integer> castings, List<Integer> places) {

  /** By start and then person. */
  static final Comparator<PinnedLot> BY_START =
      Comparator.comparing(PinnedLot::start).thenComparing(PinnedLot::person);

  /** The same lot with its runs in another order. */
  PinnedLot shuffled(Random random) {
    List<String> pieces = new ArrayList<>(castings.keySet());
    Collections.shuffle(pieces, random);
    Map<String, Integer> inOrder = new LinkedHashMap<>();
    pieces.forEach(piece -> inOrder.put(piece, castings.get(piece)));
    return new PinnedLot(person, start, inOrder, places);
  }

  /** How many castings of a piece are in it, 0 or more. */
  int castingsOf(String piece) {
    return castings.getOrDefault(piece, 0);
  }

  /** The pinned lots of a book, by start and then person. */
  static List<PinnedLot> of(Book book) {
    List<PinnedLot> lots = new ArrayList<>();
    for (int place = 0; place < book.pins().size(); place++) {
      Pin pin = book.pins().get(place);
      PinnedLot lot =
          lots.stream()
              .filter(one -> one.person.equals(pin.person()) && one.start.equals(pin.start()))
              .findFirst()
              .orElse(null);
      if (lot == null) {
        lot = new PinnedLot(pin.person(), pin.start(), new LinkedHashMap<>(), new ArrayList<>());
        lots.add(lot);
      }
      lot.castings.merge(pin.piece(), pin.castings(), Integer::sum);
      lot.places.add(place);
    }
    lots.sort(BY_START);
    return lots;
  }
}
