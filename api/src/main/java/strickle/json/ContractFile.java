package strickle.json;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import strickle.json.contract.Answer;
import strickle.json.contract.Operation;
import strickle.json.contract.Parameter;
import strickle.json.contract.Shape;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Writes the service's contract as an OpenAPI 3.1 document. */
public final class ContractFile {

  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  /** What every refusal is told in: RFC 9457. */
  private static final String PROBLEM = "application/problem+json";

  private static final String SESSION = "session";

  private final Schemas schemas = new Schemas();
  private final Shape problem;

  private ContractFile(Shape problem) {
    this.problem = problem;
  }

  /**
   * Writes the document.
   *
   * @param operations every operation, each path and method once
   * @param problem what a refusal looks like
   * @param cookie by which who has opened a studio shows it
   * @param version the version of the program
   */
  public static String write(
      List<Operation> operations, Shape problem, String cookie, String version) {
    return Pretty.text(new ContractFile(problem).document(operations, cookie, version));
  }

  private ObjectNode document(List<Operation> operations, String cookie, String version) {
    ObjectNode root = NODES.objectNode().put("openapi", "3.1.0");
    root.putObject("info")
        .put("title", "Strickle")
        .put("version", version)
        .put(
            "description",
            "The week of a small concrete-casting studio: its book, plans, batches and prices."
                + " Units stand in the names of the fields; money is in the studio's currency.");
    // A studio that opens without a password needs no session: one of the two.
    ArrayNode security = root.putArray("security");
    security.addObject();
    security.addObject().putArray(SESSION);
    root.set("paths", paths(operations));
    ObjectNode components = root.putObject("components");
    components.set("schemas", schemas.components());
    components.putObject("securitySchemes").set(SESSION, session(cookie));
    return root;
  }

  private static ObjectNode session(String cookie) {
    return NODES
        .objectNode()
        .put("type", "apiKey")
        .put("in", "cookie")
        .put("name", cookie)
        .put(
            "description",
            "Of a studio that a password opens: POST /api/session gives it. Without it every"
                + " operation that does not say otherwise is answered with 401.");
  }

  private ObjectNode paths(List<Operation> operations) {
    ObjectNode paths = NODES.objectNode();
    for (Operation operation : operations) {
      ObjectNode methods = (ObjectNode) paths.get(operation.path());
      if (methods == null) {
        methods = paths.putObject(operation.path());
      }
      methods.set(operation.method().toLowerCase(Locale.ROOT), written(operation));
    }
    return paths;
  }

  private ObjectNode written(Operation operation) {
    ObjectNode written = NODES.objectNode();
    written.put("operationId", operation.id());
    written.putArray("tags").add(operation.topic());
    written.put("summary", operation.summary()).put("description", operation.description());
    if (operation.open()) {
      written.putArray("security");
    }
    operation.parameters().forEach(p -> written.withArray("/parameters").add(written(p)));
    operation
        .body()
        .ifPresent(shape -> written.set("requestBody", taken(shape, operation.example())));
    ObjectNode answers = written.putObject("responses");
    byStatus(operation.answers()).forEach((status, answer) -> answers.set(status, written(answer)));
    answers.set("default", refusal());
    return written;
  }

  private static Map<String, Answer> byStatus(List<Answer> answers) {
    Map<String, Answer> sorted = new TreeMap<>();
    answers.forEach(answer -> sorted.put(Integer.toString(answer.status()), answer));
    return sorted;
  }

  private static ObjectNode written(Parameter parameter) {
    ObjectNode written =
        NODES
            .objectNode()
            .put("name", parameter.name())
            .put("in", Names.word(parameter.in()))
            .put("description", parameter.description())
            .put("required", parameter.required());
    written.set("schema", schema(parameter.kind()));
    return written.put("example", parameter.example());
  }

  private static ObjectNode schema(Parameter.Kind kind) {
    return switch (kind) {
      case TEXT -> NODES.objectNode().put("type", "string");
      case WHOLE -> NODES.objectNode().put("type", "integer");
      case NUMBER -> NODES.objectNode().put("type", "number");
      case FLAG -> NODES.objectNode().put("type", "boolean");
      case DATE -> NODES.objectNode().put("type", "string").put("format", "date");
    };
  }

  private ObjectNode taken(Shape shape, String example) {
    ObjectNode body = NODES.objectNode().put("required", true);
    ObjectNode content = body.putObject("content").putObject(shape.mediaType());
    content.set("schema", schemas.of(shape));
    exemplify(content, shape, example);
    return body;
  }

  private ObjectNode written(Answer answer) {
    ObjectNode written = NODES.objectNode().put("description", answer.description());
    for (String header : answer.headers()) {
      written.withObject("/headers/" + header).putObject("schema").put("type", "string");
    }
    answer
        .body()
        .ifPresent(
            shape -> {
              ObjectNode content = written.putObject("content").putObject(shape.mediaType());
              content.set("schema", schemas.of(shape));
              exemplify(content, shape, answer.example());
            });
    return written;
  }

  private static void exemplify(ObjectNode content, Shape shape, String example) {
    if (shape.mediaType().equals("application/json") && !example.isEmpty()) {
      content.set("example", Tree.of(example, new Findings()));
    } else if (!example.isEmpty()) {
      content.put("example", example);
    }
  }

  private ObjectNode refusal() {
    ObjectNode written = NODES.objectNode().put("description", "It was refused; nothing changed.");
    written.putObject("content").putObject(PROBLEM).set("schema", schemas.of(problem));
    return written;
  }
}
