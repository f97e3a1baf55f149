package strickle.shop;

import java.util.Arrays;

/**
 * The numbers that say what has been placed so far, side by side, so that it can be put back and
 * told from other such states. They are taken out in the order in which they were put in.
 */
final class Memo {

  private int[] numbers = new int[256];
  private int count;
  private int state;
  private int at;

  /** Forgets what is in it. */
  void begin() {
    count = 0;
    state = 0;
  }

  void put(int number) {
    make(1);
    numbers[count++] = number;
  }

  void put(long number) {
    put((int) (number >>> Integer.SIZE));
    put((int) number);
  }

  /** Puts in the first {@code length} numbers of an array. */
  void put(int[] from, int length) {
    make(length);
    System.arraycopy(from, 0, numbers, count, length);
    count += length;
  }

  /** What is put in from now on helps to find a place sooner, but makes no other state. */
  void hints() {
    state = count;
  }

  /** Begins to take out. */
  void rewind() {
    at = 0;
  }

  int take() {
    return numbers[at++];
  }

  long takeLong() {
    long high = take();
    return high << Integer.SIZE | Integer.toUnsignedLong(take());
  }

  /** Takes out the first {@code length} numbers of an array. */
  void take(int[] to, int length) {
    System.arraycopy(numbers, at, to, 0, length);
    at += length;
  }

  /** Whether another is of the same state. */
  boolean isSameAs(Memo other) {
    return state == other.state && Arrays.equals(numbers, 0, state, other.numbers, 0, state);
  }

  private void make(int room) {
    if (count + room > numbers.length) {
      numbers = Arrays.copyOf(numbers, Math.max(2 * numbers.length, count + room));
    }
  }
}
