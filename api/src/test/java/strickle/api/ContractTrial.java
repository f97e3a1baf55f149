package strickle.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Asks a service, holds what is sent and what comes back against its contract, and knows what was
 * never asked for.
 */
final class ContractTrial {

  private static final JsonMapper JSON = JsonMapper.shared();

  private static final Path WRITTEN = Path.of("target", "examples.json");
  private static final Set<String> SENT_WHOLE =
      Set.of("changeBook", "changeStudio", "importStudio", "checkStudio", "checkBook");
  private final Map<String, String> operations = new TreeMap<>();
  private final Set<String> asked = new TreeSet<>();
  private final Map<String, JsonNode> examples = new TreeMap<>();
  private final ObjectNode all = JSON.createObjectNode();
  private final ObjectNode contract;
  private final SchemaRegistry schemas;
  private final Web web;

  /** A trial of a service. */
  ContractTrial(Web web) {
    this.web = web;
    contract = (ObjectNode) JSON.readTree(web.get("/api/openapi.json").body());
    schemas = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    contract
        .path("paths")
        .properties()
        .forEach(
            path ->
                path.getValue()
                    .properties()
                    .forEach(
                        method ->
                            operations.put(
                                method.getKey().toUpperCase(Locale.ROOT) + " " + path.getKey(),
                                method.getValue().path("operationId").asString())));
    assertEquals(operations.size(), Set.copyOf(operations.values()).size(), "one name each");
  }

  /** Fails when anything was never asked for, or is not described with an example. */
  void end() {
    Set<String> never = new TreeSet<>(operations.values());
    never.removeAll(asked);
    assertEquals(Set.of(), never, "operations that were never asked for");
    writeDown();
    operations.forEach((address, name) -> isDescribed(address.split(" ", 2), name));
  }

  /**
   * Writes down what was sent and answered. What the contract shows is such a file, taken over into
   * {@code src/main/resources/strickle/api/examples.json} whenever an operation is new or other.
   */
  private void writeDown() {
    examples.forEach(all::set);
    try {
      Files.createDirectories(WRITTEN.getParent());
      Files.writeString(WRITTEN, all.toPrettyString() + "\n");
    } catch (IOException cannot) {
      throw new UncheckedIOException(cannot);
    }
  }

  private void isDescribed(String[] address, String name) {
    String pointer = "/paths/" + escaped(address[1]) + "/" + address[0].toLowerCase(Locale.ROOT);
    JsonNode operation = contract.at(pointer);
    assertTrue(!operation.path("summary").asString("").isEmpty(), name + " has no summary");
    assertTrue(!operation.path("description").asString("").isEmpty(), name + " says nothing");
    for (JsonNode parameter : operation.path("parameters")) {
      assertTrue(!parameter.path("description").asString("").isEmpty(), name + " " + parameter);
    }
    boolean shown = isShown(name, pointer + "/requestBody", operation.path("requestBody"));
    for (Map.Entry<String, JsonNode> answer : operation.path("responses").properties()) {
      if (answer.getKey().startsWith("2")) {
        String place = pointer + "/responses/" + answer.getKey();
        shown |= answer.getValue().has("content") && isShown(name, place, answer.getValue());
      }
    }
    shown |= !operation.path("parameters").isEmpty();
    assertTrue(shown || address[0].equals("DELETE"), name + " has no example");
  }

  private boolean isShown(String name, String place, JsonNode message) {
    boolean shown = false;
    for (Map.Entry<String, JsonNode> content : message.path("content").properties()) {
      JsonNode example = content.getValue().path("example");
      boolean json = content.getKey().equals("application/json");
      shown |= !example.isMissingNode();
      assertTrue(!json || !example.isMissingNode() || isSecond(place), name + " shows nothing");
      if (json && !example.isMissingNode()) {
        String schema = place + "/content/application~1json/schema";
        hold(name + " example", schema, example.toString());
      }
    }
    return shown;
  }

  // The second of two ways in which an operation may answer is as the first.
  private static boolean isSecond(String place) {
    return place.endsWith("/responses/201");
  }

  private void record(String name, HttpResponse<String> answer, String media) {
    if (name.equals("readContract")) {
      examples.put(name, JSON.createObjectNode().put("openapi", "3.1.0"));
    } else if (media.equals("application/json")) {
      examples.putIfAbsent(name, shortened(JSON.readTree(answer.body())));
    } else if (media.startsWith("text/")) {
      String first = answer.body().lines().limit(12).collect(Collectors.joining("\n")) + "\n";
      examples.putIfAbsent(name, JsonNodeFactory.instance.stringNode(first));
    }
  }

  /** The same with one thing of each list. */
  private static JsonNode shortened(JsonNode node) {
    if (node.isArray()) {
      ArrayNode list = JSON.createArrayNode();
      node.forEach(
          item -> {
            if (list.isEmpty()) {
              list.add(shortened(item));
            }
          });
      return list;
    }
    if (node.isObject()) {
      ObjectNode object = JSON.createObjectNode();
      node.properties().forEach(f -> object.set(f.getKey(), shortened(f.getValue())));
      return object;
    }
    return node;
  }

  /** The method and path of an operation. */
  String[] address(String name) {
    return operations.entrySet().stream()
        .filter(entry -> entry.getValue().equals(name))
        .map(entry -> entry.getKey().split(" ", 2))
        .findFirst()
        .orElseThrow();
  }

  /** The example of what an operation takes. */
  String example(String... address) {
    String operation = "/paths/" + escaped(address[1]) + "/" + address[0].toLowerCase(Locale.ROOT);
    return contract.at(operation + "/requestBody/content/application~1json/example").toString();
  }

  /** The ETag of what stands at a path. */
  String tag(String path) {
    return web.get(path).headers().firstValue("ETag").orElseThrow();
  }

  /** Asks, and holds what is sent and what comes back against the contract. */
  HttpResponse<String> ask(String method, String path, String body, String... headers) {
    String template = template(method, path.replaceAll("[?].*", ""));
    String name = operations.get(method + " " + template);
    asked.add(name);
    String pointer = "/paths/" + escaped(template) + "/" + method.toLowerCase(Locale.ROOT);
    JsonNode taken = contract.at(pointer + "/requestBody/content");
    assertEquals(body.isEmpty(), taken.isMissingNode(), name + " takes a body or none");
    if (taken.has("application/json")) {
      hold(name + " sent", pointer + "/requestBody/content/application~1json/schema", body);
    }
    HttpResponse<String> answer = web.send(method, path, body, headers);
    int status = answer.statusCode();
    assertTrue(status < 300, name + " " + status + " " + answer.body());
    String responses = pointer + "/responses/" + status;
    assertTrue(contract.at(responses).isObject(), name + " answered " + status);
    JsonNode content = contract.at(responses + "/content");
    if (content.isObject()) {
      String media = content.propertyNames().iterator().next();
      String got = answer.headers().firstValue("Content-Type").orElse("nothing");
      assertTrue(got.startsWith(media), name + " came as " + got);
      record(name, answer, media);
      if (SENT_WHOLE.contains(name)) {
        examples.put(name + " sent", JSON.readTree(body));
      }
      if (media.equals("application/json")) {
        hold(name, responses + "/content/application~1json/schema", answer.body());
      }
    } else {
      assertEquals("", answer.body(), name);
    }
    content = contract.at(responses + "/headers");
    content
        .propertyNames()
        .forEach(header -> assertTrue(answer.headers().firstValue(header).isPresent(), name));
    return answer;
  }

  private void hold(String name, String pointer, String json) {
    assertTrue(contract.at(pointer).isObject(), name + " has no schema at " + pointer);
    ObjectNode schema = JSON.createObjectNode();
    schema.set("paths", contract.path("paths"));
    schema.set("components", contract.path("components"));
    schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    schema.put("$ref", "#" + pointer.replace("{", "%7B").replace("}", "%7D"));
    Schema compiled = schemas.getSchema(schema.toString(), InputFormat.JSON);
    assertNotEquals(List.of(), compiled.validate("[1]", InputFormat.JSON), name);
    assertEquals(
        List.of(), compiled.validate(json, InputFormat.JSON), () -> name + "\n" + shortened(json));
  }

  private static String shortened(String json) {
    return json.substring(0, Math.min(json.length(), 2000));
  }

  private String template(String method, String path) {
    List<String> fitting =
        operations.keySet().stream()
            .filter(key -> key.startsWith(method + " "))
            .map(key -> key.substring(method.length() + 1))
            .filter(one -> path.matches(one.replaceAll("[{][a-z]+[}]", "[^/]+")))
            .sorted((one, other) -> Boolean.compare(one.contains("{"), other.contains("{")))
            .toList();
    assertTrue(!fitting.isEmpty(), "nothing in the contract is " + method + " " + path);
    return fitting.get(0);
  }

  private static String escaped(String path) {
    return path.replace("~", "~0").replace("/", "~1");
  }
}
