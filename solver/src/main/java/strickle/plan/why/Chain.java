package strickle.plan.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import strickle.book.Book;
import strickle.book.FormUse;
import strickle.book.Mix;
import strickle.book.Mould;
import strickle.book.Piece;
import strickle.book.RestsOn;
import strickle.book.Step;
import strickle.plan.PlanWait;

/**
 * What a run has to go through: its stages, pour and demould first, and what it takes meanwhile.
 *
 * @param piece the piece
 * @param castings how many castings of it
 * @param washMinutes how long before the end of the pour the set begins
 * @param stages the stages, two or more
 * @param needs the forms and places it takes
 */
record Chain(Piece piece, int castings, int washMinutes, List<Stage> stages, List<Need> needs) {

  static final int POUR = 0;
  static final int DEMOULD = 1;

  /** The chain of so many castings of a piece poured as a lot of their own. */
  static Chain of(Book book, Piece piece, int castings) {
    Mould mould = book.mould(piece.mould());
    Mix mix = book.mix(piece.mix());
    List<Stage> stages = new ArrayList<>(List.of(pour(mould, mix, castings)));
    stages.add(demould(mould, castings));
    int pieces = castings * mould.cavities();
    piece.route().forEach(step -> stages.add(stage(step, pieces)));
    return new Chain(piece, castings, mix.washMinutes(), stages, needs(piece, mould, castings));
  }

  private static Stage pour(Mould mould, Mix mix, int castings) {
    int each = mould.prepMinutes() + mould.pourMinutes();
    int minutes = castings * each + mix.mixMinutes() + mix.washMinutes();
    return new Stage("pour", minutes, List.of(), true, PlanWait.REST, 0, OptionalDouble.empty());
  }

  private static Stage demould(Mould mould, int castings) {
    int minutes = castings * mould.demouldMinutes();
    return new Stage(
        "demould",
        minutes,
        List.of(),
        false,
        PlanWait.SET,
        mould.setHours(),
        mould.setAtMostHours());
  }

  private static Stage stage(Step step, int pieces) {
    PlanWait wait =
        switch (step.after().kind()) {
          case CURE -> PlanWait.CURE;
          case DRY -> PlanWait.DRY;
          case REST -> PlanWait.REST;
        };
    int minutes = step.setupMinutes() + pieces * step.minutesEach();
    double hours = step.after().hours();
    OptionalDouble most = step.after().atMostHours();
    return new Stage(step.step(), minutes, step.by(), false, wait, hours, most);
  }

  private static List<Need> needs(Piece piece, Mould mould, int castings) {
    Map<String, Integer> forms = new TreeMap<>();
    for (FormUse use : mould.forms()) {
      forms.merge(use.form(), use.count() * castings, Integer::sum);
    }
    List<Need> needs = new ArrayList<>();
    forms.forEach((id, units) -> needs.add(new Need(Thing.form(id), units, POUR, DEMOULD, true)));
    for (int i = 0; i < piece.route().size(); i++) {
      int stage = i + 2;
      if (piece.route().get(i).restsOn().isPresent()) {
        RestsOn rests = piece.route().get(i).restsOn().get();
        int places = castings * mould.cavities() * rests.placesEach();
        needs.add(new Need(Thing.station(rests.station()), places, stage, stage + 1, false));
      }
    }
    return needs;
  }

  /** When the wait before a stage begins: as the task before ends, a set before the washing up. */
  int waitFrom(int stage, Placed before) {
    return before.end() - (stage == DEMOULD ? washMinutes : 0);
  }

  /** Minutes from the end of the last task to ready. */
  int finalDryMinutes() {
    return Math.max(0, Stage.minutes(piece.finalDryHours()));
  }

  int last() {
    return stages.size() - 1;
  }

  /** Needs that begin with a stage. */
  List<Need> opening(int stage) {
    return needs.stream().filter(need -> need.opens() == stage).toList();
  }

  /** The same chain with a pour of so many minutes, as its lot may hold other runs too. */
  Chain pouredIn(int minutes) {
    List<Stage> others = new ArrayList<>(stages);
    others.set(POUR, stages.get(POUR).lasting(minutes));
    return new Chain(piece, castings, washMinutes, others, needs);
  }

  /** The same chain without what it takes from a stage up to this one on. */
  Chain withoutNeedsTo(int stage) {
    List<Need> later = needs.stream().filter(need -> need.opens() > stage).toList();
    return new Chain(piece, castings, washMinutes, stages, later);
  }

  /** The same chain with no more than its first stages. */
  Chain endingWith(int count) {
    List<Need> taken = needs.stream().filter(need -> need.opens() < count).toList();
    return new Chain(piece, castings, washMinutes, stages.subList(0, count), taken);
  }

  /** The same chain without the most-waits before these stages. */
  Chain withoutMost(IntPredicate which) {
    List<Stage> others =
        IntStream.range(0, stages.size())
            .mapToObj(i -> which.test(i) ? stages.get(i).withoutMost() : stages.get(i))
            .toList();
    return new Chain(piece, castings, washMinutes, others, needs);
  }
}
