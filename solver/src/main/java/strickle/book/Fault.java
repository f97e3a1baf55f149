package strickle.book;

import java.util.Objects;

/**
 * One thing that is wrong, told to a person: where, what was found there, and what would be right.
 *
 * @param path where, as a JSON path (RFC 9535) such as {@code $.moulds[0].volumeMl}; inside a
 *     record's own constructor it is relative to the record, such as {@code .volumeMl}
 * @param found the value found, in words a person can recognise ("-5", "nothing", "\"tub-x\"")
 * @param right what would be right, as a clause ("a number from 1 to 100")
 */
public record Fault(String path, String found, String right) {

  /** Refuses a missing part. */
  public Fault {
    Objects.requireNonNull(path, "path");
    Objects.requireNonNull(found, "found");
    Objects.requireNonNull(right, "right");
  }

  /** The same fault seen from one level further out, with {@code outer} put before the path. */
  public Fault under(String outer) {
    return new Fault(outer + path, found, right);
  }

  @Override
  public String toString() {
    return path + ": found " + found + "; right would be " + right;
  }
}
