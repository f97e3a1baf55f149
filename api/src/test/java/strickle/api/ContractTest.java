package strickle.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

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
}
