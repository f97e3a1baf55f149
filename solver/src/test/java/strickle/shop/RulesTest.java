package strickle.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The second reading of the rules finds what is broken: a schedule of one shop is read against
 * another that asks for a little more in one respect.
 */
class RulesTest {

  /** What a shop asks for; the schedule is that of the first of all these. */
  record Asked(int capacity, double hours, int atMost, int closes, int count, int fixedStart) {

    private static final Asked FIRST = new Asked(2, 1, 60, 1000, 3, 0);

    /** Two jobs settled in a lot and one for itself: poured, then taken out and laid on a rack. */
    Shop shop() {
      Family family = new Family("mix", 6, 2, List.of(2L), 100);
      Calendar open = Calendar.of(new int[] {0}, new int[] {closes});
      ActivityDraft pour = ActivityDraft.of(0).each(5).by(0).holding(0, 1, 1);
      ActivityDraft out = ActivityDraft.of(1).each(4).by(0).after(0, hours).within(atMost);
      return new ShopDraft()
          .worker(open)
          .resource(capacity)
          .family(family)
          .kind(1, count, List.of(1L), 30, pour, out)
          .due(0, 1, new Due.Need(0, 2))
          .fixed(0, fixedStart, new FixedLot.Part(0, 2))
          .shop();
    }
  }

  private static Stream<Arguments> more() {
    return Stream.of(
        Arguments.of("held of resource 0", new Asked(1, 1, 60, 1000, 3, 0)),
        Arguments.of("early", new Asked(2, 1.02, 60, 1000, 3, 0)),
        Arguments.of("late", new Asked(2, 1, 59, 1000, 3, 0)),
        Arguments.of("starts or ends while closed", new Asked(2, 1, 60, 90, 3, 0)),
        Arguments.of("3 jobs done", new Asked(2, 1, 60, 1000, 4, 0)),
        Arguments.of("at another time", new Asked(2, 1, 60, 1000, 3, 1)));
  }

  @Test
  void aScheduleOfTheShopItselfBreaksNothing() {
    assertEquals(List.of(), Rules.broken(Asked.FIRST.shop(), List.of(Pace.WALL), schedule()));
  }

  @ParameterizedTest
  @MethodSource("more")
  void aShopThatAsksForMoreFindsItBroken(String what, Asked more) {
    List<String> broken = Rules.broken(more.shop(), List.of(Pace.WALL), schedule());
    assertTrue(broken.stream().anyMatch(one -> one.contains(what)), broken.toString());
  }

  @Test
  void aValueThatIsNotTheSchedulesIsFound() {
    Schedule found = schedule();
    Value better = new Value(found.value().late() - 1, 0, 0);
    Schedule boast = new Schedule(better, found.lots(), found.met(), 1);
    assertEquals(1, Rules.broken(Asked.FIRST.shop(), List.of(Pace.WALL), boast).size());
  }

  private static Schedule schedule() {
    return Scheduler.first(Asked.FIRST.shop()).orElseThrow();
  }
}
