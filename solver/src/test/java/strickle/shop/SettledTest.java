package strickle.shop;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Settled lots stay where they are, and everything else goes around them. */
class SettledTest {

  private static final Family SHARING = new Family("mix", 10, 4, List.of(10L), Integer.MAX_VALUE);

  @Test
  void aSettledLotTakesTheFirstJobsOfItsKindsThatNoOtherHasTaken() {
    Shop shop =
        twoKinds()
            .fixed(0, 50, new FixedLot.Part(1, 1))
            .fixed(0, 100, new FixedLot.Part(0, 2), new FixedLot.Part(1, 1))
            .shop();
    // Jobs 0, 1, 2 are of kind 0 and jobs 3, 4 of kind 1.
    int[] claims = new Settled(new Tables(shop)).claimsOfJobs();
    assertArrayEquals(new int[] {1, 1, 0, 1, 1}, claims);
  }

  @Test
  void itsFirstActivityTakesTheSharedMinutesAndThoseOfEachRun() {
    Shop shop = twoKinds().fixed(0, 100, new FixedLot.Part(0, 2), new FixedLot.Part(1, 1)).shop();
    Schedule.Lot lot = first(shop).lots().get(0);
    assertEquals(new Schedule.Placed(0, 100, 10 + 3 + 2 * 5 + 2 + 7, 100, 132), lot.first());
    assertEquals(List.of(2, 1), lot.runs().stream().map(Schedule.Run::jobs).toList());
  }

  @Test
  void whatComesAfterItWaitsFromItsEndLessItsTail() {
    Shop shop = twoKinds().fixed(0, 100, new FixedLot.Part(1, 1)).shop();
    Schedule.Run run = first(shop).lots().get(0).runs().get(0);
    // 100 + 10 + 2 + 7 - 4, and an hour.
    assertEquals(115 + 60, run.rest().get(0).start());
  }

  @Test
  void othersGoAroundIt() {
    Shop shop =
        new ShopDraft()
            .worker()
            .kind(1, ActivityDraft.of(30).by(0))
            .kind(1, ActivityDraft.of(20).by(0))
            .kind(1, ActivityDraft.of(21).by(0))
            .fixed(0, 20, new FixedLot.Part(0, 1))
            .shop();
    List<Integer> starts = first(shop).lots().stream().map(lot -> lot.first().start()).toList();
    assertEquals(List.of(20, 0, 50), starts);
  }

  @Test
  void whatItHoldsJustForItsFirstActivityNobodyElseHolds() {
    Shop shop =
        new ShopDraft()
            .worker()
            .worker()
            .resource(1)
            .kind(1, ActivityDraft.of(30).by(0).holding(0, 1, 0))
            .kind(1, ActivityDraft.of(30).by(1).holding(0, 1, 0))
            .fixed(0, 10, new FixedLot.Part(0, 1))
            .shop();
    assertEquals(40, first(shop).lots().get(1).first().start());
  }

  @Test
  void theOneThatCannotBeKeptIsNamed() {
    Shop shop =
        new ShopDraft()
            .worker(Calendar.of(new int[] {0, 1000}, new int[] {100, 1100}))
            .kind(2, ActivityDraft.of(10).by(0), ActivityDraft.of(10).by(0).within(50))
            .fixed(0, 0, new FixedLot.Part(0, 1))
            .fixed(0, 90, new FixedLot.Part(0, 1))
            .shop();
    Decodes decodes = Decodes.of(shop);
    assertEquals(Optional.empty(), decodes.decode(decodes.inOrder()));
    assertEquals(1, decodes.decoder().failedSettled());
  }

  @Test
  void twoThatNeedTheSameThingAtOnceCannotBothBeKept() {
    Shop shop =
        new ShopDraft()
            .worker()
            .worker()
            .resource(1)
            .kind(2, ActivityDraft.of(30).by(0, 1).holding(0, 1, 0))
            .fixed(0, 10, new FixedLot.Part(0, 1))
            .fixed(1, 39, new FixedLot.Part(0, 1))
            .shop();
    assertTrue(Scheduler.first(shop).isEmpty());
  }

  private static ShopDraft twoKinds() {
    return new ShopDraft()
        .worker()
        .family(SHARING)
        .kind(1, 3, List.of(1L), 0, ActivityDraft.of(3).each(5).by(0))
        .kind(1, 2, List.of(1L), 0, ActivityDraft.of(2).each(7).by(0), demould());
  }

  private static ActivityDraft demould() {
    return ActivityDraft.of(5).by(0).after(0, 1);
  }

  private static Schedule first(Shop shop) {
    return Scheduler.first(shop).orElseThrow();
  }
}
