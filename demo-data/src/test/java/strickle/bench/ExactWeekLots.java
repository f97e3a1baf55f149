package strickle.bench;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Which runs share a lot, how long its pour takes, and what it may hold. */
final class ExactWeekLots {

  /** Whether run q is in the lot that run r leads; null where it cannot be. */
  final Literal[][] joins;

  /** Castings of run q in the lot that run r leads; null where there can be none. */
  private final IntVar[][] parts;

  private final ExactWeekModel week;
  private final CpModel model;
  private final List<ExactWeekRun.Place> places = new ArrayList<>();

  ExactWeekLots(ExactWeekModel week) {
    this.week = week;
    this.model = week.model;
    for (ExactWeekKind kind : week.kinds) {
      for (int turn = 0; turn < kind.castings(); turn++) {
        places.add(new ExactWeekRun.Place(places.size(), kind, turn));
      }
    }
    joins = new Literal[places.size()][places.size()];
    parts = new IntVar[places.size()][places.size()];
    for (ExactWeekRun.Place leader : places) {
      places.stream().filter(run -> canJoin(leader, run)).forEach(run -> addJoin(leader, run));
    }
  }

  /** Every run there may be, in the order of their numbers. */
  List<ExactWeekRun.Place> places() {
    return places;
  }

  private static boolean canJoin(ExactWeekRun.Place leader, ExactWeekRun.Place run) {
    return leader.number() == run.number()
        || (leader.number() < run.number()
            && !leader.kind().equals(run.kind())
            && leader.kind().mix().equals(run.kind().mix()));
  }

  private void addJoin(ExactWeekRun.Place leader, ExactWeekRun.Place run) {
    String name = run.name() + " with " + leader.name();
    Literal joins = model.newBoolVar(name);
    IntVar part = model.newIntVar(0, run.kind().mostInRun(), name + " castings");
    model.addLessOrEqual(part, LinearExpr.term(joins, run.kind().mostInRun()));
    model.addGreaterOrEqual(part, joins);
    this.joins[leader.number()][run.number()] = joins;
    this.parts[leader.number()][run.number()] = part;
  }

  /** Whether a run is in the lot that another leads. */
  boolean isJoined(ExactWeekRun leader, ExactWeekRun run, ExactWeekSearch found) {
    Literal joins = this.joins[leader.number][run.number];
    return joins != null && found.isTrue(joins);
  }

  private List<ExactWeekRun.Place> members(ExactWeekRun.Place leader) {
    return places.stream().filter(run -> joins[leader.number()][run.number()] != null).toList();
  }

  private List<ExactWeekRun.Place> leaders(ExactWeekRun.Place run) {
    return places.stream().filter(one -> joins[one.number()][run.number()] != null).toList();
  }

  /** The pour of the lot that a run leads. */
  ExactWeekTask pour(ExactWeekRun.Place leader) {
    ExactWeekReach reach = week.reach(leader.kind());
    List<Integer> everybody = IntStream.range(0, week.calendars.size()).boxed().toList();
    ExactWeekTask.Room room =
        new ExactWeekTask.Room(everybody, false, reach.earliestStart[0], reach.latestEnd[0]);
    Literal leads = joins[leader.number()][leader.number()];
    String name = leader.name() + "/pour";
    return new ExactWeekTask(model, week.calendars, name, leads, minutes(leader, leads), room);
  }

  private ExactWeekTask.Minutes minutes(ExactWeekRun.Place leader, Literal leads) {
    int least = leader.kind().lotMinutes() + leader.kind().fillMinutes();
    if (members(leader).size() == 1 && leader.kind().mostInRun() == 1) {
      return new ExactWeekTask.Minutes(LinearExpr.constant(least), least, least);
    }
    LinearExprBuilder sum = LinearExpr.newBuilder().add(leader.kind().lotMinutes());
    for (ExactWeekRun.Place run : members(leader)) {
      sum.addTerm(parts[leader.number()][run.number()], run.kind().fillMinutes());
    }
    int most = most(leader);
    IntVar minutes = model.newIntVar(least, most, leader.name() + " pour minutes");
    model.addEquality(minutes, sum.build()).onlyEnforceIf(leads);
    return new ExactWeekTask.Minutes(minutes, least, most);
  }

  /** The most minutes the pour can take: all that could join it, and no longer than a window. */
  private int most(ExactWeekRun.Place leader) {
    int fill =
        members(leader).stream()
            .mapToInt(run -> run.kind().mostInRun() * run.kind().fillMinutes())
            .sum();
    int window =
        week.calendars.stream()
            .flatMapToInt(
                calendar ->
                    IntStream.range(0, calendar.windows())
                        .map(i -> calendar.closes(i) - calendar.opens(i)))
            .max()
            .orElse(0);
    return Math.min(leader.kind().lotMinutes() + fill, window);
  }

  /** When a run's lot is poured and its set begins: its own pour's if it can be in no other. */
  ExactWeekRun.Poured poured(ExactWeekRun.Place run, ExactWeekTask own) {
    int wash = run.kind().mix().washMinutes();
    if (leaders(run).size() == 1) {
      return new ExactWeekRun.Poured(own.start, LinearExpr.affine(own.end, 1, -wash));
    }
    int latest = Math.max(0, week.reach(run.kind()).latestEnd[0]);
    IntVar start = model.newIntVar(0, latest, run.name() + " poured");
    IntVar set = model.newIntVar(0, latest, run.name() + " set");
    return new ExactWeekRun.Poured(start, set);
  }

  /** Every run present is in one lot, and what is in a lot keeps its limits. */
  void tie() {
    for (ExactWeekRun run : week.runs) {
      ExactWeekRun.Place place = places.get(run.number);
      List<Literal> choice = new ArrayList<>(List.of(run.present.not()));
      LinearExprBuilder castings = LinearExpr.newBuilder();
      for (ExactWeekRun.Place leader : leaders(place)) {
        choice.add(joins[leader.number()][run.number]);
        castings.add(parts[leader.number()][run.number]);
        tie(run, week.runs.get(leader.number()));
      }
      model.addExactlyOne(choice);
      model.addEquality(run.castings, castings.build());
      addLimits(place);
    }
  }

  private void tie(ExactWeekRun run, ExactWeekRun leader) {
    Literal joins = this.joins[leader.number][run.number];
    model.addImplication(joins, leader.pour.present);
    if (leaders(places.get(run.number)).size() > 1) {
      LinearArgument set = LinearExpr.affine(leader.pour.end, 1, -run.kind.mix().washMinutes());
      model.addEquality(run.pourStart, leader.pour.start).onlyEnforceIf(joins);
      model.addEquality(run.setStart, set).onlyEnforceIf(joins);
    }
  }

  private void addLimits(ExactWeekRun.Place leader) {
    LinearExprBuilder pouring = LinearExpr.newBuilder();
    LinearExprBuilder micrograms = LinearExpr.newBuilder();
    int castings = 0;
    for (ExactWeekRun.Place run : members(leader)) {
      IntVar part = parts[leader.number()][run.number()];
      pouring.addTerm(part, run.kind().mould().pourMinutes());
      micrograms.addTerm(part, run.kind().microgramsEach());
      castings += run.kind().mostInRun();
    }
    model.addLessOrEqual(pouring.build(), leader.kind().mix().workingMinutes());
    model.addLessOrEqual(micrograms.build(), ExactWeekBook.limitMicrograms(week.book, castings));
    for (ExactWeekKind kind : week.kinds) {
      List<Literal> ofKind =
          members(leader).stream()
              .filter(run -> run.kind().equals(kind))
              .map(run -> joins[leader.number()][run.number()])
              .toList();
      if (ofKind.size() > 1) {
        model.addAtMostOne(ofKind);
      }
    }
  }
}
