package strickle.demo;

import java.util.ArrayList;
import java.util.List;
import strickle.book.Form;
import strickle.book.Mould;

/**
 * Draws forms and the moulds set up from them: some with a form of their own, some with two units
 * of it, some on a board that all of these share, some nested, the core of one being the outer of
 * the next.
 */
final class GeneratedForms {

  private static final int MOST_MOULDS = 12;
  private static final List<String> SHAPES =
      List.of("block", "tray", "cup", "ring", "post", "slab", "plate", "cone");

  private final Dice dice;
  private final Waits waits;
  private final int units;
  private final List<Form> forms = new ArrayList<>();
  private final List<Mould> moulds = new ArrayList<>();
  private String innermost = "";
  private int onBoard;

  private GeneratedForms(Dice dice, Waits waits, int units) {
    this.dice = dice;
    this.waits = waits;
    this.units = units;
  }

  /** What was drawn. */
  record Drawn(List<Form> forms, List<Mould> moulds) {}

  /** One or two moulds for a single casting, one more for every doubling, twelve at most. */
  static Drawn draw(Dice dice, Waits waits, int castings) {
    int doublings = 31 - Integer.numberOfLeadingZeros(castings);
    int count = Math.clamp(doublings + dice.from(0, 2), 1, MOST_MOULDS);
    int perUnit = count * dice.from(8, 20);
    GeneratedForms drawn = new GeneratedForms(dice, waits, 1 + castings / perUnit);
    for (int i = 1; i <= count; i++) {
      drawn.addMould(i);
    }
    drawn.addBoard();
    return new Drawn(drawn.forms, drawn.moulds);
  }

  private void addMould(int number) {
    MouldEntry mould = MouldEntry.mould("mould-" + number, dice.oneOf(SHAPES) + " " + number);
    if (dice.chance(35)) {
      nest(mould, number);
    } else if (dice.chance(20)) {
      mould.of(newForm(number, 2 * someUnits()), 2);
    } else if (dice.chance(25)) {
      onBoard++;
      mould.of(newForm(number, someUnits()), 1).of("board", 1);
    } else {
      mould.of(newForm(number, someUnits()), 1);
    }
    moulds.add(fill(mould).build());
  }

  private int someUnits() {
    return units * dice.oneOf(List.of(1, 1, 2, 3));
  }

  private void nest(MouldEntry mould, int number) {
    String outer = innermost.isEmpty() ? newForm(number, units) : innermost;
    innermost = newCore(number);
    mould.of(outer, 1).of(innermost, 1);
    if (dice.chance(60)) {
      mould.core(dice.from(400, 2500), dice.from(80, 350), dice.tenths(12, 20));
    }
  }

  private MouldEntry fill(MouldEntry mould) {
    double setHours = dice.tenths(120, 300);
    int cavities = dice.oneOf(List.of(1, 1, 1, 2, 3, 4, 6));
    mould
        .holds(cavities, cavities * 60 + dice.from(60, 1400), dice.tenths(0, 50))
        .minutes(dice.from(3, 8), dice.from(2, 7), dice.from(4, 12))
        .sets(setHours)
        .consumes("release-oil", Integer.toString(dice.from(2, 9)));
    return dice.chance(40) ? mould.atMost(waits.setAtMost(setHours)) : mould;
  }

  private String newForm(int number, int count) {
    return add("form-" + number, "form " + number, count);
  }

  private String newCore(int number) {
    return add("core-" + number, "core " + number, units);
  }

  private String add(String id, String name, int count) {
    String cost = Integer.toString(dice.from(6, 60));
    forms.add(Entries.form(id, name, count, cost, dice.from(4, 30) * 10));
    return id;
  }

  /** Fewer boards than there are forms to stand on them, so the moulds on them wait in turn. */
  private void addBoard() {
    if (onBoard > 0) {
      add("board", "levelling board", 1 + onBoard * units * 2 / 3);
    }
  }
}
