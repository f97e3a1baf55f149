package strickle.shop;

import ai.timefold.solver.core.impl.heuristic.selector.move.factory.MoveIteratorFactory;
import ai.timefold.solver.core.impl.score.director.ScoreDirector;
import java.util.Iterator;
import java.util.NoSuchElementException;
import java.util.random.RandomGenerator;

/** Gives Timefold its moves: each to the next better order that a walk comes to. */
public final class Rearrangements implements MoveIteratorFactory<Priority, Rearrangement> {

  /** For Timefold, which makes one for each search. */
  public Rearrangements() {}

  @Override
  public long getSize(ScoreDirector<Priority> scoreDirector) {
    long claims = scoreDirector.getWorkingSolution().getClaims().size();
    return claims * claims;
  }

  @Override
  public Iterator<Rearrangement> createOriginalMoveIterator(ScoreDirector<Priority> director) {
    throw new IllegalStateException("the moves of this search come in a random order only");
  }

  @Override
  public Iterator<Rearrangement> createRandomMoveIterator(
      ScoreDirector<Priority> director, RandomGenerator random) {
    Priority priority = director.getWorkingSolution();
    return new Moves(priority);
  }

  /** Endless moves; chance is the walk's own, so that Timefold's is not asked. */
  private record Moves(Priority priority) implements Iterator<Rearrangement> {

    @Override
    public boolean hasNext() {
      return priority.getClaims().size() > 1;
    }

    @Override
    public Rearrangement next() {
      if (!hasNext()) {
        throw new NoSuchElementException("a single claim has no other order");
      }
      int[] better = priority.trials().walk(priority.walk());
      return new Rearrangement(priority.getSequence(), better);
    }
  }
}
