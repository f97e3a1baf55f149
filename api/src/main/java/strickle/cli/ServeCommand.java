package strickle.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import strickle.api.Service;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.store.DataFolder;
import strickle.store.Database;
import strickle.store.StoreTrouble;

/** {@code strickle serve}: the studio as a service on this machine. */
@Command(
    name = "serve",
    mixinStandardHelpOptions = true,
    version = Version.TEXT,
    description = {
      "Serves the studio on this machine, for programs and pages on it: its book, every change"
          + " with undo, and a journal, kept in a database. Ends with Ctrl-C."
    },
    footer = {
      "",
      "Examples:",
      "  strickle serve",
      "  strickle serve --data studio-data --port 9000",
      "  strickle serve --database jdbc:postgresql://localhost/studio"
    })
final class ServeCommand implements Runnable {

  private static final int USUAL_PORT = 8317;
  private static final int LARGEST_PORT = 65_535;
  private static final String POSTGRESQL = "jdbc:postgresql:";

  private final Surroundings here;

  @Option(
      names = "--data",
      paramLabel = "DIR",
      description = "the folder the data lie in; without it, where the system keeps such")
  private Optional<String> data = Optional.empty();

  @Option(
      names = "--database",
      paramLabel = "URL",
      description = "a PostgreSQL database in place of a folder, as jdbc:postgresql:…")
  private Optional<String> database = Optional.empty();

  @Option(
      names = "--port",
      paramLabel = "N",
      description = "the port to listen on, 0 for a free one (default: " + USUAL_PORT + ")")
  private String port = Integer.toString(USUAL_PORT);

  ServeCommand(Surroundings here) {
    this.here = here;
  }

  @Override
  public void run() {
    Given given = new Given();
    int number =
        given.whole("--port", port, 0, LARGEST_PORT).map(Long::intValue).orElse(USUAL_PORT);
    given.done();
    try (Service service = Service.start(opened(), number, here.clock(), Version.NUMBER)) {
      here.out().println("Serving at http://localhost:" + service.port() + "/ — Ctrl-C ends it.");
      here.out().flush();
      untilInterrupted(service);
    } catch (StoreTrouble trouble) {
      throw new Trouble(trouble.getMessage());
    }
  }

  private Database opened() {
    if (database.isEmpty()) {
      return Database.inFolder(data.map(Path::of).orElseGet(ServeCommand::usualFolder));
    }
    if (data.isPresent()) {
      throw refusal("--data", "a folder beside --database", "one of them");
    }
    if (!database.get().startsWith(POSTGRESQL)) {
      throw refusal(
          "--database",
          '"' + database.get() + '"',
          "an address that begins with \"" + POSTGRESQL + '"');
    }
    return Database.postgresql(database.get());
  }

  private static Faulty refusal(String option, String found, String right) {
    return new Faulty(List.of(new Fault(option, found, right)));
  }

  private static Path usualFolder() {
    return DataFolder.usual(
        System.getProperty("os.name"), Path.of(System.getProperty("user.home")), System.getenv());
  }

  private static void untilInterrupted(Service service) {
    CountDownLatch ended = new CountDownLatch(1);
    Runtime.getRuntime()
        .addShutdownHook(
            new Thread(
                () -> {
                  service.close();
                  ended.countDown();
                },
                "serving ends"));
    try {
      ended.await();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }
}
