package strickle.plan;

import java.util.List;

/**
 * One mixed batch and all the runs poured from it.
 *
 * @param id the lot's own name, such as {@code L1}
 * @param mix the mix's id
 * @param runs what is poured from it, at most one run of a piece
 * @param weighOut every dry material and pigment, and {@code water}
 * @param wetGrams grams of wet mix, to a tenth; what the weigh-out adds up to
 */
public record Lot(String id, String mix, List<Run> runs, List<Weighed> weighOut, double wetGrams) {

  /**
   * Refuses a lot without a name or a mass.
   *
   * @throws strickle.book.Faulty when a name is blank or the grams are no number or below 0
   */
  public Lot {
    Flaws flaws = new Flaws().id(".id", id).id(".mix", mix);
    runs = flaws.list(".runs", runs);
    weighOut = flaws.list(".weighOut", weighOut);
    flaws.grams(".wetGrams", wetGrams).raise();
  }
}
