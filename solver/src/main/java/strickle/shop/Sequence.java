package strickle.shop;

import ai.timefold.solver.core.api.domain.entity.PlanningEntity;
import ai.timefold.solver.core.api.domain.variable.PlanningListVariable;
import java.util.ArrayList;
import java.util.List;

/** The one decision: in which order the claims are placed. */
@PlanningEntity
public class Sequence {

  private List<Claim> claims = new ArrayList<>();

  /** For Timefold, which clones sequences. */
  public Sequence() {}

  /** A sequence in the order given; the list is kept and moved about. */
  Sequence(List<Claim> claims) {
    this.claims = claims;
  }

  /** The claims in their order; Timefold moves them about in this list. */
  @PlanningListVariable
  public List<Claim> getClaims() {
    return claims;
  }

  /** For Timefold. */
  public void setClaims(List<Claim> claims) {
    this.claims = claims;
  }
}
