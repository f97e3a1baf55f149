package strickle.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Of schedules that are equally late the one nearest to another wins. */
class NearnessTest {

  /** Five jobs of two kinds that one worker does one after the other, in any order as good. */
  private static Shop shop() {
    return new ShopDraft()
        .worker()
        .kind(3, ActivityDraft.of(20).by(0))
        .kind(2, ActivityDraft.of(30).by(0))
        .due(1000, 1, new Due.Need(0, 3), new Due.Need(1, 2))
        .shop();
  }

  private static Schedule.Lot lot(int kind, int start, int minutes) {
    Schedule.Placed placed = new Schedule.Placed(0, start, minutes, start, start + minutes);
    return new Schedule.Lot(placed, List.of(new Schedule.Run(kind, 1, List.of(), start + minutes)));
  }

  /** The long ones between the short ones, which no rule of thumb would do. */
  private static final List<Schedule.Lot> BEFORE =
      List.of(lot(0, 0, 20), lot(1, 20, 30), lot(0, 50, 20), lot(1, 70, 30), lot(0, 100, 20));

  private static Schedule near(List<Schedule.Lot> present, List<Schedule.Lot> near) {
    Budget budget = Budget.ofSchedules(300);
    return new Scheduler(shop(), budget, 0, present, near, report -> {}).run();
  }

  @Test
  void theSameScheduleIsFoundAgain() {
    Schedule schedule = near(List.of(), BEFORE);
    assertEquals(new Value(0, 0, 0), schedule.value());
    assertEquals(
        List.of(0, 20, 50, 70, 100),
        schedule.lots().stream().map(lot -> lot.first().start()).sorted().toList());
  }

  @Test
  void withoutItFlowDecides() {
    Schedule schedule = near(BEFORE, List.of());
    // 20 + 40 + 60 + 90 + 120.
    assertEquals(new Value(0, 120, 330), schedule.value());
  }

  @Test
  void whatHasMovedIsCountedAndMeasured() {
    List<Schedule.Lot> further = List.of(lot(0, 500, 20), lot(0, 520, 20), lot(0, 540, 20));
    Schedule schedule = near(List.of(), further);
    assertEquals(3, schedule.value().attended());
  }
}
