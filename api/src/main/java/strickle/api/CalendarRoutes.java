package strickle.api;

import java.security.SecureRandom;
import java.time.Instant;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import strickle.json.Message;
import strickle.json.contract.Answer;
import strickle.json.contract.Operation;
import strickle.json.contract.Parameter;
import strickle.json.contract.Shape;
import strickle.store.StudioStore;
import strickle.store.Studios;

/**
 * The address under which a calendar program reads the plan in use. Calendar programs cannot open a
 * studio by its password, so the address itself is the secret.
 */
final class CalendarRoutes {

  private static final String TOPIC = "Out of the studio";
  private static final String PATH = "/api/calendar-address";
  private static final String READ = "/api/calendars/";
  private static final int SECRET_BYTES = 32;

  /**
   * Whether there is an address.
   *
   * @param since since when; nothing when there is none
   */
  public record CalendarNow(Optional<Instant> since) {}

  /**
   * An address, told this once.
   *
   * @param address to subscribe to; "?person=ID" behind it gives one person's tasks only
   */
  public record CalendarAddress(String address) {}

  private final Studios studios;
  private final boolean behindTls;
  private final SecureRandom random = new SecureRandom();

  private CalendarRoutes(Studios studios, boolean behindTls) {
    this.studios = studios;
    this.behindTls = behindTls;
  }

  /**
   * The routes.
   *
   * @param behindTls whether the service is called over https
   */
  static List<Route> of(Studios studios, boolean behindTls) {
    CalendarRoutes routes = new CalendarRoutes(studios, behindTls);
    return List.of(
        new Route(
            operation(
                    "GET",
                    PATH,
                    "readCalendarAddress",
                    "Whether there is a calendar address.",
                    "The address itself is told only when it is made.")
                .answering(Answer.of(Status.OK, "Since when.", Shape.of(CalendarNow.class))),
            routes::read),
        new Route(
            operation(
                    "POST",
                    PATH,
                    "createCalendarAddress",
                    "Make a calendar address, or another in its place.",
                    "Whoever knows it reads the plan in use, and nothing else, without opening the"
                        + " studio. The one before shows nothing any more.")
                .answering(
                    Answer.of(
                        Status.CREATED,
                        "The address.",
                        Shape.of(CalendarAddress.class),
                        "Location")),
            routes::create),
        new Route(
            operation("DELETE", PATH, "removeCalendarAddress", "End the calendar address.", "Now.")
                .answering(Answer.empty(Status.DONE, "It shows nothing any more.")),
            routes::remove),
        new Route(
            operation(
                    "GET",
                    READ + "{secret}",
                    "subscribeCalendar",
                    "The plan in use for a calendar program.",
                    "RFC 5545, as at /api/calendar.ics, with no session. Times are UTC.")
                .toAnybody()
                .with(Parameter.path("secret", "The end of the address.", "0kX….ics"))
                .with(PaperRoutes.PERSON)
                .answering(
                    Answer.of(Status.OK, "The file.", new Shape.Text("text/calendar"), "ETag")),
            routes::subscribe));
  }

  private static Operation operation(
      String method, String path, String id, String summary, String text) {
    return Operation.of(method, path, id, TOPIC, summary, text);
  }

  private Reply read(Call call) {
    String studio = call.studio().studio().id();
    return Reply.json(
        Status.OK, Message.write(new CalendarNow(studios.calendarSecretSince(studio))));
  }

  private Reply create(Call call) {
    byte[] bytes = new byte[SECRET_BYTES];
    random.nextBytes(bytes);
    String end = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes) + ".ics";
    studios.setCalendarSecret(call.studio().studio().id(), Optional.of(Etag.sha256(end)));
    String place = READ + end;
    String address = (behindTls ? "https" : "http") + "://" + call.host() + place;
    return Reply.json(Status.CREATED, Message.write(new CalendarAddress(address)))
        .with("Location", place);
  }

  private Reply remove(Call call) {
    studios.setCalendarSecret(call.studio().studio().id(), Optional.empty());
    return Reply.empty(Status.DONE);
  }

  private Reply subscribe(Call call) {
    StudioStore studio =
        studios
            .ofCalendarSecret(Etag.sha256(call.path("secret")))
            .orElseThrow(() -> Refusal.notThere("such calendar"));
    return PaperRoutes.calendar(call, studio, PresentPlan.inUseOf(studio), PresentPlan.IN_USE);
  }
}
