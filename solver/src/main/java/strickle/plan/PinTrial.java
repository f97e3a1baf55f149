package strickle.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import strickle.book.Book;
import strickle.book.Piece;
import strickle.shop.Budget;
import strickle.shop.FixedLot;
import strickle.shop.NoRoomException;
import strickle.shop.Scheduler;
import strickle.shop.Shop;

/**
 * Tries the pinned lots out in a studio that has nothing else to do. What follows a pinned pour is
 * placed lot by lot, and an early lot can take what a later one cannot do without; so a lot that
 * finds no room is placed before the others and all are tried again; when that comes round in a
 * circle, the lots and the runs of each are shuffled.
 */
final class PinTrial {

  /** Orders of the lots to try before one of them is given up. */
  private static final int MOST_ORDERS = 300;

  private static final Budget ONCE = Budget.ofSchedules(1);

  private final Book book;
  private final StudioTime time;
  private final Shop shop;
  private final List<PinnedLot> order;
  private final List<PinnedLot> withoutRoom = new ArrayList<>();

  private PinTrial(Book book, StudioTime time, int horizonMinutes) {
    this.book = book;
    this.time = time;
    this.order = new ArrayList<>(PinnedLot.of(book));
    this.shop = Compiler.onlyPinned(book, time, horizonMinutes, order).shop();
  }

  /**
   * Tries the pinned lots of a book whose pins keep all of {@link PinRules} and whose pieces can be
   * made.
   *
   * @param horizonMinutes how far ahead to look for hours
   */
  static PinTrial of(Book book, StudioTime time, int horizonMinutes) {
    PinTrial trial = new PinTrial(book, time, horizonMinutes);
    while (!trial.settle()) {
      // One lot fewer each time, so this ends.
    }
    return trial;
  }

  /** The lots that find room, in an order in which they do. */
  List<PinnedLot> lots() {
    return List.copyOf(order);
  }

  /** The lots that find none. */
  List<PinnedLot> withoutRoom() {
    return List.copyOf(withoutRoom);
  }

  /** Looks for an order in which all lots find room; without one, gives up the first in need. */
  private boolean settle() {
    OptionalInt failed = failed();
    if (failed.isEmpty()) {
      return true;
    }
    PinnedLot inNeed = order.get(failed.getAsInt());
    Random random = new Random(0);
    Set<List<PinnedLot>> tried = new HashSet<>();
    int most = order.size() == 1 && inNeed.castings().size() == 1 ? 0 : MOST_ORDERS;
    for (int i = 0; failed.isPresent() && i < most; i++) {
      if (tried.add(List.copyOf(order))) {
        order.add(0, order.remove(failed.getAsInt()));
      } else {
        Collections.shuffle(order, random);
        order.replaceAll(lot -> lot.shuffled(random));
      }
      failed = failed();
    }
    if (failed.isPresent()) {
      order.remove(inNeed);
      order.sort(PinnedLot.BY_START);
      withoutRoom.add(inNeed);
    }
    return failed.isEmpty();
  }

  /** Where in the order the first lot is that finds no room behind those before it. */
  private OptionalInt failed() {
    if (order.isEmpty()) {
      return OptionalInt.empty();
    }
    try {
      List<String> pieces = book.pieces().stream().map(Piece::id).toList();
      List<FixedLot> fixed =
          order.stream().map(lot -> Compiler.fixed(book, time, pieces, lot)).toList();
      Shop inOrder = Limits.settled(shop, fixed);
      new Scheduler(inOrder, ONCE, 0, report -> {}).run();
      return OptionalInt.empty();
    } catch (NoRoomException none) {
      int lot = none.settledLot();
      // Too few hours for what follows later is not the pins' fault; planning will say so.
      return lot < 0 ? OptionalInt.empty() : OptionalInt.of(lot);
    }
  }
}
