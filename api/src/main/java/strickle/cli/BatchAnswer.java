package strickle.cli;

import java.util.List;
import strickle.mix.Batch;
import strickle.mix.Leftover;

/**
 * What {@code batch} worked out, as its JSON says it.
 *
 * @param mix the mix's id
 * @param batch the batch
 * @param fillings what it fills
 * @param leftover moulds that could take what is left over
 * @param notes what the maker should look at
 */
record BatchAnswer(
    String mix,
    Batch batch,
    List<Filling> fillings,
    List<Leftover.Taker> leftover,
    List<String> notes) {}
