package strickle.api;

import java.nio.ByteBuffer;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import org.eclipse.jetty.http.HttpField;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Stands before everything the service answers, pages, streams and what is not there included:
 * nothing is looked at of a request before its names are.
 */
final class Gate extends Handler.Wrapper {

  private static final Logger LOG = LoggerFactory.getLogger(Gate.class);
  private static final Set<String> READING = Set.of("GET", "HEAD", "OPTIONS");

  private static final List<HttpField> PROTECTION =
      List.of(
          new HttpField("X-Content-Type-Options", "nosniff"),
          new HttpField("Referrer-Policy", "no-referrer"),
          new HttpField("Cross-Origin-Resource-Policy", "same-origin"),
          new HttpField("Cross-Origin-Opener-Policy", "same-origin"),
          new HttpField("X-Frame-Options", "DENY"),
          new HttpField(
              "Content-Security-Policy",
              "default-src 'self'; object-src 'none'; frame-ancestors 'none'; base-uri 'none';"
                  + " form-action 'self'"),
          new HttpField(HttpHeader.VARY, "Accept-Encoding, Cookie"),
          new HttpField(HttpHeader.CACHE_CONTROL, "private, no-cache"));

  private final AtomicReference<HostGuard> guard = new AtomicReference<>();

  /** Lets in what this guard lets in; before, nothing is. */
  void open(HostGuard to) {
    guard.set(to);
  }

  @Override
  public boolean handle(Request request, Response response, Callback callback) throws Exception {
    protect(response.getHeaders());
    Optional<Problem> refusal = refusal(request);
    if (refusal.isEmpty()) {
      return super.handle(request, response, callback);
    }
    LOG.warn("refused at the gate status={}", refusal.get().status());
    // What was not read of the body goes with the connection.
    response.getHeaders().put(HttpHeader.CONNECTION, "close");
    write(response, refusal.get(), callback);
    return true;
  }

  private Optional<Problem> refusal(Request request) {
    HostGuard now = guard.get();
    if (now == null) {
      return Optional.of(Problem.of(Status.TROUBLE, "Not yet", "The service is starting."));
    }
    HttpFields headers = request.getHeaders();
    Optional<String> names =
        now.refusal(
            host(request),
            header(headers, "Origin"),
            header(headers, "Sec-Fetch-Site"),
            header(headers, "Sec-Fetch-Mode"),
            READING.contains(request.getMethod()));
    if (names.isPresent()) {
      return Optional.of(Problem.of(Status.FORBIDDEN, "Not from there", names.get()));
    }
    if (headers.contains(HttpHeader.CONTENT_ENCODING)) {
      String right = "Send the body as it is, not packed.";
      return Optional.of(Problem.of(Status.WRONG_KIND, "Packed body", right));
    }
    return Optional.empty();
  }

  // A whole address in the request line goes before the header; both must be the same.
  private static Optional<String> host(Request request) {
    Optional<String> header = header(request.getHeaders(), "Host");
    Optional<String> line = Optional.ofNullable(request.getHttpURI().getAuthority());
    return header.filter(name -> line.isEmpty() || line.get().equalsIgnoreCase(name));
  }

  // Two of a kind are one that nothing matches.
  private static Optional<String> header(HttpFields headers, String name) {
    List<String> values = headers.getValuesList(name);
    return values.isEmpty() ? Optional.empty() : Optional.of(String.join(", ", values));
  }

  /** Puts in what keeps a browser from doing with an answer what it should not. */
  static void protect(HttpFields.Mutable headers) {
    PROTECTION.forEach(headers::put);
  }

  /** Answers with a problem. */
  static void write(Response response, Problem problem, Callback callback) {
    Reply reply = Problems.reply(problem);
    protect(response.getHeaders());
    response.setStatus(problem.status());
    response.getHeaders().put(HttpHeader.CONTENT_TYPE, reply.mediaType());
    response.write(true, ByteBuffer.wrap(reply.body()), callback);
  }
}
