package strickle.json;

import java.util.List;
import strickle.safety.Caution;
import strickle.safety.Shown;

/**
 * What to be careful of ({@code strickle-cautions/1}).
 *
 * @param cautions each once
 * @param follow what to follow besides
 */
public record CautionAnswer(List<One> cautions, String follow) {

  /** The word of its format. */
  public static final String FORMAT = "strickle-cautions/1";

  /**
   * A caution.
   *
   * @param caution its title
   * @param brief it in a sentence
   * @param more all there is to say
   * @param source who says so
   * @param where the acts, materials, pieces and loads it is about
   */
  public record One(String caution, String brief, String more, String source, List<String> where) {}

  /** The cautions that a book or a plan calls for. */
  public static CautionAnswer of(List<Shown> shown) {
    return new CautionAnswer(shown.stream().map(CautionAnswer::one).toList(), Caution.FOLLOW);
  }

  private static One one(Shown shown) {
    Caution caution = shown.caution();
    return new One(
        caution.title(), caution.brief(), caution.more(), caution.source(), shown.where());
  }
}
