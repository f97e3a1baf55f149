package strickle.paper;

import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * Which calendar is wanted.
 *
 * @param person id of the one person; empty for everybody, with the dates that orders are due
 * @param stamp when it is made. A calendar imported again replaces one made in an earlier minute;
 *     from 2020 on
 */
public record CalendarRequest(Optional<String> person, Instant stamp) {

  private static final Instant FIRST = Instant.parse("2020-01-01T00:00:00Z");
  private static final long SECONDS_OF_A_MINUTE = 60;

  /**
   * Refuses a missing part.
   *
   * @throws IllegalArgumentException when the stamp is before 2020
   */
  public CalendarRequest {
    Objects.requireNonNull(person, "person");
    if (stamp.isBefore(FIRST)) {
      throw new IllegalArgumentException(
          "A calendar made at " + stamp + "; right is 2020 or later");
    }
  }

  /** Which revision it is: whole minutes since the beginning of 2020 in UTC. */
  long sequence() {
    return (stamp.getEpochSecond() - FIRST.getEpochSecond()) / SECONDS_OF_A_MINUTE;
  }
}
