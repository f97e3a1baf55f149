package strickle.json;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Writes the answer of a single calculation: any record, its fields in the order of its components.
 * Numbers are rounded to ten digits, more than anything can be measured to.
 */
public final class AnswerFile {

  private static final MathContext DIGITS = new MathContext(10);
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private AnswerFile() {}

  /**
   * Writes an answer, with a newline at the end.
   *
   * @param format the word of its format, such as {@code strickle-volume/1}
   */
  public static String write(String format, Record answer) {
    return new FileFormat(format, "an answer").text(object(RecordWriter.object(answer)));
  }

  private static JsonNode rounded(JsonNode node) {
    if (node.isNumber()) {
      BigDecimal number = node.decimalValue().round(DIGITS);
      return NODES.numberNode(RecordWriter.plain(number));
    }
    if (node.isObject()) {
      return object((ObjectNode) node);
    }
    if (node.isArray()) {
      ArrayNode array = NODES.arrayNode();
      node.forEach(item -> array.add(rounded(item)));
      return array;
    }
    return node;
  }

  private static ObjectNode object(ObjectNode node) {
    ObjectNode object = NODES.objectNode();
    for (Map.Entry<String, JsonNode> field : node.properties()) {
      object.set(field.getKey(), rounded(field.getValue()));
    }
    return object;
  }
}
