package strickle.api;

import java.time.Duration;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.eclipse.jetty.io.Connection;

/**
 * The places there are for connections. Who takes a place and asks for nothing, or a byte at a
 * time, must not keep others out: when all places are taken, or all that one network may have,
 * whoever has waited longest without a whole request leaves for the next. Who is being answered
 * stays, streams of events too; only when all are, a network with few places gets one of that with
 * the most.
 */
final class Places {

  /** How many there are. */
  static final int MOST = 200;

  /** Of them from one network, where others may ask; a browser takes six, streams included. */
  static final int MOST_OF_ONE = 50;

  private static final Duration FIRST_HEAD = Duration.ofSeconds(5);
  private static final Duration NEXT_HEAD = Listening.USUAL_PATIENCE;

  private final int mostOfOne;
  private final Map<Connection, Guest> guests = new HashMap<>();

  /**
   * Nobody yet.
   *
   * @param mostOfOne how many of them one network may have
   */
  Places(int mostOfOne) {
    this.mostOfOne = mostOfOne;
  }

  /**
   * Takes one in.
   *
   * @return who is to leave for it; itself when all others are being answered, and no network has
   *     more of the places than would be fair
   */
  synchronized Optional<Connection> enter(Connection connection, String network, long now) {
    Guest newest = new Guest(connection, network, now);
    Optional<Guest> leaving = leaving(newest);
    guests.put(connection, newest);
    leaving.map(Guest::connection).ifPresent(guests::remove);
    return leaving.map(Guest::connection);
  }

  private Optional<Guest> leaving(Guest newest) {
    List<Guest> all = List.copyOf(guests.values());
    List<Guest> own = all.stream().filter(one -> one.network().equals(newest.network())).toList();
    if (own.size() >= mostOfOne) {
      return Optional.of(longestWaiting(own).orElse(newest));
    }
    if (all.size() >= MOST) {
      return Optional.of(longestWaiting(all).orElseGet(() -> answered(all, own.size(), newest)));
    }
    return Optional.empty();
  }

  // Who never reads its answers, from a few networks at once, must not keep out all others.
  private static Guest answered(List<Guest> all, int own, Guest newest) {
    Map<String, Long> places =
        all.stream().collect(Collectors.groupingBy(Guest::network, Collectors.counting()));
    long most = Collections.max(places.values());
    return all.stream()
        .filter(one -> most > own + 1 && places.get(one.network()) == most)
        .min(Comparator.comparingLong(Guest::since))
        .orElse(newest);
  }

  private static Optional<Guest> longestWaiting(List<Guest> from) {
    return from.stream().filter(Guest::waits).min(Comparator.comparingLong(Guest::since));
  }

  /** One has gone. */
  synchronized void leave(Connection connection) {
    guests.remove(connection);
  }

  /**
   * The head of a request is here.
   *
   * @return the number of the request on its connection
   */
  synchronized long begin(Connection connection, long now) {
    return guest(connection).map(guest -> guest.begin(now)).orElse(0L);
  }

  /** All of a request is here. */
  synchronized void whole(Connection connection, long number) {
    guest(connection).ifPresent(guest -> guest.whole(number));
  }

  /** A request has been answered. */
  synchronized void end(Connection connection, long number, long now) {
    guest(connection).ifPresent(guest -> guest.end(number, now));
  }

  /** Those that have sent no head of a request for too long, whatever they have sent. */
  synchronized List<Connection> overdue(long now) {
    return guests.values().stream()
        .filter(guest -> guest.isOverdue(now, FIRST_HEAD.toNanos(), NEXT_HEAD.toNanos()))
        .map(Guest::connection)
        .toList();
  }

  private Optional<Guest> guest(Connection connection) {
    return Optional.ofNullable(guests.get(connection));
  }
}
