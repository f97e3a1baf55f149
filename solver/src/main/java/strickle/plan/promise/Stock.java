package strickle.plan.promise;

import java.util.List;

/**
 * What a new order takes from stock.
 *
 * @param pieces how many pieces of those on hand it gets, 1 or more
 * @param onHand how many are on hand in all
 * @param meant whom some of them were meant for by the present plan, in the order they are served
 */
public record Stock(int pieces, int onHand, List<Meant> meant) {

  /**
   * Pieces on hand that were meant for a present order, which gets others in their place.
   *
   * @param order its id
   * @param pieces how many it gets less from stock
   * @param runs ids of the runs that it gets pieces of now, first ready first
   */
  public record Meant(String order, long pieces, List<String> runs) {

    /** Copies the list. */
    public Meant {
      runs = List.copyOf(runs);
    }
  }

  /** Copies the list. */
  public Stock {
    meant = List.copyOf(meant);
  }
}
