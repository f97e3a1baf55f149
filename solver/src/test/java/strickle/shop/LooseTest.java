package strickle.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Second activities that are let go again, so that others may go before them. */
class LooseTest {

  private static final int FORM = 0;
  private static final int STUDIOS = 100;
  private static final int ORDERS = 10;

  /** One worker; a pour that holds a form until the demould ends, 60 minutes after the pour. */
  private static ShopDraft studio(int forms) {
    return new ShopDraft().worker().resource(forms);
  }

  private static ActivityDraft pour() {
    return ActivityDraft.of(10).by(0).holding(FORM, 1, 1);
  }

  private static ActivityDraft demould() {
    return ActivityDraft.of(5).by(0).after(0, 1);
  }

  private static Schedule.Run run(Schedule schedule, int lot) {
    return schedule.lots().get(lot).runs().get(0);
  }

  private static int demouldOf(Schedule schedule, int lot) {
    return run(schedule, lot).rest().get(0).start();
  }

  @Test
  void whatTheListAsksForBeforeTheDemouldMayTakeItsTime() {
    ShopDraft draft = studio(2).kind(1, pour(), demould());
    draft.kind(1, ActivityDraft.of(66).by(0));
    Decodes decodes = Decodes.of(draft.shop());
    Schedule demouldFirst = decodes.decode(0, 1, 2).orElseThrow();
    assertEquals(70, demouldOf(demouldFirst, 0));
    assertEquals(75, demouldFirst.lots().get(1).first().start());
    Schedule demouldLast = decodes.decode(0, 2, 1).orElseThrow();
    assertEquals(10, demouldLast.lots().get(1).first().start());
    assertEquals(76, demouldOf(demouldLast, 0));
  }

  @Test
  void whoNeedsTheFormHasItDemouldedFirst() {
    ShopDraft draft = studio(1).kind(2, pour(), demould());
    Schedule schedule = Decodes.of(draft.shop()).decode(0, 2, 1, 3).orElseThrow();
    assertEquals(70, demouldOf(schedule, 0));
    assertEquals(75, schedule.lots().get(1).first().start());
  }

  @Test
  void whileAFormIsLeftNobodyIsDemouldedForIt() {
    ShopDraft draft = studio(2).kind(2, pour(), demould().within(500));
    draft.kind(1, ActivityDraft.of(66).by(0));
    Schedule schedule = Decodes.of(draft.shop()).decode(0, 2, 4, 1, 3).orElseThrow();
    assertEquals(20, schedule.lots().get(2).first().start());
    assertEquals(86, demouldOf(schedule, 0));
    assertEquals(91, demouldOf(schedule, 1));
  }

  @Test
  void whatWouldComeTooLateIsNotLetGo() {
    ShopDraft draft = studio(2).kind(1, pour(), demould().within(65));
    draft.kind(1, ActivityDraft.of(66).by(0));
    Decodes decodes = Decodes.of(draft.shop());
    Schedule schedule = decodes.decode(0, 2, 1).orElseThrow();
    assertEquals(70, demouldOf(schedule, 0));
    assertEquals(75, schedule.lots().get(1).first().start());
    assertEquals(2, decodes.decoder().decoded());
  }

  @Test
  void whoFitsBetweenTwoThatHoldTheFormIsDemouldedBeforeTheSecond() {
    ShopDraft draft = studio(1).kind(2, pour(), demould());
    draft.worker(Calendar.of(new int[] {300}, new int[] {1000}));
    draft.kind(1, ActivityDraft.of(10).by(1).holding(FORM, 1, 1), ActivityDraft.of(5).by(1));
    Schedule schedule = Decodes.of(draft.shop()).decode(4, 5, 0, 2, 1, 3).orElseThrow();
    assertEquals(
        List.of(300, 0, 75), schedule.lots().stream().map(l -> l.first().start()).toList());
    assertEquals(70, demouldOf(schedule, 1));
    assertEquals(145, demouldOf(schedule, 2));
  }

  @Test
  void everyOrderOfEveryStudioIsAScheduleThatKeepsAllRules() {
    long again = 0;
    for (long seed = 0; seed < STUDIOS; seed++) {
      Random random = new Random(seed);
      Shop shop = anyStudio(random);
      Decodes decodes = Decodes.of(shop);
      for (int i = 0; i < ORDERS; i++) {
        Schedule schedule = decodes.decode(decodes.shuffled(random)).orElseThrow();
        assertEquals(List.of(), Rules.broken(shop, List.of(Pace.WALL), schedule), "shop " + seed);
      }
      again += decodes.decoder().decoded() - ORDERS;
    }
    assertTrue(again > ORDERS, again + " times something let go came too late");
  }

  /** Up to 16 castings in lots, most of them tight in their forms and in the time to demould. */
  private static Shop anyStudio(Random random) {
    ShopDraft draft = new ShopDraft().worker(days(random)).worker(days(random));
    draft.resource(2 + random.nextInt(2)).resource(2).resource(3);
    draft.family(new Family("mix", 6, 3, List.of(3L), 60));
    for (int kind = 0; kind < 4; kind++) {
      ActivityDraft pour = ActivityDraft.of(0).each(5).by(0, 1).holding(0, 1, 1);
      if (random.nextBoolean()) {
        pour.holding(1, 1, 1);
      }
      ActivityDraft demould = ActivityDraft.of(1).each(9).by(random.nextInt(2)).after(0, 2);
      ActivityDraft step = ActivityDraft.of(9).each(4).by(0, 1).pausing().after(0, 1);
      step.holding(new Hold(2, 1, 2, Hold.Until.DONE));
      if (random.nextBoolean()) {
        demould.within(200 + random.nextInt(200));
      }
      if (random.nextBoolean()) {
        step.within(260);
      }
      draft.kind(1, 1 + random.nextInt(4), List.of(1L), 30, pour, demould, step);
    }
    return draft.shop();
  }

  /** One window of 60 to 100 minutes in every 200. */
  private static Calendar days(Random random) {
    int[] opens = new int[500];
    int[] closes = new int[opens.length];
    for (int day = 0; day < opens.length; day++) {
      opens[day] = 200 * day + random.nextInt(100);
      closes[day] = opens[day] + 60 + random.nextInt(40);
    }
    return Calendar.of(opens, closes);
  }
}
