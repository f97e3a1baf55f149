package strickle.safety;

import java.util.List;

/**
 * A caution with the acts it belongs to.
 *
 * @param caution the caution
 * @param where the steps, materials, pieces or loads it is about, each once
 */
public record Shown(Caution caution, List<String> where) {

  /** Copies the list. */
  public Shown {
    where = List.copyOf(where);
  }
}
