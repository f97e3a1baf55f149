package strickle.plan;

/**
 * What of one material goes into a lot.
 *
 * @param material the material's id, or the reserved name {@code water}
 * @param grams to a tenth of a gram, 0 or more
 */
public record Weighed(String material, double grams) {

  /**
   * Refuses a mass that is none.
   *
   * @throws strickle.book.Faulty when the material is blank or the grams are no number or below 0
   */
  public Weighed {
    new Flaws().id(".material", material).grams(".grams", grams).raise();
  }
}
