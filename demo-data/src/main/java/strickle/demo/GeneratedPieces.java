package strickle.demo;

import java.util.ArrayList;
import java.util.List;
import strickle.book.Mix;
import strickle.book.Mould;
import strickle.book.Person;
import strickle.book.Piece;
import strickle.book.Station;
import strickle.book.WaitKind;

/** Draws pieces: one or two from every mould, with routes of no steps to six. */
final class GeneratedPieces {

  private static final List<String> STEPS =
      List.of("sand the face", "rub the edges", "seal", "polish", "felt the foot", "tint");
  private static final List<Double> GOOD = List.of(100.0, 100.0, 98.0, 95.0, 92.0, 90.0, 85.5);

  private final Dice dice;
  private final Waits waits;
  private final List<Person> people;
  private final List<Station> stations;
  private final List<Mix> mixes;

  GeneratedPieces(
      Dice dice, Waits waits, List<Person> people, List<Station> stations, List<Mix> mixes) {
    this.dice = dice;
    this.waits = waits;
    this.people = people;
    this.stations = stations;
    this.mixes = mixes;
  }

  /** The first piece always turns out well, so that any number of castings of it can be wanted. */
  List<Piece> pieces(List<Mould> moulds) {
    List<Piece> pieces = new ArrayList<>();
    for (Mould mould : moulds) {
      List<Mix> some = new ArrayList<>(mixes);
      dice.shuffle(some);
      int count = Math.min(some.size(), dice.from(1, 2));
      for (Mix mix : some.subList(0, count)) {
        double good = pieces.isEmpty() ? 100 : dice.oneOf(GOOD);
        pieces.add(piece(mould, mix, good));
      }
    }
    return pieces;
  }

  private Piece piece(Mould mould, Mix mix, double good) {
    int price = dice.from(12, 90);
    return PieceEntry.piece(mould.id() + "-" + mix.id(), mould.name() + ", " + mix.name())
        .from(mould.id(), mix.id())
        .good(good, dice.from(1, 6))
        .onHand(dice.chance(30) ? dice.from(1, 4) : 0)
        .route(route(mould.cavities()))
        .finalDry(dice.chance(70) ? dice.from(1, 72) : 0)
        .packed("box", "1")
        .price(Integer.toString(price), Integer.toString(price * 6 / 10));
  }

  private StepEntry[] route(int cavities) {
    StepEntry[] route = new StepEntry[dice.from(0, STEPS.size())];
    for (int i = 0; i < route.length; i++) {
      route[i] = step(STEPS.get(i), i == 0, cavities);
    }
    return route;
  }

  private StepEntry step(String name, boolean first, int cavities) {
    WaitKind kind = first && dice.chance(60) ? WaitKind.REST : dice.oneOf(kinds());
    double hours = hours(kind);
    List<String> by = dice.chance(15) ? List.of(dice.oneOf(people).id()) : List.of();
    StepEntry step =
        StepEntry.step(name)
            .takes(dice.from(1, 6), dice.from(1, cavities > 2 ? 2 : 5))
            .after(kind, hours)
            .by(by.toArray(String[]::new));
    if (dice.chance(25)) {
      step.atMost(waits.atMost(kind, hours, by));
    }
    if (dice.chance(30)) {
      step.uses("sealer", Integer.toString(dice.from(4, 30)));
    }
    return rest(step, cavities);
  }

  private StepEntry rest(StepEntry step, int cavities) {
    if (stations.isEmpty() || dice.chance(65)) {
      return step;
    }
    Station station = dice.oneOf(stations);
    int each = Math.min(dice.from(1, 2), station.places() / cavities);
    return step.restsOn(station.id(), each);
  }

  private static List<WaitKind> kinds() {
    return List.of(WaitKind.CURE, WaitKind.DRY, WaitKind.REST);
  }

  private double hours(WaitKind kind) {
    return switch (kind) {
      case CURE -> dice.from(24, 168);
      case DRY -> dice.from(2, 48);
      case REST -> dice.tenths(0, 240);
    };
  }
}
