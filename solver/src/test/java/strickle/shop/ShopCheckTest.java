package strickle.shop;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Parts that do not go together are refused by name, before anything is scheduled. */
class ShopCheckTest {

  private static final Family PAIRS = new Family("pairs", 0, 0, List.of(2L), Integer.MAX_VALUE);

  private static Stream<Arguments> refused() {
    return Stream.of(
        refused("a family", shop().kind(7, 1, List.of(1L), 0, minute())),
        refused("an amount for each limit", shop().kind(0, 1, List.of(), 0, minute())),
        refused("an amount for each limit", shop().kind(0, 1, List.of(1L, 1L), 0, minute())),
        refused("no wait before the first", shop().kind(1, minute().after(0, 1))),
        refused("no wait before the first", shop().kind(1, minute().within(5))),
        refused("a clock", shop().kind(1, minute(), minute().after(1, 1))),
        refused("workers of the shop", shop().kind(1, minute().by(1))),
        refused("workers of the shop", shop().kind(1, minute().by(-1))),
        refused("a resource", shop().kind(1, minute().holding(1, 1, 0))),
        refused("closes with it or with a later", shop().kind(1, minute().holding(0, 1, 1))),
        refused(
            "closes with it or with a later", shop().kind(1, minute(), minute().holding(0, 1, 0))),
        refused(
            "closes with it or with a later",
            shop().kind(1, minute().holding(new Hold(0, 1, 0, Hold.Until.DONE)), minute())),
        refused(
            "no hold that closes with its first",
            shop().family(PAIRS).kind(1, 2, List.of(1L), 0, minute().holding(0, 1, 0))),
        refused("a minute or more of a worker", shop().kind(1, ActivityDraft.of(0).by(0))),
        refused(
            "a minute or more of a worker", shop().kind(1, minute(), ActivityDraft.of(0).by(0))));
  }

  private static Stream<Arguments> refusedTogether() {
    return Stream.of(
        refused("kinds of the shop", two().link(0, 2, 0)),
        refused("kinds of the shop", two().link(-1, 0, 0)),
        refused("one job that never shares", two().kind(2, minute()).link(0, 2, 0)),
        refused("one job that never shares", two().kind(0, minute()).link(2, 0, 0)),
        refused(
            "one job that never shares",
            two().family(PAIRS).kind(1, 1, List.of(1L), 0, minute()).link(2, 0, 0)),
        refused("round in a circle", two().link(0, 1, 0).link(1, 0, 0)),
        refused("round in a circle", two().link(1, 1, 0)),
        refused("round in a circle", circleOfThree()),
        refused("to be tethered", two().kind(1, minute(), minute()).link(0, 1, -1).link(1, 2, 0)),
        refused("to be tethered", two().kind(1, minute().by(0)).link(2, 1, -1)),
        refused(
            "to be tethered",
            two()
                .family(new Family("shared", 1, 0, List.of(0L), Integer.MAX_VALUE))
                .kind(1, 1, List.of(1L), 0, minute())
                .link(2, 0, -1)),
        refused("kinds of the shop", two().due(0, 1, new Due.Need(2, 1))),
        refused("needs of 1 to 1", two().due(0, 1, new Due.Need(0, 2))),
        refused("needs of 1 to 1", two().due(0, 1, new Due.Need(0, 0))),
        refused(
            "workers and pauses as in the lots",
            shop()
                .worker()
                .family(PAIRS)
                .kind(1, 1, List.of(1L), 0, minute().by(0))
                .kind(1, 1, List.of(1L), 0, minute().by(0, 1))),
        refused(
            "workers and pauses as in the lots",
            shop()
                .family(PAIRS)
                .kind(1, 1, List.of(1L), 0, minute().by(0).pausing())
                .kind(1, 1, List.of(1L), 0, minute().by(0))));
  }

  private static Stream<Arguments> refusedSettledLots() {
    FixedLot.Part first = new FixedLot.Part(0, 1);
    FixedLot.Part other = new FixedLot.Part(1, 1);
    return Stream.of(
        refused("a worker who may do", attended().fixed(2, 0, first)),
        refused("a worker who may do kind 0", attended().fixed(1, 0, first)),
        refused("a part or more", attended().fixed(0, 0)),
        refused("kinds", attended().fixed(0, 0, new FixedLot.Part(2, 1))),
        refused("1 job or more", attended().fixed(0, 0, new FixedLot.Part(0, 0))),
        refused("each kind once", attended().fixed(0, 0, first, first)),
        refused("kinds of one family", attended().fixed(0, 0, first, other)),
        refused("at most 2 of kind 0", attended().fixed(0, 0, new FixedLot.Part(0, 3))),
        refused(
            "at most 2 of kind 0",
            attended().fixed(0, 0, new FixedLot.Part(0, 2)).fixed(0, 9, first)),
        refused(
            "kinds that wait for no others",
            shop()
                .kind(1, minute().by(0))
                .kind(1, minute().by(0))
                .link(0, 1, 0)
                .fixed(0, 0, new FixedLot.Part(1, 1))));
  }

  @ParameterizedTest
  @MethodSource({"refused", "refusedTogether", "refusedSettledLots"})
  void whatDoesNotGoTogetherIsRefusedByName(String right, Shop shop) {
    Exception refused = assertThrows(IllegalArgumentException.class, () -> Scheduler.first(shop));
    assertTrue(refused.getMessage().contains(right), refused.getMessage());
  }

  @Test
  void linksThatMeetAgainAreNoCircle() {
    ShopDraft diamond = two().kind(1, minute()).kind(1, minute());
    diamond.link(3, 1, 0).link(3, 2, 0).link(1, 0, 0).link(2, 0, 0).link(3, 0, 0);
    assertDoesNotThrow(() -> Scheduler.first(diamond.shop()));
  }

  @Test
  void linksMayGoRoundInACircleWhenOneGoesBack() {
    Shop circle = circleOfThree().link(3, 0, -1).shop();
    assertDoesNotThrow(() -> Scheduler.first(circle));
  }

  @Test
  void everythingThatGoesTogetherPasses() {
    for (long seed = 0; seed < 300; seed++) {
      Shop shop = RandomShop.of(seed).shop();
      assertDoesNotThrow(() -> ShopCheck.check(shop));
    }
  }

  private static Arguments refused(String right, ShopDraft draft) {
    return Arguments.of(right, draft.shop());
  }

  private static ShopDraft shop() {
    return new ShopDraft().worker().resource(1);
  }

  private static ShopDraft two() {
    return shop().kind(1, minute()).kind(1, minute());
  }

  private static ShopDraft circleOfThree() {
    return two()
        .kind(1, minute())
        .kind(1, minute())
        .link(0, 1, 0)
        .link(1, 2, 0)
        .link(2, 3, 0)
        .link(3, 1, 0);
  }

  /** Worker 0 may do kind 0, worker 1 kind 1. */
  private static ShopDraft attended() {
    return shop()
        .worker()
        .family(PAIRS)
        .kind(1, 2, List.of(1L), 0, minute().by(0))
        .kind(1, minute().by(1));
  }

  private static ActivityDraft minute() {
    return ActivityDraft.of(1);
  }
}
