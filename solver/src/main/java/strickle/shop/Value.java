package strickle.shop;

import java.util.Comparator;

/**
 * How good a schedule is; smaller is better, the first part before the second before the third.
 *
 * @param late sum over the due dates of weight x started late units
 * @param attended minutes anybody works
 * @param flow sum over the jobs of the minutes until they are done
 */
public record Value(long late, long attended, long flow) implements Comparable<Value> {

  private static final Comparator<Value> ORDER =
      Comparator.comparingLong(Value::late)
          .thenComparingLong(Value::attended)
          .thenComparingLong(Value::flow);

  @Override
  public int compareTo(Value other) {
    return ORDER.compare(this, other);
  }
}
