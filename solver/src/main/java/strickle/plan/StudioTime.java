package strickle.plan;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;

/**
 * The studio's local times and instants on the planner's minute line, which begins at {@code from}
 * and counts elapsed minutes, also across a clock change.
 */
final class StudioTime {

  private final Instant from;
  private final ZoneId zone;

  /** A line that begins at the whole minute {@code from} lies in. */
  StudioTime(Instant from, ZoneId zone) {
    this.from = from.truncatedTo(ChronoUnit.MINUTES);
    this.zone = zone;
  }

  /** Whole minutes from the beginning to an instant, rounded down; negative before it. */
  long minute(Instant at) {
    return Math.floorDiv(at.getEpochSecond() - from.getEpochSecond(), 60L);
  }

  /** The minute of a local time; one skipped by a clock change counts as so much later. */
  long minute(LocalDateTime local) {
    return minute(local.atZone(zone).toInstant());
  }

  /** The moment of a minute, with the offset the studio has then. */
  OffsetDateTime at(long minute) {
    return from.plusSeconds(minute * 60).atZone(zone).toOffsetDateTime();
  }

  /** The local time of a minute. */
  LocalDateTime local(long minute) {
    return at(minute).toLocalDateTime();
  }

  /** The same line for a studio that keeps the offset it has at the beginning for ever. */
  StudioTime withoutClockChanges() {
    return new StudioTime(from, zone.getRules().getOffset(from));
  }

  ZoneId zone() {
    return zone;
  }
}
