package strickle.json;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import strickle.json.contract.Answer;
import strickle.json.contract.Operation;
import tools.jackson.databind.JsonNode;

/**
 * Puts into the contract what was really sent and answered once: a test that asks for everything
 * writes it down, shortened, and holds it against the schemas.
 */
public final class ContractExamples {

  private static final String SENT = " sent";

  private final Map<String, String> examples = new HashMap<>();

  private ContractExamples() {}

  /**
   * Reads examples.
   *
   * @param json an object: the name of an operation with an example of its answer, and the name
   *     followed by " sent" with one of what it takes, as a JSON value or as a text
   */
  public static ContractExamples of(String json) {
    ContractExamples all = new ContractExamples();
    for (Map.Entry<String, JsonNode> one : Tree.of(json, new Findings()).properties()) {
      JsonNode value = one.getValue();
      String text = value.isString() ? value.stringValue() : value.toString();
      all.examples.put(one.getKey(), text);
    }
    return all;
  }

  /** The same operations with examples: those they have themselves go before. */
  public List<Operation> in(List<Operation> operations) {
    return operations.stream().map(this::in).toList();
  }

  private Operation in(Operation operation) {
    String taken =
        operation.example().isEmpty()
            ? examples.getOrDefault(operation.id() + SENT, "")
            : operation.example();
    return operation.such(taken, answer -> in(operation, answer));
  }

  private Answer in(Operation operation, Answer answer) {
    boolean first = operation.answers().get(0).equals(answer);
    return first ? answer.such(examples.getOrDefault(operation.id(), "")) : answer;
  }
}
