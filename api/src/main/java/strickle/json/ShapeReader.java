package strickle.json;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strickle.book.ShapePart;
import strickle.book.Solid;
import tools.jackson.databind.JsonNode;

/**
 * Reads one solid of a mould's shape: its kind in "solid", its measures beside it, and "subtract"
 * when it is taken away.
 */
final class ShapeReader implements ValueReader<ShapePart> {

  /** The field that names the kind of solid. */
  static final String KIND = "solid";

  /** The field that says whether the solid is taken away. */
  static final String SUBTRACT = "subtract";

  private final Field kind;
  private final Field subtract;

  /**
   * A reader of solids.
   *
   * @param readers makes the readers of the single kinds
   */
  ShapeReader(Readers readers) {
    Map<String, ValueReader<?>> solids = new LinkedHashMap<>();
    Names.solids()
        .forEach((name, type) -> solids.put(name, readers.record(type, List.of(KIND, SUBTRACT))));
    kind = new Field(KIND, KIND, new ChoiceReader<>(solids), Optional.empty());
    subtract = readers.field(ShapePart.class, SUBTRACT);
  }

  /** A reader of whole shapes: a list of solids, or a single one without a list around it. */
  ValueReader<List<ShapePart>> orList() {
    ShapeReader one = this;
    ListReader<ShapePart> list = new ListReader<>(one);
    return new ValueReader<>() {
      @Override
      public List<ShapePart> read(JsonNode node) {
        return node.isArray() ? list.read(node) : List.of(one.read(node));
      }

      @Override
      public String right() {
        return one.right() + ", or a list of such";
      }
    };
  }

  @Override
  public ShapePart read(JsonNode node) {
    if (!node.isObject()) {
      throw Findings.refusal(Shown.of(node), right());
    }
    Findings findings = new Findings();
    Optional<Solid> solid = findings.attempt("", () -> solid(node));
    Optional<Object> taken = findings.attempt(JsonPath.field(SUBTRACT), () -> subtract.in(node));
    findings.settle();
    return new ShapePart(solid.orElseThrow(), (boolean) taken.orElseThrow());
  }

  @Override
  public String right() {
    return "a solid such as {\"solid\": \"cylinder\", \"radiusMm\": 50, \"heightMm\": 100}";
  }

  private Solid solid(JsonNode node) {
    Object measures = Findings.within(JsonPath.field(KIND), () -> kind.in(node));
    return (Solid) ((ValueReader<?>) measures).read(node);
  }
}
