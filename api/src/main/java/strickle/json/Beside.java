package strickle.json;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import strickle.book.Fault;
import strickle.plan.replan.Happening;
import tools.jackson.databind.JsonNode;

/** Reads what a studio file has noted beside its book: lists of things with an id and a body. */
final class Beside {

  private static final String PATH = JsonPath.ROOT + JsonPath.field("beside");
  private static final String ID = "id";
  private static final String BODY = "body";
  private static final String PROGRESS = "progress";

  private static final List<String> KNOWN =
      List.of("drying", MeshPart.COLLECTION, StudioFile.PLAN_IN_USE, PROGRESS);

  /** No database keeps longer ones. */
  private static final int LONGEST_ID = 200;

  private final Findings findings;
  private final List<BookPart> parts = new ArrayList<>();

  private Beside(Findings findings) {
    this.findings = findings;
  }

  /** Everything that is right; the rest is noted as faults. */
  static List<BookPart> read(JsonNode beside, Findings findings) {
    Beside reading = new Beside(findings);
    if (beside.isObject()) {
      beside.properties().forEach(list -> reading.list(list.getKey(), list.getValue()));
    } else if (!beside.isMissingNode()) {
      findings.add(new Fault(PATH, Shown.of(beside), "an object of lists, or nothing"));
    }
    return reading.parts;
  }

  private void list(String name, JsonNode things) {
    String path = PATH + JsonPath.field(name);
    if (!KNOWN.contains(name)) {
      String right = "one of " + String.join(", ", KNOWN);
      findings.add(new Fault(PATH, "a list " + Shown.text(name), right));
    } else if (!things.isArray()) {
      findings.add(new Fault(path, Shown.of(things), "a list"));
    } else {
      Set<String> ids = new HashSet<>();
      for (int i = 0; i < things.size() && !findings.full(); i++) {
        thing(name, path + JsonPath.index(i), things.get(i), ids);
      }
    }
  }

  private void thing(String list, String path, JsonNode thing, Set<String> ids) {
    Optional<Fault> fault = fault(list, path, thing, ids);
    fault.ifPresent(findings::add);
    if (fault.isEmpty()) {
      JsonNode body = thing.path(BODY);
      findings
          .attempt(path + JsonPath.field(BODY), () -> checked(list, body))
          .ifPresent(right -> parts.add(new BookPart(list, thing.path(ID).asString(), right)));
    }
  }

  private static Optional<Fault> fault(String list, String path, JsonNode thing, Set<String> ids) {
    JsonNode id = thing.path(ID);
    String idPath = path + JsonPath.field(ID);
    if (!thing.isObject() || !thing.path(BODY).isObject()) {
      return Optional.of(new Fault(path, Shown.of(thing), "{\"id\": …, \"body\": {…}}"));
    }
    if (!isId(id)) {
      return Optional.of(new Fault(idPath, Shown.of(id), "an id of 1 to 200 characters"));
    }
    if (list.equals(StudioFile.PLAN_IN_USE) && !id.asString().equals(StudioFile.CURRENT)) {
      String right = '"' + StudioFile.CURRENT + "\", the id of the only plan in use";
      return Optional.of(new Fault(idPath, Shown.of(id), right));
    }
    return ids.add(id.asString())
        ? Optional.empty()
        : Optional.of(new Fault(idPath, Shown.of(id) + " a second time", "each id once"));
  }

  private static boolean isId(JsonNode id) {
    return id.isString()
        && !id.asString().isBlank()
        && id.asString().length() <= LONGEST_ID
        && id.asString().chars().noneMatch(Character::isISOControl);
  }

  /** The body as it is kept, once it has been read as what it shall be. */
  private static String checked(String list, JsonNode body) {
    if (list.equals(PROGRESS)) {
      new Readers().record(Happening.class).read(body);
    } else if (list.equals(StudioFile.PLAN_IN_USE)) {
      Findings.fromItsRoot(() -> PlanFile.parse(body.toString()));
    }
    return body.toString();
  }
}
