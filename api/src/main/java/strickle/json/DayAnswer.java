package strickle.json;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import strickle.book.Book;
import strickle.book.Person;
import strickle.plan.Lot;
import strickle.plan.Plan;
import strickle.plan.Ready;
import strickle.plan.Task;
import strickle.plan.TaskKind;
import strickle.safety.Cautions;
import strickle.safety.RoomAssumption;
import strickle.safety.RoomDays;

/**
 * What there is to do in a plan, day by day ({@code strickle-days/1}): the day sheets as data.
 *
 * @param days in order; those on which somebody does something or something becomes ready
 * @param cautions what to be careful of in all of it, each once
 * @param follow what to follow besides
 */
public record DayAnswer(List<Day> days, List<CautionAnswer.One> cautions, String follow) {

  /** The word of its format. */
  public static final String FORMAT = "strickle-days/1";

  /**
   * One day.
   *
   * @param date the studio's date
   * @param people who does something, in the order of the book
   * @param ready what becomes ready, by time
   * @param room what the room does to what is poured and coated that day
   */
  public record Day(
      LocalDate date, List<Hands> people, List<ReadyRun> ready, List<RoomAnswer.Day> room) {}

  /**
   * What somebody does that day.
   *
   * @param person their id
   * @param name their name
   * @param tasks by time
   */
  public record Hands(String person, String name, List<Doing> tasks) {}

  /**
   * A stretch of a task.
   *
   * @param task its id
   * @param kind pour, demould or step
   * @param what it in the maker's words
   * @param lot the lot it belongs to
   * @param run the run, for a demould or a step
   * @param step which step of the route, from 1, for a step
   * @param start when this stretch begins
   * @param end when it ends
   * @param part which stretch of the task it is, from 1
   * @param parts how many there are
   * @param begun whether somebody is at it
   * @param done whether it is over
   * @param runs what it is about
   * @param card what to weigh, for a pour
   */
  public record Doing(
      String task,
      TaskKind kind,
      String what,
      String lot,
      Optional<String> run,
      OptionalInt step,
      OffsetDateTime start,
      OffsetDateTime end,
      int part,
      int parts,
      boolean begun,
      boolean done,
      List<RunPart> runs,
      Optional<Card> card) {}

  /**
   * A run in a task.
   *
   * @param run its id
   * @param piece the piece's id
   * @param name the piece's name
   * @param pieces how many pieces
   * @param castings how many castings
   * @param forms the units of forms they are in
   * @param ballastGramsEach to lay on the core of each casting; missing without a core
   * @param setUntil until when it sets; missing when it does not
   */
  public record RunPart(
      String run,
      String piece,
      String name,
      int pieces,
      int castings,
      List<FormUnits> forms,
      OptionalLong ballastGramsEach,
      Optional<OffsetDateTime> setUntil) {}

  /** Units of a form, by its id and name. */
  public record FormUnits(String form, String name, List<Integer> units) {}

  /**
   * What to weigh for a lot.
   *
   * @param lot its id
   * @param mix the mix's id
   * @param name the mix's name
   * @param workingMinutes how long it can be worked
   * @param scaleStepGrams what the weights are rounded to
   * @param weighOut each material, and the water
   * @param wetGrams all together
   */
  public record Card(
      String lot,
      String mix,
      String name,
      int workingMinutes,
      double scaleStepGrams,
      List<ToWeigh> weighOut,
      double wetGrams) {}

  /** A material, by its id and name, or water. */
  public record ToWeigh(String material, String name, double grams) {}

  /** A run that becomes ready. */
  public record ReadyRun(String run, String piece, String name, int pieces, OffsetDateTime at) {}

  /**
   * The days of a plan.
   *
   * @param plan a valid plan of this book; it may be under way
   * @param day only this one, also when nothing is to do; nothing for all
   * @param person only this one, in the book; nothing for everybody
   */
  public static DayAnswer of(
      Book book, Plan plan, Optional<LocalDate> day, Optional<String> person) {
    DayParts parts = new DayParts(book, plan);
    Set<LocalDate> dates = day.map(Set::of).orElseGet(() -> dates(parts, plan, person));
    List<RoomAnswer.Day> room =
        RoomAnswer.of(0, RoomDays.of(book, plan, RoomAssumption.usual()), List.of()).days();
    List<Day> days = dates.stream().map(date -> day(book, parts, room, date, person)).toList();
    Set<String> lots =
        days.stream()
            .flatMap(one -> one.people().stream())
            .flatMap(hands -> hands.tasks().stream())
            .map(Doing::lot)
            .collect(Collectors.toSet());
    List<Lot> named = plan.lots().stream().filter(lot -> lots.contains(lot.id())).toList();
    CautionAnswer care = CautionAnswer.of(Cautions.of(book, plan.withLots(named)));
    return new DayAnswer(days, care.cautions(), care.follow());
  }

  private static Set<LocalDate> dates(DayParts parts, Plan plan, Optional<String> person) {
    Set<LocalDate> dates = new TreeSet<>();
    for (Task task : plan.tasks()) {
      if (person.stream().allMatch(task.person()::equals)) {
        task.spells().forEach(spell -> dates.add(parts.date(spell.start())));
      }
    }
    if (person.isEmpty()) {
      plan.ready().stream().map(Ready::at).map(parts::date).forEach(dates::add);
    }
    return dates;
  }

  private static Day day(
      Book book,
      DayParts parts,
      List<RoomAnswer.Day> room,
      LocalDate date,
      Optional<String> person) {
    List<Hands> hands = new ArrayList<>();
    for (Person one : book.people()) {
      List<Doing> tasks = parts.tasks(one.id(), date);
      if (!tasks.isEmpty() && person.stream().allMatch(one.id()::equals)) {
        hands.add(new Hands(one.id(), one.name(), tasks));
      }
    }
    return new Day(
        date,
        hands,
        parts.ready(date),
        room.stream().filter(one -> one.from().orElseThrow().toLocalDate().equals(date)).toList());
  }
}
