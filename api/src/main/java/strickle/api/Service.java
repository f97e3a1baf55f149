package strickle.api;

import io.javalin.Javalin;
import io.javalin.compression.CompressionStrategy;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.util.JavalinException;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import org.eclipse.jetty.server.AbstractConnector;
import org.eclipse.jetty.server.Connector;
import org.eclipse.jetty.server.handler.GracefulHandler;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.json.contract.Operation;
import strickle.store.DailyCopies;
import strickle.store.Database;
import strickle.store.PlanQueue;
import strickle.store.StudioName;
import strickle.store.Studios;
import strickle.web.Page;

/** The service, running: the studio's data over HTTP on this machine. */
public final class Service implements AutoCloseable {

  private static final Logger LOG = LoggerFactory.getLogger(Service.class);
  private static final Duration LAST_REQUESTS = Duration.ofSeconds(5);
  private static final Duration LAST_SILENCE = Duration.ofMillis(200);

  private final Javalin server;
  private final Database database;
  private final PlanQueue queue;
  private final AtomicBoolean closed = new AtomicBoolean();

  private Service(Javalin server, Database database, PlanQueue queue) {
    this.server = server;
    this.database = database;
    this.queue = queue;
  }

  /** Begins to read the page while the database is opened; without it, it is read after that. */
  public static void prepare() {
    Page.prepare();
  }

  /**
   * Starts to serve.
   *
   * @param database where the studios lie; closed with the service
   * @param listening where, and by what names
   * @param clock says when things happen
   * @param version of the program
   * @throws strickle.book.Faulty when others could reach a studio that has no password
   */
  public static Service start(Database database, Listening listening, Clock clock, String version) {
    return start(database, listening, clock, version, PlanQueue.Pace.USUAL);
  }

  /** The same with a queue of another pace. */
  static Service start(
      Database database, Listening listening, Clock clock, String version, PlanQueue.Pace pace) {
    Studios studios = new Studios(database, clock);
    Openness.refuseOpen(studios, listening);
    DailyCopies copies = new DailyCopies(database, clock);
    copies.keep();
    PlanQueue queue = PlanQueue.start(database, clock, new Laying(), pace);
    Access access = new StudioAccess(studios, listening.isOnlyForThisMachine());
    List<Route> routes = routes(studios, access, queue, clock, listening, version);
    RouteHandlers handlers = new RouteHandlers(access, listening.patience(), copies);
    Gate gate = new Gate();
    Javalin server =
        started(
            listening,
            queue,
            config -> {
              configure(config, routes, access, handlers);
              limit(config, gate, listening);
            });
    gate.open(listening.guard(server.port()));
    LOG.info("serving port={}", server.port());
    return new Service(server, database, queue);
  }

  private static Javalin started(
      Listening listening, PlanQueue queue, Consumer<JavalinConfig> how) {
    try {
      return Javalin.create(how).start(listening.address(), listening.port());
    } catch (JavalinException cannot) {
      queue.close();
      String found = listening.address() + ":" + listening.port() + ", where one cannot listen";
      String right = "an address of this machine and a port that nothing else listens on";
      throw new Faulty(List.of(new Fault("--port", found, right)));
    }
  }

  /**
   * Makes an empty studio.
   *
   * @param passwordHash as {@link Password#hash} gives it
   */
  public static StudioName createEmpty(Studios studios, String name, String passwordHash) {
    return StudioRoutes.createEmpty(studios, name, passwordHash);
  }

  /** The port it listens on. */
  public int port() {
    return server.port();
  }

  /** Ends what is under way, then stops. */
  @Override
  public void close() {
    if (closed.getAndSet(true)) {
      return;
    }
    queue.close();
    letIdleGo();
    server.stop();
    database.close();
    LOG.info("ended");
  }

  // Who has nothing under way keeps a connection for the next request; there is none any more.
  private void letIdleGo() {
    for (Connector connector : server.jettyServer().server().getConnectors()) {
      if (connector instanceof AbstractConnector open) {
        open.setShutdownIdleTimeout(LAST_SILENCE.toMillis());
      }
    }
  }

  private static List<Route> routes(
      Studios studios,
      Access access,
      PlanQueue queue,
      Clock clock,
      Listening listening,
      String version) {
    List<Route> routes = new ArrayList<>(StudioRoutes.of(studios, access));
    routes.addAll(SessionRoutes.of(studios, access, clock, listening.behindTls()));
    routes.addAll(BookRoutes.all());
    Collection.ALL.forEach(collection -> routes.addAll(ItemRoutes.of(collection)));
    Collection.BESIDE.forEach(collection -> routes.addAll(ItemRoutes.of(collection)));
    routes.addAll(PlanRoutes.of(queue, clock));
    routes.addAll(PlanInUse.routes());
    Thinking thinking = new Thinking();
    routes.addAll(AnswerRoutes.of(thinking));
    routes.addAll(MoneyRoutes.of(thinking, clock));
    routes.addAll(TakeRoutes.of(thinking, clock));
    routes.addAll(BenchRoutes.all());
    routes.addAll(MeasureRoutes.all());
    routes.addAll(MeshRoutes.all());
    routes.addAll(CheckRoutes.of(thinking, clock));
    routes.addAll(PaperRoutes.of(clock, version));
    routes.addAll(OrderRoutes.all());
    routes.addAll(CalendarRoutes.of(studios, listening.behindTls()));
    routes.addAll(JournalRoutes.all());
    routes.addAll(SnapshotRoutes.all());
    List<Operation> operations = routes.stream().map(Route::operation).toList();
    routes.addAll(Contract.routes(operations, studios::all, version));
    return routes;
  }

  private static void configure(
      JavalinConfig config, List<Route> routes, Access access, RouteHandlers handlers) {
    config.startup.showJavalinBanner = false;
    config.concurrency.useVirtualThreads = true;
    config.http.prefer405over404 = true;
    config.router.ignoreTrailingSlashes = false; // the contract has one path for each thing
    config.http.maxRequestSize = Long.MAX_VALUE; // each route reads no more than it takes
    config.http.compressionStrategy = CompressionStrategy.NONE; // Packing does it
    config.http.defaultContentType = "application/json";
    RouteHandlers.addRefusals(config);
    PageRoutes.add(config, access);
    routes.forEach(route -> handlers.add(config, route));
  }

  // Requests go through the gate first, and those under way are let end when the service stops.
  private static void limit(JavalinConfig config, Gate gate, Listening listening) {
    config.jetty.modifyServer(
        server -> {
          Doorkeeper doorkeeper = Doorkeeper.of(listening);
          server.setHandler(doorkeeper);
          doorkeeper.setHandler(gate);
          gate.setHandler(new GracefulHandler());
          server.setErrorHandler(new ServerErrors());
          server.setStopTimeout(LAST_REQUESTS.toMillis());
        });
    config.jetty.modifyServletContextHandler(
        context -> context.setErrorHandler(new ServerErrors()));
    config.jetty.modifyHttpConfiguration(
        http -> {
          http.setSendServerVersion(false);
          http.setIdleTimeout(listening.patience().toMillis());
        });
    config.requestLogger.http(Service::log);
  }

  // What was asked by the pattern of its path: ids may be names of people.
  private static void log(Context context, Float millis) {
    LOG.info(
        "request method={} route={} status={} ms={}",
        context.method(),
        Optional.ofNullable(context.endpoints().lastHttpEndpoint())
            .map(endpoint -> endpoint.path)
            .orElse("none"),
        context.statusCode(),
        Math.round(millis));
  }
}
