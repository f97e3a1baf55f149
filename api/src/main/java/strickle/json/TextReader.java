package strickle.json;

import java.time.DateTimeException;
import java.util.function.Function;
import strickle.book.Faulty;
import tools.jackson.databind.JsonNode;

/**
 * Reads values that are written as text: names, dates, times, currencies.
 *
 * @param <T> what the text becomes
 */
final class TextReader<T> implements ValueReader<T> {

  private final String right;
  private final Function<String, T> meaning;

  /**
   * A reader for one kind of text.
   *
   * @param right what would be right, as a clause
   * @param meaning makes the value of the text; throws {@link DateTimeException} when it cannot, or
   *     {@link Faulty} when it can say why
   */
  TextReader(String right, Function<String, T> meaning) {
    this.right = right;
    this.meaning = meaning;
  }

  @Override
  public T read(JsonNode node) {
    if (!node.isString()) {
      throw Findings.refusal(Shown.of(node), right);
    }
    try {
      return meaning.apply(node.stringValue());
    } catch (DateTimeException notOfThisKind) {
      throw Findings.refusal(Shown.of(node), right);
    }
  }

  @Override
  public String right() {
    return right;
  }
}
