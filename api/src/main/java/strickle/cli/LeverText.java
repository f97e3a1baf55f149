package strickle.cli;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import strickle.cli.Table.Column;
import strickle.price.Lever;
import strickle.price.LeverKind;
import strickle.price.Target;

/** Every lever alone, with the value at which the margin just holds. */
final class LeverText {

  private final Target target;
  private final CostText costs;

  private LeverText(Target target, CostText costs) {
    this.target = target;
    this.costs = costs;
  }

  /** The lines of it. */
  static List<String> lines(Target target, CostText costs) {
    LeverText text = new LeverText(target, costs);
    Table table = new Table("  ", new Column(12, 20, false), Column.right(14, 20), Column.left(52));
    String heading =
        target.holds()
            ? "Each lever alone, and how far it may go until the margin only just holds"
            : "Each lever alone, and the value at which the margin would hold";
    table.heading(heading);
    target
        .levers()
        .forEach(lever -> table.row(named(lever.kind()), text.present(lever), text.answer(lever)));
    return table.lines();
  }

  private static String named(LeverKind kind) {
    return switch (kind) {
      case MINUTES -> "minutes";
      case RUN_SIZE -> "run size";
      case GOOD_SHARE -> "good share";
      case MIX_COST -> "mix cost";
      case MOULD_LIFE -> "mould life";
      case CHANNEL_FEE -> "channel fee";
      case SHOP_SHARE -> "shop's share";
      case PRICE -> "price";
    };
  }

  private String answer(Lever lever) {
    String note = lever.note().orElse("");
    if (lever.closing().isPresent()) {
      return value(lever, lever.closing().get()) + (note.isEmpty() ? "" : "; " + note);
    }
    if (target.holds()) {
      return "makes no difference: " + note;
    }
    String limit = lever.limit().map(at -> value(lever, at)).orElse("if they last for ever");
    String margin =
        lever
            .marginAtLimitPercent()
            .map(percent -> " (margin " + TargetText.percent(percent) + ")")
            .orElse("");
    String even = note.isEmpty() ? ", even at " + limit + margin : ": " + note;
    return "cannot"
        + (lever.limit().isEmpty() && note.isEmpty() ? ", even " + limit + margin : even);
  }

  private String present(Lever lever) {
    return switch (lever.kind()) {
      case MINUTES -> CostText.tenths(lever.present()) + " min";
      // As it stands in the book: rounding to the safe side is for what is asked for.
      case GOOD_SHARE, CHANNEL_FEE, SHOP_SHARE -> TargetText.plain(lever.present()) + " %";
      default -> value(lever, lever.present());
    };
  }

  private String value(Lever lever, BigDecimal value) {
    return switch (lever.kind()) {
      case MINUTES -> value.setScale(1, RoundingMode.FLOOR).toPlainString() + " min";
      case RUN_SIZE -> castings(value.setScale(1, RoundingMode.HALF_UP));
      case MOULD_LIFE -> castings(value);
      case GOOD_SHARE -> tenths(value, RoundingMode.CEILING);
      case CHANNEL_FEE, SHOP_SHARE -> tenths(value, RoundingMode.FLOOR);
      case MIX_COST ->
          value.setScale(costs.decimals(), RoundingMode.FLOOR).toPlainString() + " " + lever.unit();
      case PRICE -> costs.of(value) + " " + lever.unit();
    };
  }

  private static String castings(BigDecimal number) {
    return TargetText.plain(number)
        + (number.compareTo(BigDecimal.ONE) == 0 ? " casting" : " castings");
  }

  private static String tenths(BigDecimal percent, RoundingMode safe) {
    return TargetText.plain(percent.setScale(1, safe)) + " %";
  }
}
