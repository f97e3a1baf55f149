package strickle.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class ContractTest {

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

  private static boolean isNumber(JsonNode field) {
    String type = field.path("type").asString(field.at("/anyOf/0/type").asString(""));
    return type.equals("number") || type.equals("integer");
  }
}
