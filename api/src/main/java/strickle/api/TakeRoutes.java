package strickle.api;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import strickle.api.AnswerRoutes.ChangesWanted;
import strickle.api.AnswerRoutes.PromiseWanted;
import strickle.api.MoneyRoutes.FairWanted;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.json.BookParts;
import strickle.json.ItemFile;
import strickle.json.PlanFile;
import strickle.json.contract.Answer;
import strickle.json.contract.Operation;
import strickle.json.contract.Shape;
import strickle.plan.Plan;
import strickle.plan.learn.Learning;
import strickle.plan.learn.Revision;
import strickle.plan.promise.Latest;
import strickle.plan.promise.Offer;
import strickle.plan.promise.Promise;
import strickle.plan.whatif.Together;
import strickle.plan.whatif.Tried;
import strickle.price.fair.FairAnswer;
import strickle.store.Entries;
import strickle.store.Kept;

/**
 * Taking over what was answered: the same question asked again of the same book and plan has the
 * same answer, so it is worked out once more and put in, in one change that can be undone.
 */
final class TakeRoutes {

  private static final String TOPIC = "Answers";
  private static final Shape REVISION = Shape.of(JournalRoutes.RevisionNow.class);

  /** Which of the dates of a promise. */
  public enum Date {
    /** The one that makes no present order later. */
    KEPT,
    /** The one with every planned task left as it is. */
    STILL,
    /** The one for which others slip. */
    PRESSED,
    /** The one that was asked for. */
    LATEST
  }

  /**
   * A promise that is made.
   *
   * @param date which of its dates
   * @param promise as it was asked for
   */
  public record PromiseTaken(Date date, PromiseWanted promise) {}

  /**
   * A fair's build that is wanted.
   *
   * @param build as it was asked for
   * @param usePlan whether the plan that has it ready in time becomes the plan in use too
   */
  public record FairTaken(FairWanted build, boolean usePlan) {}

  private final Thinking thinking;
  private final Clock clock;

  private TakeRoutes(Thinking thinking, Clock clock) {
    this.thinking = thinking;
    this.clock = clock;
  }

  /** The routes. */
  static List<Route> of(Thinking thinking, Clock clock) {
    TakeRoutes routes = new TakeRoutes(thinking, clock);
    return List.of(
        route(
            "promise",
            "takePromise",
            "Promise it: the new order into the book, and its plan into use.",
            Shape.of(PromiseTaken.class),
            "{\"date\": \"kept\", \"promise\": {\"piece\": \"tray-slate\", \"quantity\": 2}}",
            routes::promise),
        route(
            "what-if",
            "takeChanges",
            "Make changes: all of them into the book, and the plan with them into use.",
            Shape.of(ChangesWanted.class),
            "{\"changes\": [\"form:tub-a+1\"], \"schedules\": 500}",
            routes::whatIf),
        route(
            "fair",
            "takeBuild",
            "Bring it: a fair's build into the book, as orders of the kind \"fair\".",
            Shape.of(FairTaken.class),
            "{\"build\": {\"fair\": \"spring-fair\"}, \"usePlan\": true}",
            routes::fair),
        route(
            "learn",
            "takeLessons",
            "Take lessons over: every number that is offered into the book.",
            Shape.of(BenchRoutes.LearnWanted.class),
            "{}",
            TakeRoutes::learn));
  }

  private static Route route(
      String path, String id, String summary, Shape taken, String example, Route.Work work) {
    Operation operation =
        Operation.of(
                "POST",
                "/api/" + path + "/take",
                id,
                TOPIC,
                summary,
                "Worked out once more, of the book and the plan in use as they are, and put in as"
                    + " one change, which can be undone.")
            .with(Matching.PARAMETER)
            .with(Who.PARAMETER)
            .taking(taken, example)
            .answering(Answer.of(Status.OK, "It is in.", REVISION, "ETag"));
    return new Route(operation, work);
  }

  private Reply promise(Call call) {
    PromiseTaken taken = call.body(PromiseTaken.class);
    Kept now = seen(call);
    PresentPlan present = PresentPlan.inUseUpToDate(call);
    Promise promise = AnswerRoutes.promised(thinking, present, taken.promise());
    Offer offer = offer(promise, taken.date()).orElseThrow(() -> noOffer(taken.date()));
    return put(call, now, "order " + promise.order() + " promised", offer.book(), offer.plan());
  }

  private static Optional<Offer> offer(Promise promise, Date date) {
    return switch (date) {
      case KEPT -> promise.kept();
      case STILL -> promise.still();
      case PRESSED -> promise.pressed();
      case LATEST -> promise.latest().flatMap(Latest::offer);
    };
  }

  private static Faulty noOffer(Date date) {
    String found = '"' + date.name().toLowerCase(Locale.ROOT) + '"';
    return new Faulty(List.of(new Fault("$.date", found, "a date that the promise offers")));
  }

  private Reply whatIf(Call call) {
    ChangesWanted wanted = call.body(ChangesWanted.class);
    if (wanted.changes().isEmpty()) {
      throw new Faulty(List.of(new Fault("$.changes", "nothing", "at least one change")));
    }
    if (wanted.seconds().isPresent()) {
      String right = "schedules: with them the same question has the same answer";
      throw new Faulty(List.of(new Fault("$.seconds", "a time", right)));
    }
    Kept now = seen(call);
    PresentPlan present = PresentPlan.inUseUpToDate(call);
    List<Tried> tried = AnswerRoutes.tried(thinking, present, wanted).tried();
    Tried all =
        tried.stream()
            .filter(one -> tried.size() == 1 || one.change() instanceof Together)
            .findFirst()
            .orElseThrow();
    return put(call, now, "changes made that were tried", all.book(), all.plan());
  }

  private Reply fair(Call call) {
    FairTaken taken = call.body(FairTaken.class);
    Kept now = seen(call);
    FairAnswer answer = MoneyRoutes.built(thinking, clock, now.book(), taken.build());
    String what = "a build for fair " + taken.build().fair() + " taken";
    return taken.usePlan()
        ? put(call, now, what, answer.book(), answer.plan())
        : put(call, now, what, withBook(now, answer.book()));
  }

  private static Reply learn(Call call) {
    BenchRoutes.LearnWanted wanted = call.body(BenchRoutes.LearnWanted.class);
    Kept now = seen(call);
    Book book = now.book();
    Book learned = Revision.of(book, Learning.of(book, BenchRoutes.logs(call, wanted)));
    return put(call, now, "lessons taken over", withBook(now, learned));
  }

  // Who has not seen the book as it is does not know what they take over.
  private static Kept seen(Call call) {
    Kept now = call.studio().now();
    Matching.check(call, call.tag(now), () -> BookRoutes.since(call));
    return now;
  }

  private static Entries withBook(Kept now, Book book) {
    List<String> lists = new ArrayList<>(BookParts.LISTS);
    lists.add(BookParts.STUDIO);
    return now.entries().replacing(lists, BookParts.of(book));
  }

  private static Reply put(Call call, Kept now, String what, Book book, Plan plan) {
    String body = ItemFile.compact(PlanFile.write(plan));
    return put(
        call, now, what, withBook(now, book).with(PresentPlan.COLLECTION, PresentPlan.ID, body));
  }

  private static Reply put(Call call, Kept now, String what, Entries there) {
    Kept kept =
        call.studio()
            .change(
                call.by(what),
                present -> {
                  mustBeAsItWas(call, now, present);
                  return there;
                });
    return JournalRoutes.revision(call, kept);
  }

  // Also for who takes any book: what was worked out is of the one that was there.
  private static void mustBeAsItWas(Call call, Kept now, Kept present) {
    if (!now.stand().equals(present.stand())) {
      throw new Refusal(
          Problem.stale(
              "It was changed by somebody else meanwhile; its ETag is "
                  + call.tag(present)
                  + " now.",
              List.of()));
    }
  }
}
