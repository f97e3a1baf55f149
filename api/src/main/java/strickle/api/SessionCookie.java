package strickle.api;

import io.javalin.http.Context;
import java.time.Duration;
import java.util.Optional;
import strickle.store.Session;
import strickle.store.Studios;

/** The cookie by which a browser shows that it has opened a studio (RFC 6265). */
final class SessionCookie {

  /** What it is called. */
  static final String NAME = "strickle-session";

  private SessionCookie() {}

  /** The header that sets it: no script and no other site can use it. */
  static String of(String token, Duration lasts, boolean secure) {
    return "%s=%s; Path=/; Max-Age=%d; HttpOnly; SameSite=Strict%s"
        .formatted(NAME, token, lasts.toSeconds(), secure ? "; Secure" : "");
  }

  /** What is kept of the token that a request shows. */
  static Optional<String> hash(Context context) {
    return Optional.ofNullable(context.cookie(NAME))
        .filter(token -> !token.isEmpty())
        .map(Etag::sha256);
  }

  /** The session of a request, if it shows one that has not ended. */
  static Optional<Session> session(Context context, Studios studios) {
    return hash(context).flatMap(studios::session);
  }
}
