package strickle.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.json.ProgressFile;
import strickle.plan.replan.Happening;

/** The options that say what has happened, what time it is, and what is not to move any more. */
final class ReplanOptions {

  private static final String PROGRESS = "--progress";
  private static final String NOW = "--now";
  private static final String UNTIL = "--frozen-until";
  private static final String HOURS = "--frozen-hours";
  private static final long MOST_HOURS = 8760;

  @Option(
      names = PROGRESS,
      paramLabel = "FILE",
      description = {
        "what has happened, a JSON file (strickle-progress/1, see README); when left out, nothing"
            + " has"
      })
  private String progress;

  @Option(
      names = NOW,
      paramLabel = "TIME",
      description = "what time it is in the studio, such as 2027-04-07T10:00; now when left out")
  private String now;

  @Option(
      names = UNTIL,
      paramLabel = "TIME",
      description = {
        "what the present plan begins before this keeps person and time unless that has become"
            + " impossible; the end of today when left out"
      })
  private String until;

  @Option(
      names = HOURS,
      paramLabel = "N",
      description = "the same, so many hours from now, 0 to 8760")
  private String hours;

  private Optional<LocalDateTime> nowRead = Optional.empty();
  private Optional<LocalDateTime> untilRead = Optional.empty();
  private Optional<Long> hoursRead = Optional.empty();

  /** Reads the options, before the book and its time zone are known. */
  void read(Given values) {
    nowRead = values.moment(NOW, now);
    untilRead = values.moment(UNTIL, until);
    hoursRead = values.whole(HOURS, hours, 0, MOST_HOURS);
    values.must(until == null || hours == null, HOURS, hours, "either " + HOURS + " or " + UNTIL);
  }

  /** What time it is. */
  OffsetDateTime now(ZoneId zone, Clock clock) {
    return nowRead
        .map(local -> local.atZone(zone))
        .orElseGet(() -> clock.instant().truncatedTo(ChronoUnit.MINUTES).atZone(zone))
        .toOffsetDateTime();
  }

  /** Until when nothing is to move. */
  OffsetDateTime frozenUntil(OffsetDateTime moment, ZoneId zone) {
    if (hoursRead.isPresent()) {
      return moment.plusHours(hoursRead.get());
    }
    return untilRead
        .orElseGet(() -> moment.atZoneSameInstant(zone).toLocalDate().plusDays(1).atStartOfDay())
        .atZone(zone)
        .toOffsetDateTime();
  }

  /**
   * Reads what has happened.
   *
   * @throws Faulty with what is wrong with the file
   */
  List<Happening> happened() {
    if (progress == null) {
      return List.of();
    }
    try {
      return ProgressFile.read(file().orElseThrow());
    } catch (Faulty faulty) {
      throw named(faulty);
    }
  }

  /** The file of what has happened, if there is one. */
  Optional<Path> file() {
    return Optional.ofNullable(progress)
        .map(given -> Paths.of(PROGRESS, given, "the path of a file"));
  }

  /** Faults of what has happened named by their option, those of the book as they are. */
  static Faulty named(Faulty faulty) {
    List<Fault> faults = new ArrayList<>();
    for (Fault fault : faulty.faults()) {
      boolean ofFile = fault.path().equals("$") || !isOfBook(fault);
      String option = fault.path().equals("now") ? NOW : PROGRESS;
      Fault bare = fault.path().equals("now") ? new Fault("", fault.found(), fault.right()) : fault;
      faults.add(ofFile ? bare.under(bare.path().isEmpty() ? option : option + " ") : fault);
    }
    return new Faulty(faults);
  }

  private static boolean isOfBook(Fault fault) {
    return fault.path().startsWith("$.")
        && !fault.path().startsWith("$.happened")
        && !fault.path().startsWith("$.format");
  }
}
