package strickle.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** More than the first activity may be settled, wherever it lies; the rest follows as it can. */
class SettledPlacesTest {

  private static final int DAY = 1440;

  @Test
  void theRestFollowsTheRealEndOfWhatIsSettled() {
    Shop shop =
        chain().fixed(lot(0, 5, 40, true, part(1, place(0, 100, 170)))).workerFrom(200).shop();
    Schedule.Run run = run(shop);
    assertEquals(new Schedule.Placed(0, 0, 0, 100, 170), run.rest().get(0));
    // 170 and an hour.
    assertEquals(230, run.rest().get(1).start());
  }

  @Test
  void nothingStartsBeforeTheCalendarsBegin() {
    Shop shop =
        chain().fixed(lot(0, 5, 40, true, part(1, place(0, 100, 170)))).workerFrom(900).shop();
    assertEquals(900, run(shop).rest().get(1).start());
  }

  @Test
  void whatIsSettledMayLieBeforeTheBeginning() {
    Shop shop = chain().fixed(lot(0, -600, -500, true, part(1))).workerFrom(0).shop();
    assertEquals(0, run(shop).rest().get(0).start());
    assertEquals(-500, firstOf(shop).end());
  }

  @Test
  void ofAWorkersHoursOnlyWhatLiesInThemIsTaken() {
    ShopDraft draft =
        new ShopDraft()
            .worker(Calendar.of(new int[] {100}, new int[] {1000}))
            .kind(1, ActivityDraft.of(50).by(0))
            .kind(1, ActivityDraft.of(10).by(0))
            .fixed(lot(0, 60, 130, true, part(1)));
    Schedule schedule = first(draft.shop());
    assertEquals(new Schedule.Placed(0, 0, 30, 60, 130), schedule.lots().get(0).first());
    assertEquals(130, schedule.lots().get(1).first().start());
  }

  @Test
  void twoThatReallyWereAtOnceKeepTheirWorkerBusyOnce() {
    Shop shop =
        new ShopDraft()
            .worker()
            .kind(3, ActivityDraft.of(50).by(0))
            .fixed(lot(0, 10, 60, true, part(1)))
            .fixed(lot(0, 40, 90, true, part(1)))
            .shop();
    assertEquals(90, first(shop).lots().get(2).first().start());
  }

  @Test
  void aMostWaitBehindWhatIsSettledGivesWayOnlyWhenNothingElseHelps() {
    ShopDraft draft = tight().fixed(lot(0, 0, 10, true, part(1))).workerFrom(500);
    // 60 minutes at most have long gone by; as soon as can be.
    assertEquals(500, run(draft.shop()).rest().get(0).start());
    Shop inTime = tight().fixed(lot(0, 0, 10, true, part(1))).workerFrom(30).shop();
    assertEquals(30, run(inTime).rest().get(0).start());
  }

  @Test
  void aMostWaitOfALotToComeNeverGivesWay() {
    ShopDraft draft = tight().fixed(lot(0, 0, 10, false, part(1))).workerFrom(500);
    assertEquals(Optional.empty(), Scheduler.first(draft.shop()));
  }

  @Test
  void onlyTheWaitThatCannotBeKeptGivesWay() {
    Shop shop =
        tight()
            .kind(1, ActivityDraft.of(10).by(0), ActivityDraft.of(10).by(0).within(DAY))
            .fixed(lot(0, 0, 10, true, part(1)))
            .fixed(lot(0, 450, 460, true, new FixedLot.Part(1, 1)))
            .workerFrom(500)
            .shop();
    assertTrue(first(shop).lots().get(1).runs().get(0).rest().get(0).start() <= 460 + DAY);
  }

  @Test
  void whatIsHeldWithoutEndNobodyElseTakesBeforeItIsGivenBack() {
    Shop shop =
        new ShopDraft()
            .worker(Calendar.of(new int[] {300}, new int[] {5000}))
            .resource(1)
            .kind(2, held(0), ActivityDraft.of(10).by(0).after(0, 1))
            .fixed(lot(0, 0, 50, true, part(1)))
            .shop();
    Schedule schedule = first(shop);
    assertEquals(300, schedule.lots().get(0).runs().get(0).rest().get(0).start());
    assertEquals(310, schedule.lots().get(1).first().start());
  }

  @Test
  void aLotToComeThatNeedsWhatIsNotGivenBackByThenIsNamed() {
    Shop shop =
        new ShopDraft()
            .worker(Calendar.of(new int[] {300}, new int[] {5000}))
            .resource(1)
            .kind(2, held(0), ActivityDraft.of(10).by(0).after(0, 1))
            .fixed(lot(0, 0, 50, true, part(1)))
            .fixed(lot(0, 305, 335, false, part(1)))
            .shop();
    Decodes decodes = Decodes.of(shop);
    assertEquals(Optional.empty(), decodes.decode(decodes.inOrder()));
    assertEquals(1, decodes.decoder().failedSettled());
  }

  @Test
  void whatIsLostIsLostForAllButSettledLots() {
    Shop shop =
        new ShopDraft()
            .worker()
            .worker()
            .resource(new Resource("mould", 2, List.of(new Resource.Lost(20, 1))))
            .kind(4, held(0).by(0, 1), ActivityDraft.of(10).by(0, 1))
            .fixed(lot(0, 0, 30, true, part(1)))
            .fixed(lot(1, 0, 30, true, part(1)))
            .shop();
    List<Schedule.Lot> lots = first(shop).lots();
    assertEquals(40, lots.get(2).first().start());
    assertEquals(80, lots.get(3).first().start());
  }

  @Test
  void anActivityDoesNotStartBeforeTheMinuteGivenForIt() {
    FixedLot.Part part = new FixedLot.Part(0, 1, List.of(place(0, 100, 170)), List.of(4000), 1);
    Shop shop = chain().fixed(lot(0, 5, 40, true, part)).workerFrom(200).shop();
    assertEquals(4000, run(shop).rest().get(1).start());
  }

  @Test
  void aDueDateWaitsForWhatJobsAreWorth() {
    FixedLot.Part lame = new FixedLot.Part(0, 2, List.of(), List.of(), 1.2);
    ShopDraft draft =
        new ShopDraft()
            .worker()
            .kind(3, ActivityDraft.of(10).by(0))
            .fixed(lot(0, 0, 20, true, lame));
    assertEquals(List.of(20), first(draft.due(0, 1, new Due.Need(0, 2, 1.2)).shop()).met());
    assertEquals(List.of(20, 30), first(draft.due(0, 1, new Due.Need(0, 2, 1.3)).shop()).met());
  }

  private static ActivityDraft held(int resource) {
    return ActivityDraft.of(30).by(0).holding(resource, 1, 1);
  }

  private static ShopDraft chain() {
    return new ShopDraft()
        .kind(
            1,
            ActivityDraft.of(10).by(0),
            ActivityDraft.of(10).by(0).after(0, 1),
            ActivityDraft.of(10).by(0).after(0, 1));
  }

  private static ShopDraft tight() {
    return new ShopDraft()
        .kind(1, ActivityDraft.of(10).by(0), ActivityDraft.of(10).by(0).within(60));
  }

  private static FixedLot lot(int worker, int start, int end, boolean begun, FixedLot.Part part) {
    return new FixedLot(worker, start, OptionalInt.of(end), List.of(part), begun);
  }

  private static FixedLot.Part part(int jobs, FixedLot.Place... rest) {
    return new FixedLot.Part(0, jobs, List.of(rest), List.of(), jobs);
  }

  private static FixedLot.Place place(int worker, int start, int end) {
    return new FixedLot.Place(worker, start, end);
  }

  private static Schedule.Run run(Shop shop) {
    return first(shop).lots().get(0).runs().get(0);
  }

  private static Schedule.Placed firstOf(Shop shop) {
    return first(shop).lots().get(0).first();
  }

  private static Schedule first(Shop shop) {
    return Scheduler.first(shop).orElseThrow();
  }
}
