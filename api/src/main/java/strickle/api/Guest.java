package strickle.api;

import org.eclipse.jetty.io.Connection;

/**
 * A connection, and what it is at: it waits for a request, for the rest of one, or for the answer.
 * For one thread at a time; {@link Places} sees to that.
 */
final class Guest {

  private final Connection connection;
  private final String network;
  private long since;
  private long turn;
  private boolean asking;
  private boolean whole;

  /**
   * A connection that has just come.
   *
   * @param network where it comes from
   * @param now by {@link System#nanoTime}
   */
  Guest(Connection connection, String network, long now) {
    this.connection = connection;
    this.network = network;
    this.since = now;
  }

  /** Which connection it is. */
  Connection connection() {
    return connection;
  }

  /** Where it comes from. */
  String network() {
    return network;
  }

  /** Since when it waits, for a request or for the rest of one, or is being answered. */
  long since() {
    return since;
  }

  /**
   * The head of a request is here.
   *
   * @return the number of the request on this connection
   */
  long begin(long now) {
    asking = true;
    whole = false;
    since = now;
    turn++;
    return turn;
  }

  /** All of a request is here. */
  void whole(long number) {
    whole |= turn == number;
  }

  /** A request has been answered; the next may have begun already. */
  void end(long number, long now) {
    if (turn == number) {
      asking = false;
      whole = false;
      since = now;
    }
  }

  /** Whether it may be sent away for another's sake: there is no whole request of it. */
  boolean waits() {
    return !whole;
  }

  /**
   * Whether it has sent no head of a request for too long.
   *
   * @param first how many nanoseconds it has for its first
   * @param next how many for any other, after the answer before
   */
  boolean isOverdue(long now, long first, long next) {
    return !asking && now - since > (turn == 0 ? first : next);
  }
}
