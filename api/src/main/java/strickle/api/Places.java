package strickle.api;

import java.time.Duration;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.jetty.io.Connection;

/**
 * The places there are for connections. Who takes a place and asks for nothing, or a byte at a
 * time, must not keep others out: when all places are taken, or all that one network may have,
 * whoever has waited longest without a whole request leaves for the next. Who is being answered
 * stays, streams of events too.
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
   * @return who is to leave for it; itself when all others are being answered
   */
  synchronized Optional<Connection> enter(Connection connection, String network, long now) {
    Guest newest = new Guest(connection, network, now);
    List<Guest> own =
        guests.values().stream().filter(one -> one.network().equals(network)).toList();
    Optional<Guest> leaving = Optional.empty();
    if (own.size() >= mostOfOne) {
      leaving = Optional.of(longestWaiting(own).orElse(newest));
    } else if (guests.size() >= MOST) {
      leaving = Optional.of(longestWaiting(List.copyOf(guests.values())).orElse(newest));
    }
    guests.put(connection, newest);
    leaving.map(Guest::connection).ifPresent(guests::remove);
    return leaving.map(Guest::connection);
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
