package strickle.api;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import strickle.book.Book;
import strickle.cure.Evaporation;
import strickle.json.AnswerFile;
import strickle.json.CautionAnswer;
import strickle.json.DryingAnswer;
import strickle.json.LearnFile;
import strickle.json.Message;
import strickle.json.RoomAnswer;
import strickle.json.contract.Answer;
import strickle.json.contract.Operation;
import strickle.json.contract.Parameter;
import strickle.json.contract.Shape;
import strickle.plan.learn.Learning;
import strickle.plan.learn.Log;
import strickle.plan.learn.Used;
import strickle.plan.replan.Happening;
import strickle.safety.Cautions;
import strickle.safety.RoomAssumption;
import strickle.safety.RoomDay;
import strickle.safety.RoomDays;
import strickle.store.Entry;

/** What is worked out at the bench: batches, the room, cautions, drying, and what weeks teach. */
final class BenchRoutes {

  private static final String TOPIC = "The bench";
  private static final String WARM = "a temperature in °C";
  private static final double COLDEST_PIECE_C = -45;
  private static final double WARMEST_PIECE_C = 100;

  /**
   * Records to learn from.
   *
   * @param happened what has happened to the plan asked about; what is noted at /api/progress
   *     without it
   * @param used what was really weighed out for it
   * @param before weeks before that one, each with its plan; none without them
   */
  public record LearnWanted(List<Happening> happened, List<Used> used, List<Week> before) {}

  /**
   * A recorded week.
   *
   * @param plan the id of its plan
   * @param happened what happened to it
   * @param used what was really weighed out
   */
  public record Week(String plan, List<Happening> happened, List<Used> used) {}

  private BenchRoutes() {}

  /** The routes. */
  static List<Route> all() {
    return List.of(
        BatchRoutes.batch(),
        new Route(
            operation(
                    "GET",
                    "/api/room",
                    "readRoom",
                    "What the room does to pours and coats.",
                    "For every climate of the book, or for the days on which a plan pours or"
                        + " coats.")
                .with(PresentPlan.OPTIONAL)
                .with(
                    Parameter.query(
                        "wind",
                        Parameter.Kind.NUMBER,
                        "Wind half a metre above the pour, 0 to 100 km/h; 0 without it.",
                        "10"))
                .with(
                    Parameter.query(
                        "mixC",
                        Parameter.Kind.NUMBER,
                        "The mix as it is poured, 0 to 60 °C; as warm as the air without it.",
                        "18"))
                .with(
                    Parameter.query(
                        "pieceC",
                        Parameter.Kind.NUMBER,
                        "A piece that is to be coated, -45 to 100 °C; as cold as the room was in"
                            + " the last 12 hours without it.",
                        "14"))
                .answering(
                    Answer.of(
                        Status.OK,
                        "Day by day.",
                        new Shape.Of(RoomAnswer.class, RoomAnswer.FORMAT))),
            BenchRoutes::room),
        new Route(
            operation(
                    "GET",
                    "/api/cautions",
                    "readCautions",
                    "What to be careful of.",
                    "Each once, with what it is about and its source. A reminder, not advice.")
                .with(PresentPlan.OPTIONAL)
                .answering(
                    Answer.of(
                        Status.OK,
                        "The cautions.",
                        new Shape.Of(CautionAnswer.class, CautionAnswer.FORMAT))),
            BenchRoutes::cautions),
        new Route(
            operation(
                    "GET",
                    "/api/drying/{id}/fit",
                    "fitDrying",
                    "When a piece has dried far enough.",
                    "From its weights, each figure with a band that holds in 90 of 100 cases.")
                .with(Parameter.path("id", "Which log.", "planter"))
                .answering(
                    Answer.of(
                        Status.OK,
                        "The fit.",
                        new Shape.Of(DryingAnswer.class, DryingAnswer.FORMAT))),
            BenchRoutes::drying),
        new Route(
            operation(
                    "POST",
                    "/api/learn",
                    "learn",
                    "What a recorded week says of the book.",
                    "Times, good shares and what was weighed out against the book. Nothing is"
                        + " changed.")
                .with(PresentPlan.PARAMETER)
                .taking(Shape.of(LearnWanted.class), "{}")
                .answering(Answer.of(Status.OK, "The lessons.", LearnFile.SHAPE)),
            BenchRoutes::learn));
  }

  private static Operation operation(
      String method, String path, String id, String summary, String text) {
    return Operation.of(method, path, id, TOPIC, summary, text);
  }

  private static Reply room(Call call) {
    double most = Evaporation.MOST_WIND_KM_PER_HOUR;
    double wind = within(call, "wind", 0, most, "a speed in km/h").orElse(0);
    RoomAssumption assumption =
        new RoomAssumption(
            wind,
            within(call, "mixC", Evaporation.COLDEST_C, Evaporation.WARMEST_C, WARM),
            within(call, "pieceC", COLDEST_PIECE_C, WARMEST_PIECE_C, WARM));
    Optional<PresentPlan> present = PresentPlan.ifAsked(call);
    List<RoomDay> days =
        present
            .map(one -> RoomDays.of(one.book(), one.plan(), assumption))
            .orElseGet(() -> RoomDays.of(call.studio().now().book(), assumption));
    List<LocalDate> unknown =
        present.map(one -> RoomDays.unknown(one.book(), one.plan())).orElse(List.of());
    return Reply.json(
        Status.OK, AnswerFile.write(RoomAnswer.FORMAT, RoomAnswer.of(wind, days, unknown)));
  }

  private static OptionalDouble within(
      Call call, String name, double least, double most, String what) {
    Optional<Double> given = call.decimal(name).map(Number::doubleValue);
    if (given.isPresent() && !(least <= given.get() && given.get() <= most)) {
      String right = what + " from " + Ranges.shown(least) + " to " + Ranges.shown(most);
      throw Refusal.malformed(name, Ranges.shown(given.get()), right);
    }
    return given.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
  }

  private static Reply cautions(Call call) {
    CautionAnswer answer =
        CautionAnswer.of(
            PresentPlan.ifAsked(call)
                .map(present -> Cautions.of(present.book(), present.plan()))
                .orElseGet(() -> Cautions.of(call.studio().now().book())));
    return Reply.json(Status.OK, AnswerFile.write(CautionAnswer.FORMAT, answer));
  }

  private static Reply drying(Call call) {
    String id = call.path("id");
    DryingNote note =
        call.studio()
            .now()
            .entries()
            .find(Collection.DRYING.name(), id)
            .map(entry -> Message.parse(entry.body(), DryingNote.class))
            .orElseThrow(() -> Refusal.notThere("drying log " + id));
    ZoneId zone = call.studio().now().book().studio().timeZone();
    DryingAnswer answer = Thinking.told(() -> note.wanted().answer(zone));
    return Reply.json(Status.OK, AnswerFile.write(DryingAnswer.FORMAT, answer));
  }

  private static Reply learn(Call call) {
    LearnWanted wanted = call.body(LearnWanted.class);
    Book book = call.studio().now().book();
    return Reply.json(Status.OK, LearnFile.write(Learning.of(book, logs(call, wanted))));
  }

  /** The records of weeks with their plans, the first week first. */
  static List<Log> logs(Call call, LearnWanted wanted) {
    List<Log> logs = new ArrayList<>();
    for (Week week : wanted.before()) {
      logs.add(new Log(PresentPlan.any(call, week.plan()), week.happened(), week.used()));
    }
    String name = call.query("plan").orElse(PresentPlan.IN_USE);
    List<Happening> happened = wanted.happened().isEmpty() ? noted(call) : wanted.happened();
    logs.add(new Log(PresentPlan.any(call, name), happened, wanted.used()));
    return logs;
  }

  /** What is noted to have happened. */
  static List<Happening> noted(Call call) {
    return call.studio().now().entries().list(Collection.PROGRESS.name()).stream()
        .map(Entry::body)
        .map(body -> Message.parse(body, Happening.class))
        .toList();
  }
}
