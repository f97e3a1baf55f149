package strickle.api;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpResponseException;
import java.io.IOException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicBoolean;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import strickle.store.Database;
import strickle.store.PlanQueue;
import strickle.store.Studios;

/** The service, running: the studio's data over HTTP on this machine. */
public final class Service implements AutoCloseable {

  private static final Logger LOG = LoggerFactory.getLogger(Service.class);
  private static final String LOOPBACK = "127.0.0.1";
  private static final Set<String> READING = Set.of("GET", "HEAD", "OPTIONS");

  private final Javalin server;
  private final Database database;
  private final PlanQueue queue;
  private final AtomicBoolean closed = new AtomicBoolean();

  private Service(Javalin server, Database database, PlanQueue queue) {
    this.server = server;
    this.database = database;
    this.queue = queue;
  }

  /**
   * Starts to serve on the loopback address.
   *
   * @param database where the studios lie; closed with the service
   * @param port the port; 0 for a free one
   * @param clock says when things happen
   * @param version of the program
   */
  public static Service start(Database database, int port, Clock clock, String version) {
    return start(database, port, clock, version, PlanQueue.Pace.USUAL);
  }

  /** The same with a queue of another pace. */
  static Service start(
      Database database, int port, Clock clock, String version, PlanQueue.Pace pace) {
    PlanQueue queue = PlanQueue.start(database, clock, new Laying(), pace);
    Studios studios = new Studios(database, clock);
    Access access = new StudioAccess(studios);
    List<Route> routes = routes(studios, queue, clock, version);
    HostGuard[] guard = new HostGuard[1];
    Javalin server =
        Javalin.create(config -> configure(config, routes, access, guard)).start(LOOPBACK, port);
    guard[0] = new HostGuard(server.port(), Set.of());
    return new Service(server, database, queue);
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
    server.stop();
    database.close();
  }

  private static List<Route> routes(Studios studios, PlanQueue queue, Clock clock, String version) {
    List<Route> routes = new ArrayList<>(StudioRoutes.of(studios));
    routes.addAll(BookRoutes.all());
    Collection.ALL.forEach(collection -> routes.addAll(ItemRoutes.of(collection)));
    Collection.BESIDE.forEach(collection -> routes.addAll(ItemRoutes.of(collection)));
    routes.addAll(PlanRoutes.of(queue, clock));
    routes.addAll(PlanInUse.routes());
    routes.addAll(JournalRoutes.all());
    routes.addAll(Contract.routes(routes.stream().map(Route::operation).toList(), version));
    return routes;
  }

  private static void configure(
      JavalinConfig config, List<Route> routes, Access access, HostGuard[] guard) {
    config.startup.showJavalinBanner = false;
    config.concurrency.useVirtualThreads = true;
    config.http.prefer405over404 = true;
    config.http.maxRequestSize = Long.MAX_VALUE; // each route reads no more than it takes
    config.http.defaultContentType = "application/json";
    config.routes.before(context -> protect(context, guard[0]));
    // The library has an answer of its own for its own refusals, unless one is given for them.
    config.routes.exception(
        HttpResponseException.class, (thrown, context) -> refuse(context, thrown));
    config.routes.exception(Exception.class, (thrown, context) -> refuse(context, thrown));
    for (Route route : routes) {
      config.routes.addHttpHandler(
          HandlerType.findOrCreate(route.operation().method()),
          route.operation().path(),
          context -> answer(context, route.work().reply(new Call(context, access))));
    }
  }

  private static void protect(Context context, HostGuard guard) {
    context.header("X-Content-Type-Options", "nosniff");
    context.header("Referrer-Policy", "no-referrer");
    context.header("Cross-Origin-Resource-Policy", "same-origin");
    context.header(
        "Content-Security-Policy",
        "default-src 'self'; frame-ancestors 'none'; base-uri 'none'; form-action 'self'");
    context.header("Cache-Control", "no-cache");
    String method = context.req().getMethod().toUpperCase(Locale.ROOT);
    Optional<String> refusal =
        guard.refusal(
            header(context, "Host"),
            header(context, "Origin"),
            header(context, "Sec-Fetch-Site"),
            header(context, "Sec-Fetch-Mode"),
            READING.contains(method));
    if (refusal.isPresent()) {
      throw new Refusal(Problem.of(Status.FORBIDDEN, "Not from there", refusal.get()));
    }
    if (context.header("Content-Encoding") != null) {
      throw new Refusal(
          Problem.of(Status.WRONG_KIND, "Packed body", "Send the body as it is, not packed."));
    }
  }

  private static Optional<String> header(Context context, String name) {
    return Optional.ofNullable(context.header(name));
  }

  private static void refuse(Context context, Exception thrown) {
    answer(context, Problems.reply(Problems.of(thrown)));
  }

  private static void answer(Context context, Reply reply) {
    context.status(reply.status());
    reply.headers().forEach(context::header);
    if (!reply.mediaType().isEmpty()) {
      context.contentType(reply.mediaType());
    }
    if (reply.pouring().isPresent()) {
      pour(context, reply.pouring().get());
    } else if (!reply.mediaType().isEmpty()) {
      context.result(reply.body());
    }
  }

  private static void pour(Context context, Reply.Pouring pouring) {
    try {
      pouring.into(context.res().getOutputStream());
    } catch (IOException gone) {
      // Whoever listened has gone away, which is their right.
      LOG.debug("a listener is gone: {}", gone.getMessage());
    }
  }
}
