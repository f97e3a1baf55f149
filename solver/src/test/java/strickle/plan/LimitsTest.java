package strickle.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import strickle.book.Altered;
import strickle.book.Book;
import strickle.book.Draft;
import strickle.book.SampleBook;
import strickle.shop.Activity;
import strickle.shop.Kind;
import strickle.shop.Shop;
import strickle.shop.Wait;

class LimitsTest {

  private static final Shop SHOP = shop();

  /** Three pieces, of which the first and the last have most-waits: 120, 48, none and 96 hours. */
  private static Shop shop() {
    Book book =
        Draft.of(SampleBook.example())
            .moulds(SampleBook.planterDeep(), Studios.mould("slab", "tub-a"))
            .pieces(
                SampleBook.planterSlate(),
                Studios.piece("tile", "slab"),
                Altered.of(SampleBook.planterSlate(), "id", "other"))
            .orders(
                SampleBook.order("A", "planter-slate", 3, "2027-04-30T12:00"),
                SampleBook.order("B", "tile", 3, "2027-04-30T12:00"),
                SampleBook.order("C", "other", 4, "2027-04-30T12:00"))
            .pins(Studios.pin(1, Studios.MONDAY + "09:00"))
            .book();
    StudioTime time = new StudioTime(Studios.FROM.toInstant(), Studios.ZONE);
    return Compiler.compile(book, time, 100_000, Needs.of(book), PinnedLot.of(book)).shop();
  }

  private static List<OptionalInt> limits(Shop shop, int kind) {
    return shop.kinds().get(kind).chain().stream()
        .map(Activity::before)
        .map(Wait::atMostMinutes)
        .toList();
  }

  @Test
  void onlyOneJobOfOneKindIsLeft() {
    Shop alone = Limits.only(SHOP, 1);
    assertEquals(List.of(0, 1, 0), alone.kinds().stream().map(Kind::jobs).toList());
    assertEquals(List.of(), alone.dues());
    assertEquals(List.of(), alone.fixed());
    assertEquals(SHOP.workers(), alone.workers());
    assertEquals(SHOP.clocks(), alone.clocks());
    assertEquals(SHOP.resources(), alone.resources());
    assertEquals(SHOP.families(), alone.families());
    assertEquals(SHOP.kinds().get(1).chain(), alone.kinds().get(1).chain());
  }

  @Test
  void theMostWaitsOfTheActivitiesGivenAreGoneAndNothingElse() {
    OptionalInt none = OptionalInt.empty();
    OptionalInt set = OptionalInt.of(120 * 60);
    OptionalInt dry = OptionalInt.of(96 * 60);
    assertEquals(List.of(none, set, OptionalInt.of(48 * 60), none, dry), limits(SHOP, 0));
    Shop without = Limits.without(SHOP, 0, activity -> activity == 2);
    assertEquals(List.of(none, set, none, none, dry), limits(without, 0));
    assertEquals(limits(SHOP, 2), limits(without, 2));
    Shop free = Limits.without(SHOP, 2, activity -> true);
    assertEquals(List.of(none, none, none, none, none), limits(free, 2));
    Activity before = SHOP.kinds().get(2).chain().get(3);
    Activity after = free.kinds().get(2).chain().get(3);
    assertEquals(before, after);
  }
}
