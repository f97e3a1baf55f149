package strickle.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the list that is searched is made of. */
class ClaimsTest {

  @Test
  void everyJobHasAClaimForEachPartOfItsChain() {
    Shop shop =
        new ShopDraft()
            .kind(2, ActivityDraft.of(1), ActivityDraft.of(1))
            .kind(1, ActivityDraft.of(1), ActivityDraft.of(1).within(5), ActivityDraft.of(1))
            .shop();
    assertEquals(
        List.of("0.0", "0.1", "1.0", "1.1", "2.0", "2.1"), named(Decodes.of(shop).decoder()));
  }

  @Test
  void aSettledFirstPartHasNoClaim() {
    Shop shop =
        new ShopDraft()
            .worker()
            .kind(2, ActivityDraft.of(1).by(0), ActivityDraft.of(1))
            .fixed(0, 0, new FixedLot.Part(0, 1))
            .shop();
    assertEquals(List.of("0.1", "1.0", "1.1"), named(Decodes.of(shop).decoder()));
  }

  @Test
  void breaksComeLastAndOnlyWhereJobsCouldShare() {
    Family roomy = new Family("", 0, 0, List.of(2L), Integer.MAX_VALUE);
    Family tight = new Family("", 0, 0, List.of(1L), Integer.MAX_VALUE);
    ShopDraft sharing = new ShopDraft().family(roomy).kind(1, 4, List.of(1L), 0, minute());
    assertEquals(
        List.of("0.0", "1.0", "2.0", "3.0", "break", "break"),
        named(Decodes.of(sharing.shop()).decoder()));
    ShopDraft never = new ShopDraft().family(tight).kind(1, 4, List.of(1L), 0, minute());
    assertEquals(List.of("0.0", "1.0", "2.0", "3.0"), named(Decodes.of(never.shop()).decoder()));
    ShopDraft single = new ShopDraft().family(roomy).kind(1, 1, List.of(1L), 0, minute());
    assertEquals(List.of("0.0"), named(Decodes.of(single.shop()).decoder()));
  }

  @Test
  void everyPartOfEveryJobThatIsNotSettledIsClaimedOnce() {
    for (long seed = 0; seed < 200; seed++) {
      Shop shop = RandomShop.of(seed).shop();
      List<String> expected = new ArrayList<>();
      int[] settled = new int[shop.kinds().size()];
      shop.fixed().forEach(lot -> lot.parts().forEach(part -> settled[part.kind()] += part.jobs()));
      Tables tables = new Tables(shop);
      for (int job = 0; job < tables.jobs; job++) {
        int kind = tables.jobKind[job];
        int first = job - tables.jobFirst[kind] < settled[kind] ? 1 : 0;
        for (int part = first; part < tables.segments[kind]; part++) {
          expected.add(job + "." + part);
        }
      }
      List<String> named = named(Decodes.of(shop).decoder());
      named.removeIf("break"::equals);
      assertEquals(expected, named, "shop " + seed);
    }
  }

  private static List<String> named(Decoder decoder) {
    Claims claims = decoder.claims();
    List<String> named = new ArrayList<>();
    for (int i = 0; i < claims.count(); i++) {
      boolean isBreak = claims.job[i] == Claims.BREAK;
      named.add(isBreak ? "break" : claims.job[i] + "." + claims.segment[i]);
    }
    return named;
  }

  private static ActivityDraft minute() {
    return ActivityDraft.of(1);
  }
}
