package strickle.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.IntStream;
import strickle.book.After;
import strickle.book.Book;
import strickle.book.FormUse;
import strickle.book.Mould;
import strickle.book.Piece;
import strickle.book.Step;
import strickle.book.WaitKind;
import strickle.shop.Activity;
import strickle.shop.Hold;
import strickle.shop.Wait;

/** The chain of activities of a piece: pour, demould and the steps of its route. */
final class Chains {

  /** The clocks of a studio's shop: the wall's, and the one curing runs on. */
  static final int WALL = 0;

  static final int ROOM = 1;

  private static final double TOLERANCE_HOURS = 1e-9;
  private static final int HOUR = 60;

  private final Book book;
  private final List<Integer> everybody;
  private final Map<String, Integer> person = new HashMap<>();
  private final Map<String, Integer> form = new HashMap<>();
  private final Map<String, Integer> station = new HashMap<>();

  Chains(Book book) {
    this.book = book;
    this.everybody = IntStream.range(0, book.people().size()).boxed().toList();
    book.people().forEach(one -> person.put(one.id(), person.size()));
    book.forms().forEach(one -> form.put(one.id(), form.size()));
    book.stations().forEach(one -> station.put(one.id(), form.size() + station.size()));
  }

  /** Least whole minutes that are at least so many hours. */
  static int minutesOfAtLeast(double hours) {
    return (int) Math.ceil((hours - TOLERANCE_HOURS) * HOUR);
  }

  /** Most whole minutes that are at most so many hours. */
  static OptionalInt minutesOfAtMost(OptionalDouble hours) {
    return hours.isEmpty()
        ? OptionalInt.empty()
        : OptionalInt.of((int) Math.floor((hours.getAsDouble() + TOLERANCE_HOURS) * HOUR));
  }

  /** The activities of one casting of a piece, in order. */
  List<Activity> of(Piece piece) {
    Mould mould = book.mould(piece.mould());
    List<Activity> chain = new ArrayList<>();
    chain.add(pour(mould));
    chain.add(demould(mould));
    for (int i = 0; i < piece.route().size(); i++) {
      chain.add(step(piece, i, mould.cavities()));
    }
    return chain;
  }

  private Activity pour(Mould mould) {
    Map<Integer, Integer> units = new TreeMap<>();
    for (FormUse use : mould.forms()) {
      units.merge(form.get(use.form()), use.count(), Integer::sum);
    }
    List<Hold> holds =
        units.entrySet().stream()
            .map(use -> new Hold(use.getKey(), use.getValue(), 1, Hold.Until.END))
            .toList();
    int minutes = mould.prepMinutes() + mould.pourMinutes();
    return new Activity("pour", 0, minutes, everybody, false, Wait.NONE, holds);
  }

  private Activity demould(Mould mould) {
    Wait set = new Wait(ROOM, mould.setHours(), minutesOfAtMost(mould.setAtMostHours()));
    return new Activity("demould", 0, mould.demouldMinutes(), everybody, true, set, List.of());
  }

  private Activity step(Piece piece, int index, int cavities) {
    Step step = piece.route().get(index);
    After after = step.after();
    int clock = after.kind() == WaitKind.CURE ? ROOM : WALL;
    Wait wait = new Wait(clock, after.hours(), minutesOfAtMost(after.atMostHours()));
    List<Integer> by =
        step.by().isEmpty() ? everybody : step.by().stream().map(person::get).distinct().toList();
    int each = step.minutesEach() * cavities;
    List<Hold> holds = rests(step, piece, index, cavities);
    return new Activity(step.step(), step.setupMinutes(), each, by, true, wait, holds);
  }

  private List<Hold> rests(Step step, Piece piece, int index, int cavities) {
    boolean last = index == piece.route().size() - 1;
    int place = index + 2;
    return step.restsOn().stream()
        .map(
            rests ->
                new Hold(
                    station.get(rests.station()),
                    rests.placesEach() * cavities,
                    last ? place : place + 1,
                    last ? Hold.Until.DONE : Hold.Until.START))
        .toList();
  }
}
