package strickle.cli;

import java.time.LocalDateTime;
import java.util.Optional;
import strickle.cure.Between;
import strickle.cure.Drying;
import strickle.cure.DryingLog;

/**
 * What {@code strickle drying --json} writes. Days count from the first weighing.
 *
 * @param weighings how many there are
 * @param days from the first to the last
 * @param lostGrams from the first to the last
 * @param lastDailyPercent what the last two weighings lost in a day
 * @param limitAt the limit's days as local times, when the file has times
 * @param drying the fit
 */
record DryingAnswer(
    int weighings,
    double days,
    double lostGrams,
    double lastDailyPercent,
    Optional<Moment> limitAt,
    Drying drying) {

  /** A local time with its band. */
  record Moment(LocalDateTime low, LocalDateTime likely, LocalDateTime high) {}

  /** The answer for a sheet. */
  static DryingAnswer of(DryingSheet sheet, Drying drying) {
    DryingLog log = sheet.log();
    return new DryingAnswer(
        log.weighings().size(),
        log.lastDays() - log.firstDays(),
        log.lostGrams(),
        log.lastDailyPercent(),
        moment(sheet, drying.limitDays()),
        drying);
  }

  private static Optional<Moment> moment(DryingSheet sheet, Between days) {
    return sheet
        .begin()
        .map(
            begin ->
                new Moment(
                    begin.plusDays((long) days.low()),
                    begin.plusDays((long) days.likely()),
                    begin.plusDays((long) days.high())));
  }
}
