package strickle.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class ContractTest {

  private static final Pattern BRACES = Pattern.compile("\\{[^}]*}");

  @Test
  void theBookIsWhatTheContractSays(@TempDir Path folder) {
    try (Web web = Web.demo(folder)) {
      String contract = web.get("/api/openapi.json").body();
      assertTrue(contract.contains("\"openapi\": \"3.1.0\""));
      String definitions = contract.substring(contract.indexOf("\"components\""));
      String schema =
          "{\"$schema\": \"https://json-schema.org/draft/2020-12/schema\","
              + " \"$ref\": \"#/components/schemas/BookFile\", "
              + definitions;
      SchemaRegistry registry =
          SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
      Schema book = registry.getSchema(schema, InputFormat.JSON);
      List<Error> errors = book.validate(web.get("/api/book").body(), InputFormat.JSON);
      assertEquals(List.of(), errors);
    }
  }

  @Test
  void everyNumberHasItsUnit(@TempDir Path folder) {
    List<String> without = new ArrayList<>();
    try (Web web = Web.empty(folder)) {
      JsonNode contract = JsonMapper.shared().readTree(web.get("/api/openapi.json").body());
      for (Map.Entry<String, JsonNode> schema : contract.at("/components/schemas").properties()) {
        for (Map.Entry<String, JsonNode> field :
            schema.getValue().path("properties").properties()) {
          if (isNumber(field.getValue()) && !field.getValue().has("description")) {
            without.add(schema.getKey() + "." + field.getKey());
          }
        }
      }
    }
    assertEquals(List.of(), without);
  }

  /** The rules of OpenAPI 3.1.0 that a document made by hand could break. */
  @Test
  void theDocumentIsWhatOpenApiAsksFor(@TempDir Path folder) {
    try (Web web = Web.empty(folder)) {
      JsonNode contract = JsonMapper.shared().readTree(web.get("/api/openapi.json").body());
      assertEquals("3.1.0", contract.path("openapi").asString());
      assertTrue(contract.at("/info/title").isString() && contract.at("/info/version").isString());
      List<String> wrong = new ArrayList<>();
      Set<String> names = new HashSet<>();
      contract
          .path("paths")
          .properties()
          .forEach(
              path ->
                  path.getValue()
                      .properties()
                      .forEach(
                          method -> {
                            String name = method.getValue().path("operationId").asString("");
                            if (name.isEmpty() || !names.add(name)) {
                              wrong.add("no name of its own: " + method.getKey() + path.getKey());
                            }
                            wrong.addAll(parameters(name, path.getKey(), method.getValue()));
                            wrong.addAll(answers(name, method.getValue()));
                          }));
      wrong.addAll(references(contract, contract));
      wrong.addAll(schemas(contract));
      assertEquals(List.of(), wrong);
      System.out.println(names.size() + " operations in a document that OpenAPI 3.1 allows");
    }
  }

  // Each part of the path in braces is a parameter that must be there, and no other is.
  private static List<String> parameters(String name, String path, JsonNode operation) {
    List<String> wrong = new ArrayList<>();
    Set<String> inPath = new TreeSet<>();
    Set<String> all = new HashSet<>();
    for (JsonNode parameter : operation.path("parameters")) {
      String in = parameter.path("in").asString();
      if (!Set.of("path", "query", "header").contains(in)
          || !all.add(in + " " + parameter.path("name").asString())
          || !parameter.path("schema").isObject()) {
        wrong.add(name + ": " + parameter);
      }
      if (in.equals("path") && parameter.path("required").asBoolean()) {
        inPath.add("{" + parameter.path("name").asString() + "}");
      }
    }
    Set<String> braces = new TreeSet<>();
    BRACES.matcher(path).results().forEach(found -> braces.add(found.group()));
    if (!braces.equals(inPath)) {
      wrong.add(name + ": " + inPath + " of " + path);
    }
    return wrong;
  }

  private static List<String> answers(String name, JsonNode operation) {
    List<String> wrong = new ArrayList<>();
    boolean good = false;
    for (Map.Entry<String, JsonNode> answer : operation.path("responses").properties()) {
      good |= answer.getKey().startsWith("2");
      boolean known = answer.getKey().matches("[1-5][0-9][0-9]|default");
      if (!known || !answer.getValue().path("description").isString()) {
        wrong.add(name + ": answer " + answer);
      }
    }
    return good ? wrong : List.of(name + " never goes well");
  }

  private static List<String> references(JsonNode contract, JsonNode at) {
    List<String> wrong = new ArrayList<>();
    at.properties()
        .forEach(
            field -> {
              String text = field.getValue().asString("");
              boolean refers = field.getKey().equals("$ref") && text.startsWith("#/");
              if (refers && !contract.at(text.substring(1)).isObject()) {
                wrong.add(text + " leads nowhere");
              }
            });
    at.forEach(inner -> wrong.addAll(references(contract, inner)));
    return wrong;
  }

  // The schemas of OpenAPI 3.1 are those of JSON Schema 2020-12, which has a schema of its own.
  private static List<String> schemas(JsonNode contract) {
    Schema ofSchemas =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
    List<String> wrong = new ArrayList<>();
    for (Map.Entry<String, JsonNode> schema : contract.at("/components/schemas").properties()) {
      String json = schema.getValue().toString();
      ofSchemas
          .validate(json, InputFormat.JSON)
          .forEach(error -> wrong.add(schema.getKey() + ": " + error));
    }
    assertTrue(!ofSchemas.validate("{\"type\": \"colour\"}", InputFormat.JSON).isEmpty());
    return wrong;
  }

  private static boolean isNumber(JsonNode field) {
    String type = field.path("type").asString(field.at("/anyOf/0/type").asString(""));
    return type.equals("number") || type.equals("integer");
  }
}
