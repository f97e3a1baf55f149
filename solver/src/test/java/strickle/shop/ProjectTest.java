package strickle.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Projects: links between activities, several units of several resources. */
class ProjectTest {

  // PSPLIB j30, parameter 1, instance 1: R. Kolisch, A. Sprecher, PSPLIB - a project scheduling
  // problem library, European Journal of Operational Research 96 (1996) 205-216. Proved best 43.
  @Test
  void thePublishedProjectOfThirtyActivitiesTakes43() {
    int[] minutes = {
      8, 4, 6, 3, 8, 5, 9, 2, 7, 9, 2, 6, 3, 9, 10, 6, 5, 3, 7, 2, 7, 2, 3, 3, 7, 8, 3, 7, 2, 2
    };
    int[][] uses = {
      {4, 0, 0, 0}, {10, 0, 0, 0}, {0, 0, 0, 3}, {3, 0, 0, 0}, {0, 0, 0, 8}, {4, 0, 0, 0},
      {0, 1, 0, 0}, {6, 0, 0, 0}, {0, 0, 0, 1}, {0, 5, 0, 0}, {0, 7, 0, 0}, {4, 0, 0, 0},
      {0, 8, 0, 0}, {3, 0, 0, 0}, {0, 0, 0, 5}, {0, 0, 0, 8}, {0, 0, 0, 7}, {0, 1, 0, 0},
      {0, 10, 0, 0}, {0, 0, 0, 6}, {2, 0, 0, 0}, {3, 0, 0, 0}, {0, 9, 0, 0}, {4, 0, 0, 0},
      {0, 0, 4, 0}, {0, 0, 0, 7}, {0, 8, 0, 0}, {0, 7, 0, 0}, {0, 7, 0, 0}, {0, 0, 2, 0}
    };
    int[][] links = {
      {0, 4}, {0, 9}, {0, 13}, {1, 5}, {1, 6}, {1, 11}, {2, 3}, {2, 7}, {2, 8}, {3, 18}, {4, 28},
      {5, 25}, {6, 10}, {6, 17}, {6, 25}, {7, 12}, {8, 14}, {8, 23}, {9, 18}, {9, 24}, {10, 12},
      {11, 15}, {11, 16}, {12, 15}, {13, 23}, {14, 19}, {14, 20}, {15, 20}, {16, 18}, {16, 20},
      {17, 22}, {17, 27}, {18, 21}, {18, 23}, {19, 26}, {20, 21}, {21, 22}, {22, 28}, {23, 28},
      {24, 29}, {25, 26}, {26, 29}
    };
    Shop shop = Published.project(minutes, uses, links, new int[] {12, 13, 4, 12});
    assertEquals(43, best(shop, 10_000).value().late());
  }

  // DERIVED by hand: 2 and 3 need all three units together and have to wait for 0 and 1 in turn.
  @Test
  void activitiesWaitForTheirLinksAndTheirResources() {
    Shop shop =
        Published.project(
            new int[] {4, 3, 2, 5},
            new int[][] {{2}, {2}, {3}, {1}},
            new int[][] {{0, 2}, {1, 3}},
            new int[] {3});
    // Of 0 and 1 only one at a time; 3 goes beside 0 when 1 goes first, and 2 comes last.
    assertEquals(10, best(shop, 200).value().late());
    int[] least = {Integer.MAX_VALUE};
    Decodes decodes = Decodes.of(shop);
    Permutations.forEach(
        4, order -> least[0] = Math.min(least[0], (int) decodes.valueOf(order).late()));
    assertEquals(10, least[0]);
  }

  @Test
  void aLinkMayKeepTwoActivitiesApart() {
    ShopDraft draft = new ShopDraft().kind(1, ActivityDraft.of(5)).kind(1, ActivityDraft.of(5));
    Decodes decodes = Decodes.of(draft.link(1, 0, 30).shop());
    // Whether or not the list asks for the one that waits before the other.
    for (int[] order : List.of(new int[] {0, 1}, new int[] {1, 0})) {
      Schedule schedule = decodes.decode(order).orElseThrow();
      assertEquals(
          List.of(0, 35), schedule.lots().stream().map(lot -> lot.first().start()).toList());
    }
  }

  private static Schedule best(Shop shop, int schedules) {
    Budget budget = Budget.ofSchedules(schedules);
    Schedule best = new Scheduler(shop, budget, 0, report -> {}).run();
    assertEquals(List.of(), Rules.broken(shop, List.of(Pace.WALL), best));
    return best;
  }
}
