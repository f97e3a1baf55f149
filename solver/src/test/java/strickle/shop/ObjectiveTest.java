package strickle.shop;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lateness in started units, due dates met by count, flow by job. */
class ObjectiveTest {

  /** Two jobs done at 100 in one run, one at 70, one at 250. */
  private static final List<int[][]> DONE =
      Collections.singletonList(new int[][] {{100, 2}, {70, 1}, {250, 1}});

  @ParameterizedTest
  @CsvSource({"1,70", "2,100", "3,100", "4,250"})
  void aDueDateIsMetByTheFirstJobsToBeDone(int count, int met) {
    Shop shop = oneKind().due(0, 1, new Due.Need(0, count)).shop();
    assertArrayEquals(new int[] {met}, objective(shop).met(timetable(shop, DONE)));
  }

  @ParameterizedTest
  @CsvSource({"100,0", "101,0", "99,5", "41,5", "40,5", "39,10", "0,10", "-20,10", "-21,15"})
  void everyStartedUnitLateCounts(int due, long late) {
    Shop shop = oneKind().lateUnit(60).due(due, 5, new Due.Need(0, 3)).shop();
    assertEquals(late, objective(shop).late(timetable(shop, DONE)));
  }

  @Test
  void aDueDateWithoutNeedsIsMetFromTheStart() {
    Shop shop = oneKind().due(10, 1000).due(-5, 2).shop();
    Objective objective = objective(shop);
    Timetable timetable = timetable(shop, DONE);
    assertArrayEquals(new int[] {0, 0}, objective.met(timetable));
    assertEquals(10, objective.late(timetable));
  }

  @Test
  void flowCountsEveryJobOfARun() {
    Shop shop = oneKind().shop();
    assertEquals(2 * 100 + 70 + 250, objective(shop).flow(timetable(shop, DONE)));
  }

  @Test
  void latenessIsWhatCountingJobByJobGives() {
    for (long seed = 0; seed < 300; seed++) {
      Random random = new Random(seed);
      ShopDraft draft = new ShopDraft().lateUnit(1 + random.nextInt(90));
      List<int[][]> done = new ArrayList<>();
      for (int kind = 0; kind < 3; kind++) {
        int[][] runs = new int[1 + random.nextInt(4)][];
        int jobs = 0;
        for (int run = 0; run < runs.length; run++) {
          runs[run] = new int[] {random.nextInt(1000), 1 + random.nextInt(3)};
          jobs += runs[run][1];
        }
        done.add(runs);
        draft.kind(jobs, ActivityDraft.of(1));
      }
      for (int due = random.nextInt(5); due > 0; due--) {
        draft.due(random.nextInt(1000), random.nextInt(4), needs(draft, random));
      }
      Shop shop = draft.shop();
      assertEquals(late(shop, done), objective(shop).late(timetable(shop, done)), "seed " + seed);
    }
  }

  private static Due.Need[] needs(ShopDraft draft, Random random) {
    List<Due.Need> needs = new ArrayList<>();
    for (int kind = 0; kind < draft.kinds(); kind++) {
      if (random.nextBoolean()) {
        needs.add(new Due.Need(kind, 1 + random.nextInt(draft.kind(kind).jobs())));
      }
    }
    return needs.toArray(Due.Need[]::new);
  }

  private static long late(Shop shop, List<int[][]> done) {
    long late = 0;
    for (Due due : shop.dues()) {
      int met = 0;
      for (Due.Need need : due.needs()) {
        List<Integer> jobs = new ArrayList<>();
        for (int[] run : done.get(need.kind())) {
          for (int job = 0; job < run[1]; job++) {
            jobs.add(run[0]);
          }
        }
        jobs.sort(null);
        met = Math.max(met, jobs.get(need.count() - 1));
      }
      for (int over = met - due.at(); over > 0; over -= shop.lateUnitMinutes()) {
        late += due.weight();
      }
    }
    return late;
  }

  private static ShopDraft oneKind() {
    return new ShopDraft().kind(4, ActivityDraft.of(1));
  }

  private static Objective objective(Shop shop) {
    return new Objective(new Tables(shop));
  }

  /** A timetable with a run for each pair of a time done and a number of jobs. */
  private static Timetable timetable(Shop shop, List<int[][]> done) {
    Timetable timetable = new Timetable(new Tables(shop));
    timetable.clear();
    for (int kind = 0; kind < done.size(); kind++) {
      for (int[] one : done.get(kind)) {
        int run = timetable.openRun(kind);
        timetable.runJobs[run] = one[1];
        timetable.done(run, one[0]);
      }
    }
    return timetable;
  }
}
