package strickle.bench;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CumulativeConstraint;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strickle.book.Form;
import strickle.book.Station;

/** What there is only so much of: people's hands, forms, places at stations. */
final class ExactWeekRoom {

  private final ExactWeekModel week;
  private final CpModel model;

  ExactWeekRoom(ExactWeekModel week) {
    this.week = week;
    this.model = week.model;
  }

  void add() {
    for (int person = 0; person < week.calendars.size(); person++) {
      model.addNoOverlap(work(person));
    }
    week.book.forms().forEach(this::addForm);
    week.book.stations().forEach(this::addStation);
  }

  private List<IntervalVar> work(int person) {
    List<IntervalVar> work = new ArrayList<>();
    for (ExactWeekRun run : week.runs) {
      List<ExactWeekTask> tasks = new ArrayList<>(run.stages);
      tasks.add(run.pour);
      tasks.stream()
          .flatMap(task -> task.hands.stream())
          .filter(hand -> hand.person() == person)
          .forEach(hand -> work.add(hand.interval()));
    }
    return work;
  }

  private void addForm(Form form) {
    CumulativeConstraint held = model.addCumulative(form.count());
    for (ExactWeekRun run : week.runs) {
      int each = run.kind.formsEach().getOrDefault(form.id(), 0);
      if (each > 0) {
        IntervalVar holds = interval(run, run.pourStart, run.stages.getFirst().end);
        held.addDemand(holds, LinearExpr.term(run.castings, each));
      }
    }
  }

  private void addStation(Station station) {
    CumulativeConstraint taken = model.addCumulative(station.places());
    for (ExactWeekRun run : week.runs) {
      for (int i = 0; i < run.stages.size(); i++) {
        Optional<ExactWeekKind.Rest> rests = run.kind.stages().get(i).rests();
        if (rests.isPresent() && rests.get().station().equals(station.id())) {
          boolean last = i == run.stages.size() - 1;
          LinearArgument until = last ? run.ready() : run.stages.get(i + 1).start;
          IntervalVar lies = interval(run, run.stages.get(i).start, until);
          taken.addDemand(lies, LinearExpr.term(run.castings, rests.get().placesEach()));
        }
      }
    }
  }

  private IntervalVar interval(ExactWeekRun run, LinearArgument from, LinearArgument to) {
    IntVar minutes = model.newIntVar(0, week.horizon, "held");
    return model.newOptionalIntervalVar(from, minutes, to, run.present, "held");
  }
}
