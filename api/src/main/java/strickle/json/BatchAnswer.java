package strickle.json;

import java.util.List;
import strickle.mix.Batch;
import strickle.mix.Leftover;

/**
 * What {@code strickle batch --json} writes, and the service answers.
 *
 * @param mix the mix's id
 * @param batch what to weigh out
 * @param fillings what it fills
 * @param leftover moulds that could take what is left over, the one that leaves least first
 * @param notes what the maker should look at, the weightiest first
 */
public record BatchAnswer(
    String mix,
    Batch batch,
    List<BatchFilling> fillings,
    List<Leftover.Taker> leftover,
    List<String> notes) {

  /** The word of its format. */
  public static final String FORMAT = "strickle-batch/1";
}
