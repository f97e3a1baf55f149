package strickle.json;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import strickle.book.Faulty;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Reads and writes single things of a studio book. */
public final class ItemFile {

  private ItemFile() {}

  /**
   * Reads a thing and writes it as it is kept: fields in their order, nothing for what is missing.
   *
   * @param json an object
   * @param type what the thing is, such as {@code Piece.class}
   * @param meshes where the files lie that moulds name as their mesh
   * @throws Faulty with every fault, paths from the thing ({@code $.minutesEach})
   */
  public static String kept(String json, Class<? extends Record> type, Meshes meshes) {
    Findings findings = new Findings();
    Optional<Record> item =
        findings.attempt(
            JsonPath.ROOT, () -> new Readers(meshes).record(type).read(Tree.of(json, findings)));
    findings.settle();
    return RecordWriter.object(item.orElseThrow()).toString();
  }

  /** A JSON object as it is kept. */
  public static String compact(String json) {
    return Tree.of(json, new Findings()).toString();
  }

  /** The id in a thing's body; nothing when it has none. */
  public static Optional<String> id(String body) {
    return Tree.of(body, new Findings()).path("id").asStringOpt();
  }

  /** A thing's body for people. */
  public static String pretty(String body) {
    return Pretty.text(Tree.of(body, new Findings()));
  }

  /**
   * One page of a list.
   *
   * @param bodies what stands on it
   * @param ids the id of each, where the things have none of their own; else none
   * @param next what to ask for the next page with; nothing on the last
   */
  public static String page(
      List<String> bodies, Optional<List<String>> ids, Optional<String> next) {
    ObjectNode page = JsonNodeFactory.instance.objectNode();
    ArrayNode items = page.putArray("items");
    bodies.forEach(body -> items.add(Tree.of(body, new Findings())));
    ids.ifPresent(all -> all.forEach(page.putArray("ids")::add));
    next.ifPresent(after -> page.put("next", after));
    return Pretty.text(page);
  }

  /**
   * Which fields differ between two bodies of one thing.
   *
   * @return their names, those of the first body first
   */
  public static List<String> differing(String one, String other) {
    JsonNode first = Tree.of(one, new Findings());
    JsonNode second = Tree.of(other, new Findings());
    return Stream.concat(first.propertyNames().stream(), second.propertyNames().stream())
        .distinct()
        .filter(name -> !first.path(name).equals(second.path(name)))
        .toList();
  }
}
