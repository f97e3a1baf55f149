package strickle.bench;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.Literal;
import com.google.ortools.util.Domain;
import java.util.ArrayList;
import java.util.List;
import strickle.shop.Calendar;

/**
 * One attended task in the model: when it starts and ends on the minute line, and for each person
 * who may do it at which of that person's working minutes, where a task that pauses over closed
 * hours is one unbroken stretch.
 */
final class ExactWeekTask {

  /**
   * How long a task takes.
   *
   * @param expression its minutes while it is present
   * @param least the least they can be
   * @param most the most they can be
   */
  record Minutes(LinearArgument expression, int least, int most) {

    boolean fixed() {
      return least == most;
    }
  }

  /**
   * Where a task may lie.
   *
   * @param people who may do it, as places among the calendars
   * @param pauses whether it may go on in the next window
   * @param earliest no start before this minute
   * @param latest no end after this minute
   */
  record Room(List<Integer> people, boolean pauses, int earliest, int latest) {}

  /**
   * The task as done by one person.
   *
   * @param person a place among the calendars
   * @param by whether this person does it
   * @param worked the working minute it starts at
   * @param interval its working minutes
   */
  record Hand(int person, Literal by, IntVar worked, IntervalVar interval) {}

  final Literal present;
  final Minutes minutes;
  final IntVar start;
  final IntVar end;
  final List<Hand> hands = new ArrayList<>();

  private final CpModel model;
  private final String name;
  private final Room room;

  ExactWeekTask(
      CpModel model,
      List<Calendar> calendars,
      String name,
      Literal present,
      Minutes minutes,
      Room room) {
    this.model = model;
    this.name = name;
    this.present = present;
    this.minutes = minutes;
    this.room = room;
    int latest = Math.max(room.latest(), room.earliest() + minutes.least());
    start = model.newIntVar(room.earliest(), latest - minutes.least(), name + " start");
    end = model.newIntVar(room.earliest() + minutes.least(), latest, name + " end");
    addHands(calendars);
    LinearExpr worked = LinearExpr.newBuilder().add(start).add(minutes.expression()).build();
    if (room.pauses()) {
      model.addGreaterOrEqual(end, worked).onlyEnforceIf(present);
    } else {
      model.addEquality(end, worked).onlyEnforceIf(present);
    }
  }

  private void addHands(List<Calendar> calendars) {
    List<Integer> able =
        room.people().stream().filter(person -> isAble(calendars.get(person))).toList();
    List<Literal> choice = new ArrayList<>(List.of(present.not()));
    for (int person : able) {
      Literal by = able.size() == 1 ? present : model.newBoolVar(name + " by " + person);
      choice.add(by);
      hands.add(hand(person, by, calendars.get(person)));
    }
    if (able.size() != 1) {
      model.addExactlyOne(choice);
    }
  }

  private boolean isAble(Calendar calendar) {
    int open = calendar.worked(Math.max(0, room.latest())) - calendar.worked(room.earliest());
    return open >= minutes.least() && !startWindows(calendar).isEmpty();
  }

  private Hand hand(int person, Literal by, Calendar calendar) {
    int first = calendar.worked(room.earliest());
    int last = calendar.worked(Math.max(0, room.latest()));
    IntVar worked = model.newIntVar(first, last - minutes.least(), name + " worked " + person);
    LinearArgument workedEnd =
        minutes.fixed()
            ? LinearExpr.affine(worked, 1, minutes.least())
            : model.newIntVar(first + minutes.least(), last, name + " worked by " + person);
    IntervalVar interval =
        minutes.fixed()
            ? model.newOptionalFixedSizeIntervalVar(worked, minutes.least(), by, name)
            : model.newOptionalIntervalVar(worked, minutes.expression(), workedEnd, by, name);
    addStartWindows(calendar, by, worked);
    if (room.pauses()) {
      addEndWindows(calendar, by, workedEnd);
    }
    return new Hand(person, by, worked, interval);
  }

  private void addStartWindows(Calendar calendar, Literal by, IntVar worked) {
    List<Literal> choice = new ArrayList<>(List.of(by.not()));
    List<Integer> windows = startWindows(calendar);
    for (int window : windows) {
      Literal in = windows.size() == 1 ? by : model.newBoolVar(name + " starts in " + window);
      choice.add(in);
      int closed = calendar.opens(window) - calendar.worked(calendar.opens(window));
      model.addEquality(start, LinearExpr.affine(worked, 1, closed)).onlyEnforceIf(in);
      within(start, calendar.opens(window), calendar.closes(window) - 1, in);
      if (!room.pauses()) {
        within(end, calendar.opens(window) + 1, calendar.closes(window), in);
      }
    }
    model.addExactlyOne(choice);
  }

  private void addEndWindows(Calendar calendar, Literal by, LinearArgument workedEnd) {
    List<Literal> choice = new ArrayList<>(List.of(by.not()));
    List<Integer> windows = endWindows(calendar);
    for (int window : windows) {
      Literal in = windows.size() == 1 ? by : model.newBoolVar(name + " ends in " + window);
      choice.add(in);
      int closed = calendar.opens(window) - calendar.worked(calendar.opens(window));
      LinearExpr there = LinearExpr.newBuilder().add(workedEnd).add(closed).build();
      model.addEquality(end, there).onlyEnforceIf(in);
      within(end, calendar.opens(window) + 1, calendar.closes(window), in);
    }
    model.addExactlyOne(choice);
  }

  private void within(IntVar minute, int first, int last, Literal in) {
    model.addLinearExpressionInDomain(minute, new Domain(first, last)).onlyEnforceIf(in);
  }

  /** Windows in which it can start in time, and if it may not pause be done as well. */
  private List<Integer> startWindows(Calendar calendar) {
    List<Integer> windows = new ArrayList<>();
    for (int window = 0; window < calendar.windows(); window++) {
      int opens = Math.max(calendar.opens(window), room.earliest());
      int closes = Math.min(calendar.closes(window), room.latest());
      if (opens + (room.pauses() ? 1 : minutes.least()) <= closes) {
        windows.add(window);
      }
    }
    return windows;
  }

  private List<Integer> endWindows(Calendar calendar) {
    List<Integer> windows = new ArrayList<>();
    int first = calendar.worked(room.earliest()) + minutes.least();
    int earliest = first <= calendar.workingMinutes() ? calendar.endOf(first) : Integer.MAX_VALUE;
    for (int window = 0; window < calendar.windows(); window++) {
      if (calendar.closes(window) >= earliest && calendar.opens(window) < room.latest()) {
        windows.add(window);
      }
    }
    return windows;
  }
}
