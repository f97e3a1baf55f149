package strickle.shop;

import ai.timefold.solver.core.impl.heuristic.selector.move.factory.MoveIteratorFactory;
import ai.timefold.solver.core.impl.score.director.ScoreDirector;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.random.RandomGenerator;

/** Gives Timefold its moves: an order a little different from the present one, then justified. */
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
    return new Moves(priority, random);
  }

  /** Endless moves from the order a priority has at the moment. */
  private record Moves(Priority priority, RandomGenerator random)
      implements Iterator<Rearrangement> {

    @Override
    public boolean hasNext() {
      return priority.getClaims().size() > 1;
    }

    @Override
    public Rearrangement next() {
      if (!hasNext()) {
        throw new NoSuchElementException("a single claim has no other order");
      }
      List<Claim> claims = priority.getSequence().getClaims();
      int[] order = new int[claims.size()];
      for (int i = 0; i < order.length; i++) {
        order[i] = claims.get(i).index();
      }
      priority.trials().vary(order, random);
      return new Rearrangement(priority.getSequence(), order);
    }
  }
}
