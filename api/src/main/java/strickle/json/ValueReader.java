package strickle.json;

import java.util.function.Function;
import strickle.book.Faulty;
import tools.jackson.databind.JsonNode;

/**
 * Reads one kind of value.
 *
 * @param <T> what it becomes
 */
interface ValueReader<T> {

  /**
   * Reads a value.
   *
   * @param node the value; never missing, but possibly null
   * @throws Faulty with every fault found, paths relative to the value
   */
  T read(JsonNode node);

  /** What would be right here, as a clause ("a whole number"). */
  String right();

  /** A reader of the same values that goes on to make something else of them. */
  default <U> ValueReader<U> then(Function<? super T, ? extends U> next) {
    ValueReader<T> first = this;
    return new ValueReader<>() {
      @Override
      public U read(JsonNode node) {
        return next.apply(first.read(node));
      }

      @Override
      public String right() {
        return first.right();
      }
    };
  }
}
