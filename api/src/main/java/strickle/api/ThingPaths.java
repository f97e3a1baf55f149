package strickle.api;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import strickle.book.Fault;
import strickle.book.Faulty;

/**
 * Places in the book as they are seen from one thing of it: whoever has sent the thing alone looks
 * for them there.
 *
 * @param prefix the thing's own place in the book, such as {@code $.pieces[0]}
 */
record ThingPaths(String prefix) {

  /** The paths of a thing by its place in its list, from 0. */
  static ThingPaths of(Collection collection, int index) {
    return new ThingPaths("$." + collection.name() + "[" + index + "]");
  }

  /** Whether a path lies in the thing. */
  boolean holds(String path) {
    return path.startsWith(prefix)
        && (path.length() == prefix.length() || ".[".indexOf(path.charAt(prefix.length())) >= 0);
  }

  /** A path as it is seen from the thing. */
  String seen(String path) {
    return holds(path) ? "$" + path.substring(prefix.length()) : path;
  }

  /** Faults as they are seen from the thing. */
  List<Fault> seen(List<Fault> faults) {
    List<Fault> seen = new ArrayList<>();
    faults.forEach(one -> seen.add(new Fault(seen(one.path()), one.found(), one.right())));
    return seen;
  }

  /** Does something and tells its faults as they are seen from the thing. */
  <T> T told(Supplier<T> work) {
    try {
      return work.get();
    } catch (Faulty faulty) {
      throw new Faulty(seen(faulty.faults()));
    }
  }
}
