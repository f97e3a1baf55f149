package strickle.shop;

import ai.timefold.solver.core.api.domain.solution.PlanningEntityProperty;
import ai.timefold.solver.core.api.domain.solution.PlanningScore;
import ai.timefold.solver.core.api.domain.solution.PlanningSolution;
import ai.timefold.solver.core.api.domain.solution.ProblemFactCollectionProperty;
import ai.timefold.solver.core.api.domain.valuerange.ValueRangeProvider;
import ai.timefold.solver.core.api.score.BendableScore;
import java.util.List;

/**
 * What Timefold searches: a sequence of claims, its score, and the trials that score it. Getters
 * and setters are what Timefold asks of it; nobody else has business here.
 */
@PlanningSolution
public class Priority {

  private List<Claim> claims = List.of();
  private Sequence sequence = new Sequence();
  private BendableScore score;
  private Trials trials;
  private Walk walk;

  /** For Timefold, which clones priorities. */
  public Priority() {}

  Priority(List<Claim> claims, Sequence sequence, Trials trials, Walk walk) {
    this.claims = claims;
    this.sequence = sequence;
    this.trials = trials;
    this.walk = walk;
  }

  /** All claims there are. */
  @ProblemFactCollectionProperty
  @ValueRangeProvider
  public List<Claim> getClaims() {
    return claims;
  }

  /** For Timefold. */
  public void setClaims(List<Claim> claims) {
    this.claims = claims;
  }

  /** The order of the claims. */
  @PlanningEntityProperty
  public Sequence getSequence() {
    return sequence;
  }

  /** For Timefold. */
  public void setSequence(Sequence sequence) {
    this.sequence = sequence;
  }

  /** Lateness, attended minutes and flow, each less than zero by what it is. */
  @PlanningScore(bendableHardLevelsSize = 0, bendableSoftLevelsSize = 3)
  public BendableScore getScore() {
    return score;
  }

  /** For Timefold. */
  public void setScore(BendableScore score) {
    this.score = score;
  }

  Trials trials() {
    return trials;
  }

  Walk walk() {
    return walk;
  }
}
