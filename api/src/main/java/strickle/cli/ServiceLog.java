package strickle.cli;

import java.io.PrintStream;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.logging.Formatter;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.Logger;

/**
 * What the service says of itself while it runs: a line for each event, without anything personal.
 * What libraries have to say may hold names and addresses; of that only who said it is told.
 */
final class ServiceLog extends Handler implements AutoCloseable {

  private static final Map<String, Level> LEVELS =
      Map.of(
          "error", Level.SEVERE,
          "warning", Level.WARNING,
          "info", Level.INFO,
          "debug", Level.FINE);

  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSS'Z'", Locale.ROOT)
          .withZone(ZoneOffset.UTC);
  private static final String OWN = "strickle.";

  private final PrintStream to;

  private ServiceLog(PrintStream to) {
    this.to = to;
    setFormatter(new OneLine());
  }

  /** The level of a name that a person gives; nothing when there is none. */
  static Optional<Level> level(String name) {
    return Optional.ofNullable(LEVELS.get(name));
  }

  /** Begins to tell events of a level and above; of libraries, trouble only. */
  static ServiceLog begin(PrintStream to, Level level) {
    ServiceLog log = new ServiceLog(to);
    log.setLevel(level);
    Logger root = Logger.getLogger("");
    root.setLevel(level);
    root.addHandler(log);
    return log;
  }

  @Override
  public void publish(LogRecord event) {
    boolean own = event.getLoggerName() != null && event.getLoggerName().startsWith(OWN);
    boolean told = own || event.getLevel().intValue() >= Level.WARNING.intValue();
    if (told && isLoggable(event)) {
      to.print(getFormatter().format(event));
    }
  }

  @Override
  public void flush() {
    to.flush();
  }

  /** Ends. */
  @Override
  public void close() {
    Logger.getLogger("").removeHandler(this);
  }

  private static final class OneLine extends Formatter {

    @Override
    public String format(LogRecord event) {
      boolean own = event.getLoggerName().startsWith(OWN);
      String said = own ? formatMessage(event) : "said by " + event.getLoggerName();
      return "%s %s %s%s%n"
          .formatted(
              TIME.format(event.getInstant()),
              event.getLevel().getName(),
              said.replaceAll("\\R", " "),
              Optional.ofNullable(event.getThrown()).map(OneLine::trace).orElse(""));
    }

    // Messages of errors may hold what was sent; where they came from does not.
    private static String trace(Throwable thrown) {
      StringBuilder trace = new StringBuilder(" thrown=").append(thrown.getClass().getName());
      int most = 6;
      StackTraceElement[] frames = thrown.getStackTrace();
      for (int i = 0; i < Math.min(most, frames.length); i++) {
        trace.append(" at ").append(frames[i]);
      }
      Throwable cause = thrown.getCause();
      return cause == null ? trace.toString() : trace + " caused by " + cause.getClass().getName();
    }
  }
}
