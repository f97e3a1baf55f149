package strickle.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.logging.Level;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import strickle.api.Listening;
import strickle.api.Service;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.store.DataFolder;
import strickle.store.Database;
import strickle.store.StoreTrouble;
import strickle.store.StudioName;

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
      "  strickle serve --open",
      "  strickle serve --data studio-data --port 9000",
      "  strickle serve --database jdbc:postgresql://localhost/studio",
      "  strickle serve --set-password --studio \"Ash Lane\"",
      "  strickle serve --address 192.168.1.20 --name bench.lan"
    })
final class ServeCommand implements Runnable {

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
      names = "--studio",
      paramLabel = "NAME",
      description =
          "with --set-password: the studio it is for; made, empty, if there is none of the name")
  private Optional<String> studio = Optional.empty();

  @Option(
      names = "--set-password",
      description =
          "ask for the password that is to open the studio, keep it and end; read from the"
              + " terminal or standard input")
  private boolean setPassword;

  @Option(names = "--open", description = "open the page in the browser of this machine")
  private boolean open;

  @Mixin private ServeOptions options;

  ServeCommand(Surroundings here) {
    this.here = here;
  }

  @Override
  public void run() {
    Given given = new Given();
    Listening listening = options.listening(given);
    Level level = options.logLevel(given);
    if (studio.isPresent() && !setPassword) {
      given.must(false, "--studio", studio.get(), "it together with --set-password");
    }
    given.done();
    try {
      if (setPassword) {
        keepPassword();
      } else {
        serve(listening, level);
      }
    } catch (StoreTrouble trouble) {
      throw new Trouble(trouble.getMessage());
    }
  }

  private void keepPassword() {
    try (Database data = opened()) {
      StudioName whose = new StudioPassword(data, here.clock()).set(studio);
      here.out().println("The password of " + whose.name() + " is set.");
    }
  }

  private void serve(Listening listening, Level level) {
    Service.prepare();
    try (ServiceLog log = ServiceLog.begin(here.err(), level);
        Service service = started(listening)) {
      String address = address(listening, service.port());
      here.out().println("Serving at " + address + " — Ctrl-C ends it.");
      here.out().flush();
      if (open && !Browser.start(Browser.command(System.getProperty("os.name"), address))) {
        here.err().println("No browser could be opened from here: open " + address + " in one.");
      }
      untilInterrupted(service);
      log.flush();
    }
  }

  private Service started(Listening listening) {
    Database data = opened();
    try {
      return Service.start(data, listening, here.clock(), Version.NUMBER);
    } catch (RuntimeException failed) {
      data.close();
      throw failed;
    }
  }

  private static String address(Listening listening, int port) {
    String where = listening.isLoopback() ? "localhost" : listening.address();
    return "http://" + where + ":" + port + "/";
  }

  private Database opened() {
    if (database.isEmpty()) {
      return Database.inFolder(
          data.map(Path::of).orElseGet(ServeCommand::usualFolder), here.clock());
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
