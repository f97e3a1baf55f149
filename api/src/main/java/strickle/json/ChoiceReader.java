package strickle.json;

import java.util.Map;
import tools.jackson.databind.JsonNode;

/**
 * Reads one word of a few, such as a kind of wait.
 *
 * @param <T> what the words stand for
 */
final class ChoiceReader<T> implements ValueReader<T> {

  private final Map<String, T> choices;

  /**
   * A reader for these words.
   *
   * @param choices what each word stands for, in the order in which they are told
   */
  ChoiceReader(Map<String, T> choices) {
    this.choices = choices;
  }

  @Override
  public T read(JsonNode node) {
    if (!node.isString()) {
      throw Findings.refusal(Shown.of(node), right());
    }
    T choice = choices.get(node.stringValue());
    if (choice == null) {
      throw Findings.refusal(Shown.of(node), Hint.toward(node.stringValue(), choices.keySet()));
    }
    return choice;
  }

  @Override
  public String right() {
    return "one of \"" + String.join("\", \"", choices.keySet()) + '"';
  }
}
