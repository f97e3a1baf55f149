package strickle.json;

import java.util.Optional;
import tools.jackson.databind.JsonNode;

/**
 * A field of a record in a file.
 *
 * @param component the record's name for it
 * @param name the file's name for it
 * @param reader reads its value
 * @param whenMissing the value when the field is missing or null; nothing when it is required
 */
record Field(String component, String name, ValueReader<?> reader, Optional<Object> whenMissing) {

  /**
   * What the field is in an object; a fault at the field itself when it is required but missing.
   */
  Object in(JsonNode object) {
    JsonNode value = object.path(name);
    if (whenMissing.isPresent() && (value.isMissingNode() || value.isNull())) {
      return whenMissing.get();
    }
    if (value.isMissingNode()) {
      throw Findings.refusal("nothing", reader.right());
    }
    return reader.read(value);
  }
}
