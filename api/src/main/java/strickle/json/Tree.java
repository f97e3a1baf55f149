package strickle.json;

import java.math.BigDecimal;
import strickle.book.Fault;
import strickle.book.Faulty;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.TokenStreamFactory;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Makes a tree of a JSON text, strictly: within the {@link Limits}, nothing after the value, and a
 * field that stands twice in an object is a fault. Numbers stay exact.
 */
final class Tree {

  // Without its table of names, nobody can make up names that slow the parser down.
  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .streamReadConstraints(Limits.ofParser())
          .disable(TokenStreamFactory.Feature.CANONICALIZE_PROPERTY_NAMES)
          .build();

  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private final TextPlaces places;
  private final JsonParser parser;
  private final Findings findings;

  private Tree(String text, JsonParser parser, Findings findings) {
    this.places = new TextPlaces(text);
    this.parser = parser;
    this.findings = findings;
  }

  /**
   * Makes the tree.
   *
   * @param json the JSON; a byte order mark before it is none of it (RFC 8259, 8.1)
   * @param findings where fields that stand twice are noted; the first of them is in the tree
   * @throws Faulty when the text is not JSON, with line and column
   */
  static JsonNode of(String json, Findings findings) {
    String text = Utf8.withoutMark(json);
    try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), text)) {
      return new Tree(text, parser, findings).whole();
    }
  }

  private JsonNode whole() {
    JsonNode root = root();
    try {
      if (parser.nextToken() == null) {
        return root;
      }
    } catch (JacksonException trailing) {
      throw SyntaxFault.trailing(places, SyntaxFault.offset(parser, trailing));
    }
    throw SyntaxFault.trailing(places, offset());
  }

  private JsonNode root() {
    try {
      if (parser.nextToken() == null) {
        throw Findings.refusal("an empty text", Slip.NO_VALUE.right());
      }
      return value();
    } catch (JacksonException broken) {
      throw SyntaxFault.of(places, parser, broken);
    }
  }

  private JsonNode value() {
    return switch (parser.currentToken()) {
      case START_OBJECT -> object();
      case START_ARRAY -> list();
      case VALUE_STRING -> NODES.stringNode(parser.getString());
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> NODES.numberNode(number());
      case VALUE_TRUE -> NODES.booleanNode(true);
      case VALUE_FALSE -> NODES.booleanNode(false);
      default -> NODES.nullNode();
    };
  }

  private ObjectNode object() {
    ObjectNode object = NODES.objectNode();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String name = parser.currentName();
      if (object.has(name) && !findings.full()) {
        findings.add(twice(name));
      }
      parser.nextToken();
      object.putIfAbsent(name, value());
    }
    return object;
  }

  private ArrayNode list() {
    ArrayNode list = NODES.arrayNode();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      list.add(value());
    }
    return list;
  }

  private BigDecimal number() {
    try {
      return new BigDecimal(parser.getString());
    } catch (NumberFormatException hugeExponent) {
      throw Findings.refusal(
          Shown.shortened(parser.getString()) + places.at(offset()),
          "a number of an ordinary size");
    }
  }

  private Fault twice(String name) {
    return new Fault(
        JsonPath.of(parser.streamReadContext()),
        "the field " + Shown.text(name) + " a second time" + place(),
        "every field once");
  }

  // The parser's own count: the faults of this kind can be many, and the text long.
  private String place() {
    TokenStreamLocation here = parser.currentTokenLocation();
    return " at line " + here.getLineNr() + ", column " + here.getColumnNr();
  }

  private long offset() {
    return parser.currentTokenLocation().getCharOffset();
  }
}
