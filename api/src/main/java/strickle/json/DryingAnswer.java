package strickle.json;

import java.time.LocalDateTime;
import java.util.Optional;
import strickle.cure.Between;
import strickle.cure.Drying;
import strickle.cure.DryingLog;

/**
 * When a piece that is weighed now and then has dried far enough ({@code strickle-drying/1}). Days
 * count from the first weighing.
 *
 * @param weighings how many there are
 * @param days from the first to the last
 * @param lostGrams from the first to the last
 * @param lastDailyPercent what the last two weighings lost in a day
 * @param limitAt the limit's days as local times, when the file has times
 * @param drying the fit
 */
public record DryingAnswer(
    int weighings,
    double days,
    double lostGrams,
    double lastDailyPercent,
    Optional<Moment> limitAt,
    Drying drying) {

  /** A local time with its band. */
  public record Moment(LocalDateTime low, LocalDateTime likely, LocalDateTime high) {}

  /** The word of its format. */
  public static final String FORMAT = "strickle-drying/1";

  /**
   * The answer for a log.
   *
   * @param begin the local time of the first weighing, when it is known
   */
  public static DryingAnswer of(DryingLog log, Optional<LocalDateTime> begin, Drying drying) {
    return new DryingAnswer(
        log.weighings().size(),
        log.lastDays() - log.firstDays(),
        log.lostGrams(),
        log.lastDailyPercent(),
        moment(begin, drying.limitDays()),
        drying);
  }

  private static Optional<Moment> moment(Optional<LocalDateTime> begin, Between days) {
    return begin.map(
        first ->
            new Moment(
                first.plusDays((long) days.low()),
                first.plusDays((long) days.likely()),
                first.plusDays((long) days.high())));
  }
}
