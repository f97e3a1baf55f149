package strickle.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.lang.reflect.Proxy;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.jetty.io.Connection;
import org.junit.jupiter.api.Test;

class PlacesTest {

  private static final long SECOND = Duration.ofSeconds(1).toNanos();

  private final Places places = new Places(3);
  private long now;
  private int connections;

  @Test
  void whoHasWaitedLongestLeavesForTheNextOfItsNetwork() {
    Connection first = entered("a");
    Connection second = entered("a");
    Connection third = entered("a");
    answering(first);
    Connection fourth = connection();
    assertSame(second, places.enter(fourth, "a", ++now).orElseThrow());
    assertEquals(Optional.empty(), places.enter(connection(), "b", ++now));
    assertSame(third, places.enter(connection(), "a", ++now).orElseThrow());
  }

  @Test
  void whereAllAreBeingAnsweredTheNextItselfMustLeave() {
    for (int i = 0; i < 3; i++) {
      answering(entered("a"));
    }
    Connection next = connection();
    assertSame(next, places.enter(next, "a", ++now).orElseThrow());
    assertEquals(Optional.empty(), places.enter(connection(), "b", ++now));
  }

  @Test
  void ofAllTogetherThereAreNoMoreThanThePlaces() {
    List<Connection> all = new ArrayList<>();
    for (int i = 0; i < Places.MOST; i++) {
      all.add(entered("network " + i));
    }
    assertSame(all.get(0), places.enter(connection(), "another", ++now).orElseThrow());
    places.leave(all.get(7));
    assertEquals(Optional.empty(), places.enter(connection(), "one more", ++now));
  }

  @Test
  void whereAllAreBeingAnsweredTheNetworkWithTheMostPlacesGivesOneToANetworkWithFew() {
    List<Connection> all = new ArrayList<>();
    for (int i = 0; i < Places.MOST; i++) {
      all.add(entered("network " + i / 3));
      answering(all.get(i));
    }
    Connection other = connection();
    assertSame(all.get(0), places.enter(other, "another", ++now).orElseThrow());
    answering(other);
    Connection third = connection();
    assertSame(third, places.enter(third, "network " + Places.MOST / 3, ++now).orElseThrow());
  }

  @Test
  void whoHasSentOnlyAPartOfItsRequestWaitsToo() {
    Connection half = entered("a");
    long number = places.begin(half, ++now);
    entered("a");
    entered("a");
    assertSame(half, places.enter(connection(), "a", ++now).orElseThrow());
    assertEquals(1, number);
  }

  @Test
  void theEndOfARequestIsNotThatOfTheNext() {
    Connection quick = entered("a");
    long first = places.begin(quick, ++now);
    long second = places.begin(quick, ++now);
    places.whole(quick, second);
    places.end(quick, first, ++now);
    assertEquals(List.of(), places.overdue(now + 1000 * SECOND));
    places.end(quick, second, now);
    assertEquals(List.of(quick), places.overdue(now + 1000 * SECOND));
  }

  @Test
  void theFirstRequestMustBeginSoonAndTheNextLater() {
    Connection silent = entered("a");
    assertEquals(List.of(), places.overdue(now + 4 * SECOND));
    assertEquals(List.of(silent), places.overdue(now + 6 * SECOND));
    long number = places.begin(silent, ++now);
    assertEquals(List.of(), places.overdue(now + 1000 * SECOND), "it is being answered");
    places.end(silent, number, ++now);
    assertEquals(List.of(), places.overdue(now + 29 * SECOND));
    assertEquals(List.of(silent), places.overdue(now + 31 * SECOND));
  }

  private Connection entered(String network) {
    Connection one = connection();
    assertEquals(Optional.empty(), places.enter(one, network, ++now));
    return one;
  }

  private void answering(Connection one) {
    places.whole(one, places.begin(one, ++now));
  }

  private Connection connection() {
    int number = ++connections;
    ClassLoader loader = Connection.class.getClassLoader();
    return (Connection)
        Proxy.newProxyInstance(
            loader,
            new Class<?>[] {Connection.class},
            (self, method, arguments) ->
                switch (method.getName()) {
                  case "hashCode" -> number;
                  case "equals" -> arguments[0].hashCode() == number;
                  default -> "a connection";
                });
  }
}
