package strickle.shop;

/**
 * A resource held from the start of the activity that opens it.
 *
 * @param resource index of the resource
 * @param unitsEach units for each job of the run, 1 or more
 * @param last index, within the kind, of the activity that closes it
 * @param until whether it closes when that activity starts, when it ends, or when the job is done
 */
public record Hold(int resource, int unitsEach, int last, Until until) {

  /** Where a hold ends. */
  public enum Until {
    /** When the closing activity starts. */
    START,
    /** When the closing activity ends. */
    END,
    /** When the job is done: the closing activity must be the last, and its tail counts. */
    DONE
  }

  /** Refuses a hold of nothing. */
  public Hold {
    if (resource < 0 || unitsEach < 1 || last < 0) {
      throw new IllegalArgumentException("a hold of 1 unit or more, not " + unitsEach);
    }
  }

  /** A hold of {@code units} for just as long as its own activity {@code index} lasts. */
  public static Hold during(int resource, int units, int index) {
    return new Hold(resource, units, index, Until.END);
  }
}
