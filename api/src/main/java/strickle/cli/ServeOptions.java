package strickle.cli;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.logging.Level;
import picocli.CommandLine.Option;
import strickle.api.Listening;

/** Where the service listens, by what names, and how much it tells of itself. */
final class ServeOptions {

  private static final int USUAL_PORT = 8317;
  private static final int LARGEST_PORT = 65_535;
  private static final String HOST_NAME = "[A-Za-z0-9]([A-Za-z0-9.-]{0,251}[A-Za-z0-9])?";

  @Option(
      names = "--port",
      paramLabel = "N",
      description = "the port to listen on, 0 for a free one (default: " + USUAL_PORT + ")")
  private String port = Integer.toString(USUAL_PORT);

  @Option(
      names = "--address",
      paramLabel = "ADDR",
      description = "listen here, so that others can ask too; every studio needs a password then")
  private String address = Listening.LOOPBACK;

  @Option(
      names = "--name",
      paramLabel = "HOST",
      description =
          "a name by which others call this machine; may be given several times, and every studio"
              + " needs a password then")
  private List<String> names = List.of();

  @Option(
      names = "--behind-tls",
      description =
          "something in front speaks https, and browsers must use it; every studio needs a password"
              + " then")
  private boolean behindTls;

  @Option(
      names = "--log-level",
      paramLabel = "LEVEL",
      description = "error, warning, info or debug (default: info)")
  private String logLevel = "info";

  /**
   * Where it listens.
   *
   * @param given collects what is wrong
   */
  Listening listening(Given given) {
    int number =
        given.whole("--port", port, 0, LARGEST_PORT).map(Long::intValue).orElse(USUAL_PORT);
    for (String name : names) {
      String right = "a host name without a port, such as bench.lan";
      given.must(name.matches(HOST_NAME), "--name", name, right);
    }
    return new Listening(
        address, number, new HashSet<>(names), behindTls, Listening.USUAL_PATIENCE);
  }

  /** From which level on events are told. */
  Level logLevel(Given given) {
    Optional<Level> level = ServiceLog.level(logLevel);
    given.must(level.isPresent(), "--log-level", logLevel, "error, warning, info or debug");
    return level.orElse(Level.INFO);
  }
}
