package strickle.plan.audit;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;

/**
 * Turns times into minutes since 1970 (UTC) and back, so that elapsed time is a difference, also
 * across a clock change.
 */
final class ZonedMinutes {

  private final ZoneId zone;

  ZonedMinutes(ZoneId zone) {
    this.zone = zone;
  }

  /** The minute a moment lies in. */
  static long minute(OffsetDateTime at) {
    return Math.floorDiv(at.toEpochSecond(), 60L);
  }

  /**
   * The minute of a local time. A time that a spring clock change leaves out is moved later by what
   * was left out; of two that an autumn change makes alike, the earlier is meant.
   */
  long minute(LocalDateTime local) {
    return Math.floorDiv(local.atZone(zone).toEpochSecond(), 60L);
  }

  /** The local date at a minute. */
  LocalDate date(long minute) {
    return at(minute).toLocalDate();
  }

  /** The same moment with the offset it has in the studio. */
  OffsetDateTime local(OffsetDateTime at) {
    return at.atZoneSameInstant(zone).toOffsetDateTime();
  }

  /** A minute as the plan would write it. */
  String say(long minute) {
    return at(minute).toString();
  }

  private OffsetDateTime at(long minute) {
    return Instant.ofEpochSecond(minute * 60).atZone(zone).toOffsetDateTime();
  }
}
