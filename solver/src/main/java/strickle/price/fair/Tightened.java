package strickle.price.fair;

import java.util.List;

/**
 * Where a plan did not have a build ready, and what was asked of it next.
 *
 * @param piece id of a piece that was late, or that was left out for orders that were
 * @param asked how many were to be brought
 * @param atMost how many are asked for at most from then on
 * @param because what held it up, in the words of the plan
 */
public record Tightened(String piece, int asked, int atMost, List<String> because) {

  /** Copies the list. */
  public Tightened {
    because = List.copyOf(because);
  }
}
