package strickle.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.lang.reflect.Array;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import strickle.demo.Generator;

class KeptTest {

  private record First(int number) {}

  /** More than the places a table of such begins with, so that two fall into the same. */
  private static final List<Class<?>> MANY =
      List.of(
          byte[].class,
          short[].class,
          int[].class,
          long[].class,
          float[].class,
          double[].class,
          char[].class,
          boolean[].class,
          String[].class,
          Object[].class,
          Integer[].class,
          Long[].class,
          Double[].class,
          Number[].class,
          Thread[].class,
          Record[].class,
          Class[].class,
          Character[].class,
          Boolean[].class,
          StringBuilder[].class);

  private final Kept kept = new Kept(new Stand(1, ""), Entries.NONE, Generator.book(2, 1));

  private final AtomicInteger worked = new AtomicInteger();

  private First first() {
    return kept.workedOut(First.class, now -> new First(worked.incrementAndGet()));
  }

  @Test
  void whatFollowsIsWorkedOutOnce() {
    assertSame(first(), first());
    assertEquals(1, worked.get());
  }

  @Test
  void oneThingMayBeWorkedOutOfAnother() {
    assertSame(nested(0, MANY.get(0)), nested(0, MANY.get(0)));
    assertEquals(MANY.size(), worked.get());
  }

  private <T> T nested(int place, Class<T> what) {
    return kept.workedOut(
        what,
        now -> {
          if (place + 1 < MANY.size()) {
            nested(place + 1, MANY.get(place + 1));
          }
          worked.incrementAndGet();
          return what.cast(Array.newInstance(what.getComponentType(), 0));
        });
  }

  @Test
  void whatCouldNotBeWorkedOutIsTriedAgain() {
    assertThrows(
        IllegalStateException.class,
        () ->
            kept.workedOut(
                First.class,
                now -> {
                  throw new IllegalStateException("not now");
                }));
    assertEquals(new First(1), first());
  }

  @Test
  void theLastAnswersAreKnownAndOthersAreWorkedOutAgain() {
    for (int question = 0; question < 200; question++) {
      String asked = "question " + question;
      assertEquals(asked, kept.told(asked, () -> asked));
      assertEquals(asked, kept.told(asked, () -> "another answer"));
    }
    assertEquals("again", kept.told("question 0", () -> "again"));
  }
}
