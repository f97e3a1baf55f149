package strickle.plan.why;

import java.time.OffsetDateTime;
import java.util.List;

/**
 * What the reasons of a late order say would free it or bring it forward.
 *
 * @param order the order's id
 * @param cures what has to be changed, all of it together; one or more
 * @param ready when the order could be ready then, with all runs of others where they are
 */
public record Remedy(String order, List<Cure> cures, OffsetDateTime ready) {

  /** Copies the list. */
  public Remedy {
    cures = List.copyOf(cures);
  }
}
