package strickle.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.plan.Effort;
import strickle.plan.Plan;
import strickle.plan.PlanRequest;
import strickle.plan.Planning;
import strickle.plan.Replanning;
import strickle.plan.Task;
import strickle.plan.audit.Audit;
import strickle.plan.replan.Happening;
import strickle.plan.replan.HappeningKind;
import strickle.plan.replan.ReplanRequest;
import strickle.plan.replan.Replanned;

/** What is about to begin in plans of generated books, when things have gone otherwise. */
class FrozenReplansTest {

  private static final Effort EFFORT = Effort.ofSchedules(100);

  private static Plan plan(Book book, OffsetDateTime from) {
    PlanRequest request = new PlanRequest(from, Effort.ofSchedules(150), 0);
    return Planning.of(book, request, progress -> {}).run();
  }

  /** Lays out anew, told of what can have happened. */
  private static Optional<Replanned> replanned(
      Book book, Plan plan, OffsetDateTime now, OffsetDateTime until, List<Happening> happened) {
    List<Happening> left = new ArrayList<>(happened);
    while (true) {
      try {
        ReplanRequest request = new ReplanRequest(now, until, left, EFFORT, 0);
        return Optional.of(Replanning.of(book, plan, request).run());
      } catch (Faulty refused) {
        if (!forget(refused, left)) {
          return Optional.empty();
        }
      }
    }
  }

  private static boolean forget(Faulty refused, List<Happening> happened) {
    TreeSet<Integer> places = new TreeSet<>();
    for (Fault fault : refused.faults()) {
      if (fault.path().startsWith("$.happened[")) {
        places.add(Integer.valueOf(fault.path().replaceAll("^[^\\[]*\\[([0-9]+)\\].*$", "$1")));
      }
    }
    places.descendingSet().forEach(place -> happened.remove(place.intValue()));
    return !places.isEmpty();
  }

  @Test
  void nothingIsLaterThanIfNothingWereFrozenAndWhatIsDoneStays() {
    int compared = 0;
    Set<HappeningKind> kinds = new TreeSet<>();
    for (int i = 0; i < 20; i++) {
      Book book = Generator.book(12 + 28 * i / 19, 9100 + i);
      Random random = new Random(i);
      Plan plan = plan(book, Generator.start(book));
      OffsetDateTime now = Afternoon.moment(plan, plan.from(), random);
      List<Happening> happened = Afternoon.of(book, plan, now, 70, random);
      Optional<Replanned> held = replanned(book, plan, now, now.plusHours(24), happened);
      Optional<Replanned> free = replanned(book, plan, now, now, happened);
      if (held.isPresent()) {
        compared++;
        happened.forEach(one -> kinds.add(one.kind()));
        assertNotLater(book, held.get().plan(), free.orElseThrow().plan());
        assertHistoryStays(book, held.get().plan(), now);
      }
    }
    assertTrue(compared >= 18, compared + " compared");
    assertEquals(Set.of(HappeningKind.values()), kinds);
  }

  private static void assertNotLater(Book book, Plan held, Plan free) {
    assertEquals(List.of(), Audit.of(book, held));
    assertEquals(List.of(), Audit.of(book, free));
    boolean alike = exceeded(held) == exceeded(free);
    boolean later =
        held.totals().weightedLateHours().compareTo(free.totals().weightedLateHours()) > 0;
    assertTrue(exceeded(held) <= exceeded(free) && !(alike && later), held.book());
  }

  private static long exceeded(Plan plan) {
    return plan.history().orElseThrow().exceeded().stream().mapToLong(one -> one.minutes()).sum();
  }

  /** A day later nothing of what was done then is otherwise, or later than it was. */
  private static void assertHistoryStays(Book book, Plan plan, OffsetDateTime now) {
    OffsetDateTime later = now.plusHours(24);
    Optional<Replanned> next = replanned(book, plan, later, later.plusHours(24), List.of());
    List<Task> done = plan.tasks().stream().filter(Task::done).toList();
    next.ifPresent(one -> assertTrue(one.plan().tasks().containsAll(done), plan.book()));
  }
}
