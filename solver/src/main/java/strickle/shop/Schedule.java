package strickle.shop;

import java.util.List;

/**
 * A schedule of a shop, as found.
 *
 * @param value how good it is
 * @param lots its lots, in the order they were placed, settled ones first
 * @param met when each due date is met
 * @param schedules how many schedules were generated to find it
 */
public record Schedule(Value value, List<Lot> lots, List<Integer> met, long schedules) {

  /** Copies the lists. */
  public Schedule {
    lots = List.copyOf(lots);
    met = List.copyOf(met);
  }

  /**
   * Jobs whose first activity is done together.
   *
   * @param first that activity
   * @param runs what is in it
   */
  public record Lot(Placed first, List<Run> runs) {

    /** Copies the list. */
    public Lot {
      runs = List.copyOf(runs);
    }
  }

  /**
   * The jobs of one kind in a lot.
   *
   * @param kind index of the kind
   * @param jobs how many, 1 or more
   * @param rest their activities after the first, in order
   * @param done the minute they are done
   */
  public record Run(int kind, int jobs, List<Placed> rest, int done) {

    /** Copies the list. */
    public Run {
      rest = List.copyOf(rest);
    }
  }

  /**
   * An activity in its place.
   *
   * @param worker index of the worker, or -1 for an activity that needs nobody
   * @param worked the worker's working minute at which it starts
   * @param minutes how long it takes, pauses not counted
   * @param start the minute it starts
   * @param end the minute it ends
   */
  public record Placed(int worker, int worked, int minutes, int start, int end) {}
}
