package strickle.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strickle.book.Book;
import strickle.book.Faulty;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Takes a book apart into the things it holds, and puts it together again. */
public final class BookParts {

  /** The collection of the studio's own data, and the id of the only thing in it. */
  public static final String STUDIO = "studio";

  /** The collection whose things have no id of their own in a book: they are counted from 1. */
  public static final String PINS = "pins";

  /** Every list of a book, in its order. */
  public static final List<String> LISTS =
      List.of(
          "people",
          "stations",
          "forms",
          "moulds",
          "materials",
          "mixes",
          "pieces",
          "orders",
          "channels",
          "fairs",
          PINS);

  private static final String ID = "id";

  private BookParts() {}

  /** Every thing of a book: first the studio's own data, then list by list in their order. */
  public static List<BookPart> of(Book book) {
    ObjectNode tree = RecordWriter.object(book);
    List<BookPart> parts = new ArrayList<>();
    parts.add(new BookPart(STUDIO, STUDIO, tree.path(STUDIO).toString()));
    LISTS.forEach(list -> parts.addAll(parts(list, tree.path(list))));
    return parts;
  }

  private static List<BookPart> parts(String list, JsonNode things) {
    List<BookPart> parts = new ArrayList<>();
    for (JsonNode thing : things) {
      String id =
          list.equals(PINS) ? Integer.toString(parts.size() + 1) : thing.path(ID).asString();
      parts.add(new BookPart(list, id, thing.toString()));
    }
    return parts;
  }

  /**
   * Puts a book together.
   *
   * @param parts the things of it, each list in its order; what is of no list of a book is left out
   * @param meshes where the files lie that moulds name as their mesh
   * @throws Faulty when they make no book; paths are those of the whole book
   */
  public static Book book(List<BookPart> parts, Meshes meshes) {
    Map<String, ArrayNode> lists = new LinkedHashMap<>();
    LISTS.forEach(list -> lists.put(list, JsonNodeFactory.instance.arrayNode()));
    ObjectNode whole = JsonNodeFactory.instance.objectNode();
    Findings findings = new Findings();
    for (BookPart part : parts) {
      if (part.collection().equals(STUDIO)) {
        whole.set(STUDIO, Tree.of(part.body(), findings));
      } else if (lists.containsKey(part.collection())) {
        lists.get(part.collection()).add(Tree.of(part.body(), findings));
      }
    }
    findings.settle();
    lists.forEach(whole::set);
    return BookFile.of(whole, meshes);
  }
}
