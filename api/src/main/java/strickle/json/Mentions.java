package strickle.json;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import strickle.book.Fault;
import tools.jackson.databind.JsonNode;

/**
 * Finds the ids that a book names and that are nowhere in it, even in a book with other faults that
 * keep it from being made: so that all of them are told together.
 */
final class Mentions {

  /** Where an id is named, and the collection it should be in; brackets stand for each item. */
  private record Mention(String path, String collection) {}

  private static final List<Mention> ALL =
      List.of(
          new Mention("moulds[].forms[].form", "forms"),
          new Mention("moulds[].consumes[].material", "materials"),
          new Mention("mixes[].dry[].material", "materials"),
          new Mention("mixes[].pigment[].material", "materials"),
          new Mention("pieces[].mould", "moulds"),
          new Mention("pieces[].mix", "mixes"),
          new Mention("pieces[].route[].by[]", "people"),
          new Mention("pieces[].route[].consumes[].material", "materials"),
          new Mention("pieces[].route[].restsOn.station", "stations"),
          new Mention("pieces[].packing[].material", "materials"),
          new Mention("orders[].lines[].piece", "pieces"),
          new Mention("fairs[].channel", "channels"),
          new Mention("fairs[].demand[].piece", "pieces"),
          new Mention("pins[].piece", "pieces"),
          new Mention("pins[].person", "people"));

  private static final String EACH = "[]";

  private final JsonNode book;
  private final List<Fault> missing = new ArrayList<>();

  private Mentions(JsonNode book) {
    this.book = book;
  }

  /** Every id named in a book that is in none of its collections, with its path from the root. */
  static List<Fault> missing(JsonNode book) {
    Mentions mentions = new Mentions(book);
    for (Mention mention : ALL) {
      Set<String> known = mentions.ids(mention.collection());
      mentions.follow(book, JsonPath.ROOT, mention.path(), mention.collection(), known);
    }
    return mentions.missing;
  }

  private Set<String> ids(String collection) {
    Set<String> ids = new HashSet<>();
    book.path(collection).forEach(item -> ids.add(item.path("id").asString("")));
    return ids;
  }

  private void follow(JsonNode node, String at, String path, String collection, Set<String> known) {
    int dot = path.indexOf('.');
    String step = dot < 0 ? path : path.substring(0, dot);
    String rest = dot < 0 ? "" : path.substring(dot + 1);
    boolean each = step.endsWith(EACH);
    String field = each ? step.substring(0, step.length() - EACH.length()) : step;
    JsonNode child = node.path(field);
    String place = at + JsonPath.field(field);
    if (!each) {
      arrive(child, place, rest, collection, known);
      return;
    }
    for (int i = 0; child.isArray() && i < child.size(); i++) {
      arrive(child.get(i), place + "[" + i + "]", rest, collection, known);
    }
  }

  private void arrive(JsonNode node, String at, String rest, String collection, Set<String> known) {
    if (!rest.isEmpty()) {
      follow(node, at, rest, collection, known);
    } else if (node.isString() && !known.contains(node.stringValue())) {
      String given = node.stringValue();
      String right = "the id of one of the " + collection + " in the book";
      missing.add(new Fault(at, Shown.of(node), Hint.toward(given, known, right)));
    }
  }
}
