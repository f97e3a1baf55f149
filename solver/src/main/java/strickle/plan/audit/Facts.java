package strickle.plan.audit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import strickle.book.Book;
import strickle.book.Form;
import strickle.book.Mix;
import strickle.book.Mould;
import strickle.book.Piece;
import strickle.mix.CastingMass;
import strickle.mix.Recipe;
import strickle.plan.History;
import strickle.plan.Lot;
import strickle.plan.Plan;
import strickle.plan.Ready;
import strickle.plan.Run;
import strickle.plan.Task;
import strickle.plan.TaskKind;

/** Book and plan put side by side, so that every rule finds what it asks for by name. */
final class Facts {

  /** What a task is of: the pour of a lot, the demould of a run, a numbered step of a run. */
  private record Place(TaskKind kind, String of, int step) {

    static Place of(Task task) {
      return new Place(task.kind(), task.run().orElse(task.lot()), task.step().orElse(0));
    }
  }

  private final Book book;
  private final Plan plan;
  private final ZonedMinutes time;
  private final Map<String, Integer> formCounts;
  private final Map<String, Mix> mixes;
  private final Map<String, Piece> pieces;
  private final List<Stint> stints;
  private final Map<Place, List<Stint>> byPlace;
  private final Map<String, Recipe> recipes = new HashMap<>();
  private final Gaps gaps;
  private final List<Course> courses;
  private final Map<String, Long> stated;
  private final List<Service> services;

  private Facts(Book book, Plan plan) {
    this.book = book;
    this.plan = plan;
    time = new ZonedMinutes(book.studio().timeZone());
    formCounts = book.forms().stream().collect(Collectors.toMap(Form::id, Form::count));
    mixes = byId(book.mixes(), Mix::id);
    pieces = byId(book.pieces(), Piece::id);
    stints = plan.tasks().stream().map(Stint::of).toList();
    byPlace = stints.stream().collect(Collectors.groupingBy(stint -> Place.of(stint.task())));
    gaps = new Gaps(new WaitEnds(book.studio().climate(), time));
    courses = allCourses();
    stated =
        plan.ready().stream()
            .collect(
                Collectors.toMap(
                    Ready::run,
                    ready -> ZonedMinutes.minute(ready.at()),
                    (first, second) -> first));
    // Last, as the serving asks for the facts above.
    services = Serving.of(this);
  }

  static Facts of(Book book, Plan plan) {
    return new Facts(book, plan);
  }

  Book book() {
    return book;
  }

  Plan plan() {
    return plan;
  }

  ZonedMinutes time() {
    return time;
  }

  /** The minute before which nothing starts. */
  long from() {
    return ZonedMinutes.minute(plan.from());
  }

  /** A mix by a name that the plan gives. */
  Optional<Mix> mix(String id) {
    return Optional.ofNullable(mixes.get(id));
  }

  /** A piece by a name that the plan gives. */
  Optional<Piece> piece(String id) {
    return Optional.ofNullable(pieces.get(id));
  }

  /** How many units of a form there are; none of a form the book does not know. */
  int formCount(String id) {
    return formCounts.getOrDefault(id, 0);
  }

  /** The mix worked out by mass. */
  Recipe recipe(Mix mix) {
    return recipes.computeIfAbsent(mix.id(), id -> Recipe.of(mix, book::material));
  }

  /** Grams of wet mix that the castings of these runs take, waste included, not rounded. */
  double wetGrams(List<Course> courses) {
    return courses.stream().mapToDouble(this::wetGrams).sum();
  }

  private double wetGrams(Course course) {
    return course.run().castings() * CastingMass.wetGrams(course.mould(), recipe(course.mix()));
  }

  /** Every task. */
  List<Stint> stints() {
    return stints;
  }

  /** The tasks that say they pour this lot; there should be one. */
  List<Stint> pours(String lot) {
    return byPlace.getOrDefault(new Place(TaskKind.POUR, lot, 0), List.of());
  }

  /** The tasks that say they are this stage of a run (0 the demould); there should be one. */
  List<Stint> stages(String run, int number) {
    TaskKind kind = number == 0 ? TaskKind.DEMOULD : TaskKind.STEP;
    return byPlace.getOrDefault(new Place(kind, run, number), List.of());
  }

  /** Every run of a piece the book knows. */
  List<Course> courses() {
    return courses;
  }

  /** The runs of a lot whose piece the book knows. */
  List<Course> courses(Lot lot) {
    return lot.runs().stream().flatMap(run -> course(lot, run)).toList();
  }

  /** The waits the rules ask for. */
  Gaps gaps() {
    return gaps;
  }

  /**
   * The minute a run is ready: as its last task has it or, when that is not planned, as the plan
   * states it.
   */
  OptionalLong ready(Course course) {
    if (course.isLost()) {
      return OptionalLong.empty();
    }
    return gaps.finalDry(course)
        .map(gap -> OptionalLong.of(gap.to()))
        .orElseGet(() -> stated(course.run()));
  }

  /** What the plan says to have happened. */
  Optional<History> history() {
    return plan.history();
  }

  /** The minute before which nothing starts that has not begun. */
  long now() {
    return plan.history()
        .map(history -> Math.max(from(), ZonedMinutes.minute(history.now())))
        .orElse(from());
  }

  private OptionalLong stated(Run run) {
    Long ready = stated.get(run.id());
    return ready == null ? OptionalLong.empty() : OptionalLong.of(ready);
  }

  /** When the rules have each order of the book served. */
  List<Service> services() {
    return services;
  }

  private List<Course> allCourses() {
    List<Course> all = new ArrayList<>();
    plan.lots().forEach(lot -> all.addAll(courses(lot)));
    return List.copyOf(all);
  }

  private Stream<Course> course(Lot lot, Run run) {
    return piece(run.piece()).stream().map(piece -> course(lot, run, piece));
  }

  private Course course(Lot lot, Run run, Piece piece) {
    List<Optional<Stint>> stages =
        IntStream.rangeClosed(0, piece.route().size())
            .mapToObj(number -> stages(run.id(), number).stream().findFirst())
            .toList();
    Optional<Stint> pour = pours(lot.id()).stream().findFirst();
    Mould mould = book.mould(piece.mould());
    return new Course(lot, run, piece, mould, book.mix(piece.mix()), pour, stages);
  }

  private static <T> Map<String, T> byId(List<T> things, Function<T, String> id) {
    return things.stream().collect(Collectors.toMap(id, thing -> thing));
  }
}
