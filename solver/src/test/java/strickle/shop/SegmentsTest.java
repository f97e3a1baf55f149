package strickle.shop;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Where a job may be cut so that others go first. */
class SegmentsTest {

  @Test
  void activitiesWithNothingBetweenThemHaveClaimsOfTheirOwn() {
    assertArrayEquals(new int[] {0, 1, 2}, of(minute(), minute().after(0, 5), minute()));
  }

  @Test
  void aMostWaitTiesAnActivityToTheOneBefore() {
    assertArrayEquals(new int[] {0, 0, 1}, of(minute(), minute().within(60), minute()));
  }

  @Test
  void aHoldTiesAllItGoesAcross() {
    assertArrayEquals(
        new int[] {0, 1, 1, 1, 2},
        of(minute(), minute().holding(0, 1, 3), minute(), minute(), minute()));
  }

  @Test
  void aHoldForAnActivityAloneTiesNothing() {
    assertArrayEquals(new int[] {0, 1}, of(minute().holding(0, 1, 0), minute().holding(0, 1, 1)));
  }

  @Test
  void aHoldUntilTheNextStartsTiesItToTheNext() {
    ActivityDraft first = minute().holding(new Hold(0, 1, 1, Hold.Until.START));
    assertArrayEquals(new int[] {0, 0, 1}, of(first, minute(), minute()));
  }

  @Test
  void eachKindIsCutForItself() {
    Shop shop =
        new ShopDraft()
            .resource(1)
            .kind(1, minute(), minute())
            .kind(1, minute().holding(0, 1, 1), minute())
            .shop();
    assertArrayEquals(new int[] {0, 1, 0, 0}, Segments.of(shop));
  }

  @Test
  void whatOnlyFirstActivitiesHoldUntilTheSecondTiesLoosely() {
    ShopDraft draft = new ShopDraft().worker().resource(1);
    draft.kind(16, minute().by(0).holding(0, 1, 1), minute().by(0).within(90), minute().within(9));
    assertArrayEquals(new int[] {0, 1, 1}, Segments.of(draft.shop()));
    assertArrayEquals(new int[] {0, 0, 0}, Segments.ties(draft.shop()));
  }

  @Test
  void theTieIsNotLooseWhereAnotherActivityAsksForTheSame() {
    ShopDraft draft = new ShopDraft().worker().resource(1);
    draft.kind(1, minute().by(0).holding(0, 1, 1), minute().by(0), minute().holding(0, 1, 2));
    assertArrayEquals(new int[] {0, 0, 1}, Segments.of(draft.shop()));
  }

  @Test
  void theTieIsNotLooseWhenMoreIsTied() {
    ShopDraft draft = new ShopDraft().worker().resource(1).resource(1);
    draft.kind(1, minute().holding(0, 1, 1).holding(1, 1, 2), minute(), minute());
    assertArrayEquals(new int[] {0, 0, 0}, Segments.of(draft.shop()));
  }

  @Test
  void noTieIsLooseAmongManyJobsOrSettledOnesOrMachinesOnly() {
    ActivityDraft[] chain = {minute().by(0).holding(0, 1, 1), minute()};
    ShopDraft many = new ShopDraft().worker().resource(1).kind(25, chain);
    assertArrayEquals(new int[] {0, 0}, Segments.of(many.shop()));
    ShopDraft settled = new ShopDraft().worker().resource(1).kind(2, chain);
    settled.fixed(0, 5, new FixedLot.Part(0, 1));
    assertArrayEquals(new int[] {0, 0}, Segments.of(settled.shop()));
    assertArrayEquals(new int[] {0, 0}, of(minute().holding(0, 1, 1), minute()));
  }

  @Test
  void activitiesAreTiedWhereSomethingReachesAcross() {
    for (long seed = 0; seed < 300; seed++) {
      Shop shop = RandomShop.of(seed).shop();
      List<Integer> claims = new ArrayList<>();
      shop.kinds().forEach(kind -> cut(kind, claims));
      int[] expected = claims.stream().mapToInt(Integer::intValue).toArray();
      assertArrayEquals(expected, Segments.ties(shop), "shop " + seed);
    }
  }

  @Test
  void theFirstActivityOfAClaimIsTheOneAfterThoseOfTheClaimBefore() {
    for (long seed = 0; seed < 50; seed++) {
      Tables tables = new Tables(RandomShop.of(seed).shop());
      for (int kind = 0; kind < tables.kinds; kind++) {
        for (int claim = 0; claim < tables.segments[kind]; claim++) {
          int local = tables.firstOfSegment(kind, claim);
          int before = local == 0 ? -1 : tables.segment[tables.first[kind] + local - 1];
          assertEquals(claim - 1, before);
          assertEquals(claim, tables.segment[tables.first[kind] + local]);
        }
      }
    }
  }

  /** Marks every boundary that is reached across, and counts the others. */
  private static void cut(Kind kind, List<Integer> claims) {
    boolean[] tied = new boolean[kind.chain().size()];
    for (int i = 0; i < tied.length; i++) {
      tied[i] |= kind.chain().get(i).before().atMostMinutes().isPresent();
      for (Hold hold : kind.chain().get(i).holds()) {
        for (int across = i + 1; across <= hold.last(); across++) {
          tied[across] = true;
        }
      }
    }
    int claim = 0;
    for (int i = 0; i < tied.length; i++) {
      claim += i == 0 || tied[i] ? 0 : 1;
      claims.add(claim);
    }
  }

  private static int[] of(ActivityDraft... chain) {
    return Segments.of(new ShopDraft().resource(1).kind(1, chain).shop());
  }

  private static ActivityDraft minute() {
    return ActivityDraft.of(1);
  }
}
