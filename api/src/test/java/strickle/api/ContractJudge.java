package strickle.api;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Says of any answer whether the contract has it: its status, its media type and its body. */
final class ContractJudge {

  private static final String JSON = "application/json";
  private static final String PROBLEM = "application/problem+json";

  /** Refusals that stand for every operation; what is no valid HTTP is among them. */
  private static final Set<Integer> REFUSALS =
      Set.of(
          400, 401, 403, 404, 405, 408, 409, 411, 412, 413, 414, 415, 417, 422, 426, 428, 429, 431,
          501, 505);

  private static final Set<Integer> EMPTY = Set.of(204, 304);

  private final JsonNode contract;
  private final SchemaRegistry schemas =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
  private final Map<String, Schema> compiled = new HashMap<>();

  /** A judge by a contract, as the service gives it. */
  ContractJudge(String contract) {
    this.contract = JsonMapper.shared().readTree(contract);
  }

  /**
   * What is wrong with an answer; nothing when the contract has it.
   *
   * @param method that was asked with
   * @param template the path as the contract writes it
   */
  Optional<String> wrong(String method, String template, String answer) {
    int status = RawHttp.status(answer);
    String head = answer.substring(0, Math.max(0, answer.indexOf("\r\n\r\n")));
    boolean bodiless = method.equals("HEAD") || EMPTY.contains(status);
    if (REFUSALS.contains(status)) {
      return refusal(status, head, RawHttp.body(answer), bodiless);
    }
    String operation = pointer(method.equals("HEAD") ? "GET" : method, template);
    if (status == 304 && Set.of("GET", "HEAD").contains(method)) {
      return Optional.empty();
    }
    JsonNode answers = contract.at(operation + "/responses/" + status);
    if (answers.isMissingNode()) {
      return Optional.of("the contract has no " + status + " for " + method + " " + template);
    }
    return bodiless ? Optional.empty() : content(operation, status, head, answer);
  }

  private Optional<String> content(String operation, int status, String head, String answer) {
    String responses = operation + "/responses/" + status;
    JsonNode content = contract.at(responses + "/content");
    if (content.isMissingNode()) {
      return RawHttp.body(answer).isEmpty() ? Optional.empty() : Optional.of("a body too many");
    }
    Optional<String> media =
        content.propertyNames().stream()
            .filter(name -> head.toLowerCase(Locale.ROOT).contains("content-type: " + name))
            .findFirst();
    if (media.isEmpty()) {
      return Optional.of("none of " + content.propertyNames() + " in " + head);
    }
    return media.get().equals(JSON)
        ? faults(responses + "/content/application~1json/schema", RawHttp.body(answer))
        : Optional.empty();
  }

  private Optional<String> refusal(int status, String head, String body, boolean bodiless) {
    if (!head.contains(PROBLEM)) {
      return Optional.of("a refusal that is no problem: " + head);
    }
    if (bodiless) {
      return Optional.empty();
    }
    if (!body.contains("\"status\": " + status)) {
      return Optional.of("another status inside: " + body);
    }
    return faults(
        "/paths/~1health/get/responses/default/content/application~1problem+json/schema", body);
  }

  private Optional<String> faults(String pointer, String json) {
    Schema schema = compiled.computeIfAbsent(pointer, this::compile);
    try {
      List<?> faults = schema.validate(json, InputFormat.JSON);
      return faults.isEmpty() ? Optional.empty() : Optional.of(faults + " in " + json);
    } catch (JacksonException noJson) {
      return Optional.of("no JSON: " + json);
    }
  }

  private Schema compile(String pointer) {
    if (!contract.at(pointer).isObject()) {
      throw new IllegalStateException("no schema at " + pointer);
    }
    ObjectNode schema = JsonMapper.shared().createObjectNode();
    schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    schema.set("paths", contract.path("paths"));
    schema.set("components", contract.path("components"));
    schema.put("$ref", "#" + pointer.replace("{", "%7B").replace("}", "%7D"));
    return schemas.getSchema(schema.toString(), InputFormat.JSON);
  }

  private static String pointer(String method, String template) {
    String path = template.replace("~", "~0").replace("/", "~1");
    return "/paths/" + path + "/" + method.toLowerCase(Locale.ROOT);
  }
}
