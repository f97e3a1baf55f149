package strickle.json;

import tools.jackson.databind.JsonNode;

/** Reads true and false. */
final class FlagReader implements ValueReader<Boolean> {

  @Override
  public Boolean read(JsonNode node) {
    if (!node.isBoolean()) {
      throw Findings.refusal(Shown.of(node), right());
    }
    return node.booleanValue();
  }

  @Override
  public String right() {
    return "true or false";
  }
}
