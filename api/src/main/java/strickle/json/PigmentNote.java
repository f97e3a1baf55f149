package strickle.json;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import strickle.mix.PigmentCheck;

/** What there is to say of the pigment of a mix. */
public final class PigmentNote {

  private PigmentNote() {}

  /**
   * A sentence without its full stop; none when the pigment is within its limit or there is none.
   *
   * @param names the name of a material by its id
   */
  public static Optional<String> of(PigmentCheck check, UnaryOperator<String> names) {
    return switch (check.verdict()) {
      case TOO_MUCH -> Optional.of(tooMuch(check, names));
      case CANNOT_BE_CHECKED ->
          Optional.of(
              "the pigment cannot be checked against the 10 % of cement of ASTM C979, because the"
                  + " cement content of a dry material is not known, or there is none");
      case NONE, WITHIN -> Optional.empty();
    };
  }

  private static String tooMuch(PigmentCheck check, UnaryOperator<String> names) {
    String whose =
        check
            .limit()
            .of()
            .map(id -> "the most that " + names.apply(id) + " may be (of a blend in total)")
            .orElse("the most by ASTM C979 (of a blend in total)");
    return "the pigment is "
        + String.format(Locale.ROOT, "%.1f", check.total().percentOfCement().orElseThrow())
        + " % of the cement, above "
        + BigDecimal.valueOf(check.limit().percentOfCement()).stripTrailingZeros().toPlainString()
        + " %, "
        + whose
        + "; the colour levels off before that";
  }
}
