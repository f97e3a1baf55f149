package strickle.json;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import strickle.book.Fault;
import tools.jackson.databind.JsonNode;

/**
 * Reads an object into a record by the names of its components. Every field is examined before the
 * record is made; a record of which a part is faulty is not made.
 *
 * @param <R> the record
 */
final class RecordReader<R extends Record> implements ValueReader<R> {

  private final RecordMaker<R> maker;
  private final Map<String, Field> fields = new LinkedHashMap<>();
  private final Set<String> known;

  /**
   * A reader for one record.
   *
   * @param type the record
   * @param fields its fields in the order of its components
   * @param others names in the same object that somebody else reads
   */
  RecordReader(Class<R> type, List<Field> fields, List<String> others) {
    this.maker = new RecordMaker<>(type);
    fields.forEach(field -> this.fields.put(field.name(), field));
    this.known = new LinkedHashSet<>(this.fields.keySet());
    this.known.addAll(others);
  }

  @Override
  public R read(JsonNode node) {
    if (!node.isObject()) {
      throw Findings.refusal(Shown.of(node), right());
    }
    Findings findings = new Findings();
    Map<String, Object> parts = new HashMap<>();
    inOrder(node).forEach(name -> readOne(name, node, parts, findings));
    findings.settle();
    return maker.make(parts);
  }

  @Override
  public String right() {
    return "an object { } with " + String.join(", ", fields.keySet());
  }

  // First the fields as they stand in the file, then those that are missing.
  private Set<String> inOrder(JsonNode node) {
    Set<String> names = new LinkedHashSet<>(node.propertyNames());
    names.addAll(fields.keySet());
    return names;
  }

  private void readOne(String name, JsonNode node, Map<String, Object> parts, Findings findings) {
    Field field = fields.get(name);
    if (field != null) {
      findings
          .attempt(JsonPath.field(name), () -> field.in(node))
          .ifPresent(part -> parts.put(field.component(), part));
    } else if (!known.contains(name) && !findings.full()) {
      findings.add(unknown(name));
    }
  }

  private Fault unknown(String name) {
    return new Fault(
        JsonPath.field(name), "the unknown field " + Shown.text(name), Hint.toward(name, known));
  }
}
