package strickle.api;

import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import strickle.json.Message;
import strickle.json.contract.Answer;
import strickle.json.contract.Operation;
import strickle.json.contract.Shape;
import strickle.store.Session;
import strickle.store.StudioName;
import strickle.store.StudioStore;
import strickle.store.Studios;

/** Opening a studio by its password, and closing it again. */
final class SessionRoutes {

  private static final Logger LOG = LoggerFactory.getLogger(SessionRoutes.class);
  private static final String TOPIC = "The studio";
  private static final String PATH = "/api/session";
  private static final Duration LASTS = Duration.ofDays(30);
  private static final int TOKEN_BYTES = 32;
  private static final int SECONDS_FOR_ROOM = 5;
  private static final int MOST_BYTES = 16 * 1024;

  /**
   * What opens a studio.
   *
   * @param studio its name
   * @param password its password
   */
  public record Opening(String studio, String password) {}

  /**
   * The studio that is open.
   *
   * @param studio which
   * @param endsAt when its password is needed again; nothing when it needs none
   */
  public record OpenStudio(StudioName studio, Optional<Instant> endsAt) {}

  private final Studios studios;
  private final Access access;
  private final Clock clock;
  private final boolean behindTls;
  private final Throttle throttle;
  private final SecureRandom random = new SecureRandom();

  /** Each password that is tried takes 46 MiB, so two at a time. */
  private final Semaphore room = new Semaphore(2);

  private SessionRoutes(Studios studios, Access access, Clock clock, boolean behindTls) {
    this.studios = studios;
    this.access = access;
    this.clock = clock;
    this.behindTls = behindTls;
    this.throttle = new Throttle(clock);
  }

  /**
   * The routes.
   *
   * @param behindTls whether a browser may send the session over https only
   */
  static List<Route> of(Studios studios, Access access, Clock clock, boolean behindTls) {
    SessionRoutes routes = new SessionRoutes(studios, access, clock, behindTls);
    Shape open = Shape.of(OpenStudio.class);
    return List.of(
        new Route(
            operation("GET", "readSession", "The studio that is open.", "401 when none is.")
                .answering(Answer.of(Status.OK, "It.", open)),
            routes::read),
        new Route(
            operation(
                    "POST",
                    "openSession",
                    "Open a studio by its password.",
                    "For thirty days, by a cookie that no script can read. Wrong passwords are"
                        + " answered with 401, and after three of them with 429 until the seconds"
                        + " in Retry-After are over, twice as many each time.")
                .toAnybody()
                .taking(
                    Shape.of(Opening.class),
                    "{\"studio\": \"Ash Lane\", \"password\": \"a sentence of one's own\"}")
                .answering(Answer.of(Status.OK, "It is open.", open, "Set-Cookie")),
            routes::open),
        new Route(
            operation("DELETE", "closeSession", "Close it.", "The cookie opens nothing any more.")
                .answering(Answer.empty(Status.DONE, "It is closed.", "Set-Cookie")),
            routes::close));
  }

  private static Operation operation(String method, String id, String summary, String more) {
    return Operation.of(method, PATH, id, TOPIC, summary, more);
  }

  private Reply read(Call call) {
    StudioStore studio = access.studio(call.context());
    Optional<Instant> end = SessionCookie.session(call.context(), studios).map(Session::endsAt);
    return Reply.json(Status.OK, Message.write(new OpenStudio(studio.studio(), end)));
  }

  private Reply open(Call call) {
    // Whoever has not opened anything yet gets little to send.
    Opening opening = Message.parse(call.body(MOST_BYTES), Opening.class);
    Optional<StudioName> studio = studios.named(opening.studio()).map(StudioStore::studio);
    String id = studio.map(StudioName::id).orElse("");
    Throttle.Attempt attempt =
        new Throttle.Attempt(id, Network.of(call.context().req().getRemoteAddr()));
    throttle.begin(attempt).ifPresent(SessionRoutes::tooOften);
    Optional<String> hash = studio.flatMap(name -> studios.passwordHash(name.id()));
    if (!isRight(opening.password(), hash, attempt)) {
      LOG.warn("a password was wrong");
      throw new Refusal(
          Problem.of(Status.NOT_KNOWN, "Not opened", "The name or the password is not right."));
    }
    throttle.right(attempt);
    return opened(studio.orElseThrow());
  }

  private Reply opened(StudioName studio) {
    byte[] bytes = new byte[TOKEN_BYTES];
    random.nextBytes(bytes);
    String token = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    Instant end = clock.instant().plus(LASTS);
    studios.openSession(studio.id(), Etag.sha256(token), end);
    LOG.info("a studio was opened by its password");
    return Reply.json(Status.OK, Message.write(new OpenStudio(studio, Optional.of(end))))
        .with("Set-Cookie", SessionCookie.of(token, LASTS, behindTls));
  }

  private boolean isRight(String password, Optional<String> hash, Throttle.Attempt attempt) {
    if (password.length() > Password.LONGEST) {
      return false;
    }
    try {
      if (!room.tryAcquire(SECONDS_FOR_ROOM, TimeUnit.SECONDS)) {
        throttle.untried(attempt);
        tooOften(Duration.ofSeconds(SECONDS_FOR_ROOM));
      }
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      return false;
    }
    try {
      return Password.isRight(password, hash);
    } finally {
      room.release();
    }
  }

  private static void tooOften(Duration pause) {
    long seconds = Math.max(1, pause.toSeconds() + 1);
    throw new Refusal(
        Problem.of(
            Status.TOO_OFTEN,
            "Too often",
            "Too many passwords were tried; wait " + seconds + " seconds."),
        "Retry-After",
        Long.toString(seconds));
  }

  private Reply close(Call call) {
    SessionCookie.hash(call.context()).ifPresent(studios::closeSession);
    return Reply.empty(Status.DONE)
        .with("Set-Cookie", SessionCookie.of("", Duration.ZERO, behindTls));
  }
}
