package strickle.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each part of a shop refuses what it cannot be. */
class ShopRecordsTest {

  private static Stream<Executable> nonsense() {
    List<Activity> none = List.of();
    List<Activity> one = List.of(ActivityDraft.of(1).activity("one"));
    return Stream.of(
        () -> ActivityDraft.of(-1).activity("a"),
        () -> ActivityDraft.of(1).each(-1).activity("a"),
        () -> new Budget(OptionalLong.empty(), Optional.empty()),
        () -> Budget.ofSchedules(0),
        () -> new Due("d", 0, -1, List.of()),
        () -> new Family("f", 5, 6, List.of(), 1),
        () -> new Family("f", 5, -1, List.of(), 1),
        () -> new Hold(-1, 1, 0, Hold.Until.END),
        () -> new Hold(0, 0, 0, Hold.Until.END),
        () -> new Hold(0, 1, -1, Hold.Until.END),
        () -> new Kind("k", 0, -1, List.of(), one, 0),
        () -> new Kind("k", 0, 1, List.of(), one, -1),
        () -> new Kind("k", 0, 1, List.of(), none, 0),
        () -> new Resource("r", -1),
        () -> new Wait(-1, 0, OptionalInt.empty()),
        () -> new Wait(0, -0.1, OptionalInt.empty()),
        () -> new Wait(0, Double.NaN, OptionalInt.empty()),
        () -> new Wait(0, 0, OptionalInt.of(-1)),
        () -> new ShopDraft().horizon(0).shop(),
        () -> new ShopDraft().lateUnit(0).shop(),
        () -> workers(Shop.MOST_WORKERS + 1));
  }

  @ParameterizedTest
  @MethodSource("nonsense")
  void whatCannotBeIsRefused(Executable made) {
    assertThrows(IllegalArgumentException.class, made);
  }

  @Test
  void sixtyFourWorkersAreNotTooMany() {
    assertEquals(64, workers(Shop.MOST_WORKERS).workers().size());
  }

  @Test
  void theLastOfManyWorkersCanWork() {
    ShopDraft draft = new ShopDraft();
    Collections.nCopies(63, Calendar.of(new int[0], new int[0])).forEach(draft::worker);
    Integer[] all = Stream.iterate(0, i -> i + 1).limit(64).toArray(Integer[]::new);
    Shop shop = draft.worker().kind(1, ActivityDraft.of(5).by(all)).shop();
    assertEquals(63, Scheduler.first(shop).orElseThrow().lots().get(0).first().worker());
  }

  @Test
  void aShopKeepsItsOwnLists() {
    List<Due> dues = new ArrayList<>();
    Shop made = new ShopDraft().shop();
    Shop shop =
        new Shop(
            made.horizonMinutes(),
            made.lateUnitMinutes(),
            made.workers(),
            made.clocks(),
            made.resources(),
            made.families(),
            made.kinds(),
            made.links(),
            dues,
            made.fixed());
    dues.add(new Due("late", 0, 1, List.of()));
    assertTrue(shop.dues().isEmpty());
  }

  @Test
  void aShopCountsItsJobs() {
    ActivityDraft one = ActivityDraft.of(1);
    assertEquals(7, new ShopDraft().kind(3, one).kind(0, one).kind(4, one).shop().jobs());
  }

  @Test
  void lateCountsBeforeAttendedBeforeFlow() {
    List<Value> best =
        List.of(new Value(0, 9, 9), new Value(1, 0, 9), new Value(1, 1, 0), new Value(1, 1, 1));
    List<Value> sorted = new ArrayList<>(best);
    Collections.reverse(sorted);
    sorted.sort(null);
    assertEquals(best, sorted);
  }

  @Test
  void aBudgetIsANumberOrATime() {
    assertEquals(OptionalLong.of(5), Budget.ofSchedules(5).schedules());
    assertEquals(Optional.empty(), Budget.ofSchedules(5).time());
    assertEquals(
        new Budget(OptionalLong.empty(), Optional.of(Duration.ofSeconds(2))),
        Budget.ofTime(Duration.ofSeconds(2)));
  }

  private static Shop workers(int count) {
    ShopDraft draft = new ShopDraft();
    Collections.nCopies(count, Calendar.always(10)).forEach(draft::worker);
    return draft.shop();
  }
}
