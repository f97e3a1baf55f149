package strickle.api;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpResponseException;
import io.javalin.http.MethodNotAllowedResponse;
import java.io.IOException;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import strickle.store.DailyCopies;

/** Makes of routes what the HTTP library calls, and of replies what it sends. */
final class RouteHandlers {

  private static final Logger LOG = LoggerFactory.getLogger(RouteHandlers.class);

  private final Access access;
  private final Duration patience;
  private final DailyCopies copies;

  /**
   * Handlers for the routes of a service.
   *
   * @param patience how long the body of a request may take
   */
  RouteHandlers(Access access, Duration patience, DailyCopies copies) {
    this.access = access;
    this.patience = patience;
    this.copies = copies;
  }

  /** Adds a route. */
  void add(JavalinConfig config, Route route) {
    String path = route.operation().path();
    HandlerType method = HandlerType.findOrCreate(route.operation().method());
    config.routes.addHttpHandler(method, path, context -> handle(context, route));
    if (reads(route)) {
      // The library's own answer would be 200, whatever is there and whoever asks.
      config.routes.addHttpHandler(HandlerType.HEAD, path, context -> handle(context, route));
    }
  }

  /** Adds how refusals are told. */
  static void addRefusals(JavalinConfig config) {
    // The library has an answer of its own for its own refusals, unless one is given for them.
    config.routes.exception(
        HttpResponseException.class, (thrown, context) -> refuse(context, thrown));
    config.routes.exception(Exception.class, (thrown, context) -> refuse(context, thrown));
  }

  private static boolean reads(Route route) {
    return route.operation().method().equals("GET");
  }

  private void handle(Context context, Route route) {
    Call call = new Call(context, access, patience);
    if (!route.operation().open()) {
      call.admit(); // before anything that costs something, the body above all
    }
    Queries.check(context.queryParamMap(), route.operation());
    if (!reads(route)) {
      copies.keep();
    }
    answer(context, route.work().reply(call));
  }

  private static void refuse(Context context, Exception thrown) {
    Reply reply = Problems.reply(Problems.of(thrown));
    for (Map.Entry<String, String> header : headers(thrown).entrySet()) {
      reply = reply.with(header.getKey(), header.getValue());
    }
    answer(context, reply);
  }

  private static Map<String, String> headers(Exception thrown) {
    return switch (thrown) {
      case Refusal refusal -> refusal.headers();
      // Which methods there are belongs to this answer (RFC 9110, 15.5.6).
      case MethodNotAllowedResponse other ->
          Map.of("Allow", String.join(", ", other.getDetails().values()));
      default -> Map.of();
    };
  }

  private static void answer(Context context, Reply plain) {
    Reply reply = Packing.of(plain, Optional.ofNullable(context.header("Accept-Encoding")));
    context.status(reply.status());
    context.header("Vary", "Accept-Encoding"); // of what is unchanged, too (RFC 9110, 15.4.5)
    reply.headers().forEach(context::header);
    if (!reply.mediaType().isEmpty()) {
      // The library would say of every body that it is in UTF-8, a PDF included.
      context.res().setCharacterEncoding((String) null);
      context.res().setContentType(reply.mediaType());
    }
    if (reply.pouring().isPresent() && !context.method().equals(HandlerType.HEAD)) {
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
      LOG.debug("a listener is gone", gone);
    }
  }
}
