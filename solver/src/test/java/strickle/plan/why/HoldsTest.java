package strickle.plan.why;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import strickle.book.Book;
import strickle.plan.Plan;
import strickle.plan.audit.Audit;
import strickle.plan.audit.Finding;

/**
 * Why not earlier? A hold is true when the audit finds fault with a plan in which the task starts
 * at a minute of it, all else left where it is.
 */
class HoldsTest {

  private static final int BOOKS = 16;

  /** Pour, hours, forms and stations: the rules a task can break by itself. */
  private static final Set<Integer> RULES = Set.of(1, 4, 5, 6);

  private int tried;

  @Test
  void noTaskCouldHaveStartedWhileItWasHeld() {
    for (int number = 0; number < BOOKS; number++) {
      Book book = AlteredStudios.book(number);
      Floors.plan(book).ifPresent(plan -> everyHoldIsTrue(book, plan));
    }
    assertTrue(tried > 300, () -> "too few minutes tried: " + tried);
  }

  private void everyHoldIsTrue(Book book, Plan plan) {
    Floor floor = Floors.of(book, plan);
    for (Course course : floor.courses()) {
      Holds holds = Holds.of(floor, course);
      for (int stage = 0; stage <= course.chain().last(); stage++) {
        List<Hold> found = holds.at(stage);
        assertTheyFollowOneAnother(found, holds.allowed(stage), course.task(stage));
        found.stream()
            .filter(HoldsTest::isOfItsOwn)
            .forEach(hold -> isTrue(book, plan, floor, course, hold));
      }
    }
  }

  /** From the minute it was allowed to its start, without a gap; then its breaks. */
  private static void assertTheyFollowOneAnother(List<Hold> found, int allowed, Placed task) {
    int at = allowed;
    for (Hold hold : found) {
      if (!(hold instanceof Hold.BrokenOff)) {
        assertEquals(at, hold.from());
        assertTrue(hold.until() > hold.from());
        at = hold.until();
      }
    }
    assertEquals(task.start(), Math.max(at, allowed));
  }

  private static boolean isOfItsOwn(Hold hold) {
    return hold instanceof Hold.Busy
        || hold instanceof Hold.Closed
        || hold instanceof Hold.TooShort
        || hold instanceof Hold.Taken;
  }

  private void isTrue(Book book, Plan plan, Floor floor, Course course, Hold hold) {
    int middle = hold.from() + hold.minutes() / 2;
    for (int minute : new int[] {hold.from(), middle, hold.until() - 1}) {
      for (Hands hands : floor.whoMay(course.chain().stages().get(hold.stage()))) {
        begun(hands, course.task(hold.stage()), minute)
            .filter(task -> hold.stage() > Chain.POUR || task.broken() == 0)
            .ifPresent(task -> isRefused(book, plan, moved(floor, course, hold.stage(), task)));
      }
    }
  }

  /** The task begun by somebody at a minute; nothing when closed, or when it would end later. */
  private static Optional<Placed> begun(Hands hands, Placed task, int minute) {
    if (hands.opens(minute) != minute) {
      return Optional.empty();
    }
    Placed whole = new Placed(hands.person(), minute, minute, task.minutes());
    int end = hands.spells(whole).get(hands.spells(whole).size() - 1).end();
    return end > task.end()
        ? Optional.empty()
        : Optional.of(new Placed(hands.person(), minute, end, task.minutes()));
  }

  private void isRefused(Book book, Plan plan, Floor moved) {
    tried++;
    List<Finding> findings = Audit.of(book, Promised.plan(book, plan, moved));
    boolean refused = findings.stream().anyMatch(finding -> RULES.contains(finding.rule()));
    assertTrue(refused, () -> "could have been begun: " + findings);
  }

  /** The floor with one task elsewhere; a pour takes its whole lot along. */
  private static Floor moved(Floor floor, Course course, int stage, Placed task) {
    List<Course> courses = new ArrayList<>();
    for (Course one : floor.courses()) {
      boolean along = stage == Chain.POUR ? one.lot().equals(course.lot()) : one.is(course);
      List<Placed> tasks = new ArrayList<>(one.tasks());
      if (along) {
        tasks.set(stage, task);
      }
      courses.add(new Course(one.lot(), one.run(), one.chain(), one.settled(), tasks, one.ready()));
    }
    return floor.with(courses);
  }

  @Test
  void aTaskThatStartsAsSoonAsItIsAllowedHasNoHold() {
    int prompt = 0;
    for (int number = 0; number < BOOKS; number++) {
      Book book = AlteredStudios.book(number);
      Optional<Floor> floor = Floors.plan(book).map(plan -> Floors.of(book, plan));
      for (Course course : floor.map(Floor::courses).orElse(List.of())) {
        Holds holds = Holds.of(floor.get(), course);
        Placed demould = course.task(Chain.DEMOULD);
        if (holds.allowed(Chain.DEMOULD) == demould.start() && demould.broken() == 0) {
          assertEquals(List.of(), holds.at(Chain.DEMOULD));
          prompt++;
        }
      }
    }
    assertTrue(prompt > 5, "too few such tasks: " + prompt);
  }
}
