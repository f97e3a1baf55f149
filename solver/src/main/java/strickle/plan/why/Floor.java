package strickle.plan.why;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import strickle.book.Book;
import strickle.book.Person;
import strickle.cure.RoomPace;
import strickle.plan.Cover;
import strickle.shop.Calendar;

/**
 * The studio with the runs of a plan in it: who does what when, and what is taken. It does not
 * change; every alteration is another floor.
 */
final class Floor {

  private static final Calendar NEVER = Calendar.of(new int[0], new int[0]);

  private final Book book;
  private final Cover cover;
  private final Moments moments;
  private final RoomPace room;
  private final Map<String, Calendar> hours;

  /** Those who may do anything, whatever the book says: hands that somebody lends. */
  private final Set<String> helpers;

  private final Map<Thing, Integer> more;

  /** What is broken for a while. */
  private final Map<Thing, List<Usage.Lost>> lost;

  private final List<Course> courses;

  private final Map<String, Hands> hands = new HashMap<>();
  private final Map<Thing, Usage> usages = new HashMap<>();

  private Floor(
      Book book,
      Cover cover,
      Moments moments,
      RoomPace room,
      Map<String, Calendar> hours,
      Set<String> helpers,
      Map<Thing, Integer> more,
      Map<Thing, List<Usage.Lost>> lost,
      List<Course> courses) {
    this.book = book;
    this.cover = cover;
    this.moments = moments;
    this.room = room;
    this.hours = hours;
    this.helpers = helpers;
    this.more = more;
    this.lost = lost;
    this.courses = courses;
  }

  /** The floor of a plan; {@code hours} are everybody's, by id. */
  static Floor of(
      Book book, Cover cover, Moments moments, Map<String, Calendar> hours, List<Course> courses) {
    RoomPace room = RoomPace.of(book.studio().climate(), book.studio().timeZone());
    return new Floor(book, cover, moments, room, hours, Set.of(), Map.of(), Map.of(), courses);
  }

  Book book() {
    return book;
  }

  /** How many castings the orders of the plan are counted to need. */
  Cover cover() {
    return cover;
  }

  Moments moments() {
    return moments;
  }

  List<Course> courses() {
    return courses;
  }

  RoomPace room() {
    return room;
  }

  Map<String, Calendar> hours() {
    return hours;
  }

  /** The runs poured from the same lot as a run, without itself. */
  List<Course> companions(Course course) {
    return courses.stream()
        .filter(one -> one.lot().equals(course.lot()) && !one.is(course))
        .toList();
  }

  /** The minute a wait before a stage is over. */
  int over(Stage stage, int from) {
    if (stage.ages()) {
      return moments.minute(room.end(moments.instant(from), stage.waitHours()));
    }
    return from + Math.max(0, Stage.minutes(stage.waitHours()));
  }

  /** Everybody who may do a stage. */
  List<Hands> whoMay(Stage stage) {
    Stream<String> named =
        stage.by().isEmpty()
            ? book.people().stream().map(Person::id)
            : stage.by().stream().distinct();
    return Stream.concat(named, helpers.stream()).map(this::hands).toList();
  }

  Hands hands(String person) {
    return hands.computeIfAbsent(
        person, id -> new Hands(id, hours.getOrDefault(id, NEVER), errands(id)));
  }

  private List<Errand> errands(String person) {
    Set<String> poured = new LinkedHashSet<>();
    List<Errand> errands = new ArrayList<>();
    for (Course course : courses) {
      boolean first = poured.add(course.lot());
      for (int stage = first ? 0 : 1; stage < course.tasks().size(); stage++) {
        if (course.task(stage).person().equals(person)) {
          errands.add(new Errand(course, stage, course.task(stage)));
        }
      }
    }
    return errands;
  }

  Usage usage(Thing thing) {
    return usages.computeIfAbsent(
        thing, one -> new Usage(count(one), holdings(one), lost.getOrDefault(one, List.of())));
  }

  private int count(Thing thing) {
    int owned = thing.isForm() ? book.form(thing.id()).count() : book.station(thing.id()).places();
    return owned + more.getOrDefault(thing, 0);
  }

  private List<Usage.Holding> holdings(Thing thing) {
    List<Usage.Holding> holdings = new ArrayList<>();
    for (Course course : courses) {
      for (Need need : course.chain().needs()) {
        int from = need.from(course.tasks());
        int to = need.to(course.tasks(), course.ready());
        if (need.thing().equals(thing) && from < to) {
          holdings.add(new Usage.Holding(course, from, to, need.units()));
        }
      }
    }
    return holdings;
  }

  /** The floor without those runs. */
  Floor without(Predicate<Course> gone) {
    return with(courses.stream().filter(gone.negate()).toList());
  }

  /** The floor without a run. */
  Floor without(Course course) {
    return without(one -> one.is(course));
  }

  /** The floor with a run more. */
  Floor plus(Course course) {
    return with(Stream.concat(courses.stream(), Stream.of(course)).toList());
  }

  /** The floor with these runs and no others. */
  Floor with(List<Course> others) {
    return new Floor(book, cover, moments, room, hours, helpers, more, lost, others);
  }

  /** The floor with more of a thing. */
  Floor withMore(Thing thing, int units) {
    Map<Thing, Integer> grown = new HashMap<>(more);
    grown.merge(thing, units, Integer::sum);
    return new Floor(book, cover, moments, room, hours, helpers, grown, lost, courses);
  }

  /** The floor with something broken for a while. */
  Floor withLost(Thing thing, Usage.Lost some) {
    Map<Thing, List<Usage.Lost>> grown = new HashMap<>(lost);
    grown.merge(
        thing, List.of(some), (one, other) -> Stream.concat(one.stream(), other.stream()).toList());
    return new Floor(book, cover, moments, room, hours, helpers, more, grown, courses);
  }

  /** The floor with other hours for one person. */
  Floor withHours(String person, Calendar calendar) {
    Map<String, Calendar> changed = new LinkedHashMap<>(hours);
    changed.put(person, calendar);
    return new Floor(book, cover, moments, room, changed, helpers, more, lost, courses);
  }

  /** The floor with somebody more, who may do anything, in such hours. */
  Floor withHelper(String name, Calendar calendar) {
    Set<String> grown = new LinkedHashSet<>(helpers);
    grown.add(name);
    Floor open = withHours(name, calendar);
    return new Floor(book, cover, moments, room, open.hours, grown, more, lost, courses);
  }

  /** The floor in another room. */
  Floor withRoom(RoomPace otherRoom) {
    return new Floor(book, cover, moments, otherRoom, hours, helpers, more, lost, courses);
  }
}
