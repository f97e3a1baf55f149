package strickle.plan;

import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import strickle.book.Material;

/** When a material that is ordered can be there. */
public final class Arrival {

  private Arrival() {}

  /**
   * The first moment it can be there: when the day begins that lies its lead days after the day it
   * is ordered on, and never before it is ordered.
   *
   * @param ordered when it is ordered
   * @param zone the studio's, whose days are counted
   */
  public static OffsetDateTime of(Material material, OffsetDateTime ordered, ZoneId zone) {
    ZonedDateTime local = ordered.atZoneSameInstant(zone);
    ZonedDateTime day = local.toLocalDate().plusDays(material.leadDays()).atStartOfDay(zone);
    return (day.isAfter(local) ? day : local).toOffsetDateTime();
  }
}
