package strickle.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.api.Listening;
import strickle.api.Service;
import strickle.store.Database;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Whatever a command can be told, the service can be asked: the table commands-and-operations.txt.
 */
class EverythingCanBeAskedTest {

  /** Of the terminal and its files; the service has its own words for none of them. */
  private static final Set<String> OF_THE_TERMINAL =
      Set.of("--json", "--units", "--help", "--version", "--force");

  private static final String SERVE = "serve";

  private record Row(String command, String option, String operation, String place) {

    private static Row of(String line) {
      String[] words = line.split(" ", -1);
      return new Row(words[0], words[1], words[2], words.length > 3 ? words[3] : "");
    }

    private String told() {
      return command + " " + option;
    }
  }

  @Test
  void everyOptionOfEveryCommandIsInTheTableAndNoOther() throws IOException {
    Set<String> listed = new TreeSet<>();
    rows().forEach(row -> listed.add(row.told()));
    Set<String> there = new TreeSet<>();
    Shell.options()
        .forEach(
            (command, options) ->
                options.stream()
                    .filter(option -> !OF_THE_TERMINAL.contains(option))
                    .filter(option -> !command.equals(SERVE))
                    .forEach(option -> there.add(command + " " + option)));
    assertEquals(there, listed);
    System.out.println(listed.size() + " options of the commands can be asked of the service");
  }

  @Test
  void everyPlaceInTheTableIsInTheContract(@TempDir Path folder) throws IOException {
    Map<String, JsonNode> operations = new TreeMap<>();
    JsonNode contract = contract(folder);
    for (JsonNode path : contract.path("paths")) {
      for (JsonNode operation : path) {
        operations.put(operation.path("operationId").asString(), operation);
      }
    }
    List<String> wrong = new ArrayList<>();
    for (Row row : rows()) {
      JsonNode operation = operations.get(row.operation());
      if (operation == null || !has(contract, operation, row.place())) {
        wrong.add(row.toString());
      }
    }
    assertEquals(List.of(), wrong);
  }

  private static boolean has(JsonNode contract, JsonNode operation, String place) {
    if (place.isEmpty()) {
      return true;
    }
    for (JsonNode parameter : operation.path("parameters")) {
      if (parameter.path("name").asString().equals(place)) {
        return true;
      }
    }
    JsonNode at = operation.at("/requestBody/content/application~1json/schema");
    for (String field : place.split("[.]", -1)) {
      at = resolved(contract, at).path("properties").path(field);
    }
    return !at.isMissingNode();
  }

  /** What a schema stands for: of a list its things, of a thing or nothing the thing. */
  private static JsonNode resolved(JsonNode contract, JsonNode schema) {
    if (schema.has("$ref")) {
      return resolved(contract, contract.at(schema.path("$ref").asString().substring(1)));
    }
    if (schema.has("items")) {
      return resolved(contract, schema.path("items"));
    }
    return schema.has("anyOf") ? resolved(contract, schema.path("anyOf").path(0)) : schema;
  }

  private static JsonNode contract(Path folder) throws IOException {
    Database database = Database.inFolder(folder);
    try (Service service =
            Service.start(database, Listening.here(0), Clock.systemUTC(), Version.NUMBER);
        InputStream in =
            URI.create("http://localhost:" + service.port() + "/api/openapi.json")
                .toURL()
                .openStream()) {
      return JsonMapper.shared().readTree(in.readAllBytes());
    }
  }

  private static List<Row> rows() throws IOException {
    try (InputStream in =
        EverythingCanBeAskedTest.class.getResourceAsStream("commands-and-operations.txt")) {
      List<Row> rows =
          new String(in.readAllBytes(), UTF_8)
              .lines()
              .filter(line -> !line.startsWith("#"))
              .map(Row::of)
              .toList();
      assertTrue(rows.size() > 100, rows.size() + " rows");
      return rows;
    }
  }
}
