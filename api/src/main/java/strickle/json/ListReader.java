package strickle.json;

import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;

/**
 * Reads lists; one faulty value does not keep the others from being examined.
 *
 * @param <T> what the values become
 */
final class ListReader<T> implements ValueReader<List<T>> {

  private final ValueReader<T> each;

  /**
   * A reader of lists.
   *
   * @param each reads one value
   */
  ListReader(ValueReader<T> each) {
    this.each = each;
  }

  @Override
  public List<T> read(JsonNode node) {
    if (!node.isArray()) {
      throw Findings.refusal(Shown.of(node), right());
    }
    Findings findings = new Findings();
    List<T> values = new ArrayList<>(node.size());
    for (int i = 0; i < node.size() && !findings.full(); i++) {
      JsonNode value = node.get(i);
      findings.attempt(JsonPath.index(i), () -> each.read(value)).ifPresent(values::add);
    }
    findings.settle();
    return List.copyOf(values);
  }

  @Override
  public String right() {
    return "a list [ ] whose values are each " + each.right();
  }
}
