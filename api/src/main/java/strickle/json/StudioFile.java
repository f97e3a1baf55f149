package strickle.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strickle.book.Book;
import strickle.book.Fault;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Reads and writes whole studios ({@code strickle-studio/1}): the book, and everything noted beside
 * it by collection and id.
 */
public final class StudioFile {

  /** The collection of the plan in use. */
  public static final String PLAN_IN_USE = "plan-in-use";

  /** The id of the only thing in it. */
  public static final String CURRENT = "current";

  private static final FileFormat FORMAT =
      new FileFormat("strickle-studio/1", "a whole studio", Limits.STUDIO_BYTES);

  private static final String BOOK = "book";
  private static final String BESIDE = "beside";
  private static final String ID = "id";
  private static final String BODY = "body";

  private StudioFile() {}

  /**
   * Writes a studio so that reading it again gives the same things in the same order.
   *
   * @param parts everything it holds; together they make a valid book
   */
  public static String write(List<BookPart> parts) {
    ObjectNode whole = JsonNodeFactory.instance.objectNode();
    whole.set(BOOK, RecordWriter.object(BookParts.book(parts, in(parts))));
    ObjectNode beside = whole.putObject(BESIDE);
    for (BookPart part : parts) {
      if (!isOfBook(part.collection())) {
        ArrayNode list = beside.withArray("/" + part.collection());
        ObjectNode thing = list.addObject().put(ID, part.id());
        thing.set(BODY, Tree.of(part.body(), new Findings()));
      }
    }
    return FORMAT.text(whole);
  }

  /**
   * Reads a studio.
   *
   * @param json the text of a file, at most 64 MB
   * @return everything it holds
   * @throws strickle.book.Faulty when it is none, or its book or what is beside it is faulty
   */
  public static List<BookPart> parse(String json) {
    Findings findings = new Findings();
    Optional<ObjectNode> body = findings.attempt(JsonPath.ROOT, () -> FORMAT.body(json, findings));
    findings.settle();
    body.orElseThrow().propertyNames().forEach(name -> checkName(name, findings));
    List<BookPart> beside = Beside.read(body.get().path(BESIDE), findings);
    Optional<Book> book =
        findings.attempt(JsonPath.ROOT + JsonPath.field(BOOK), () -> book(body.get(), beside));
    findings.settle();
    List<BookPart> parts = new ArrayList<>(BookParts.of(book.orElseThrow()));
    parts.addAll(beside);
    return parts;
  }

  // Else a mistyped name would leave out what stands below it, and nobody would know.
  private static void checkName(String name, Findings findings) {
    List<String> known = List.of(BOOK, BESIDE);
    if (!known.contains(name) && !findings.full()) {
      String path = JsonPath.ROOT + JsonPath.field(name);
      String found = "the unknown field " + Shown.text(name);
      findings.add(new Fault(path, found, Hint.toward(name, known)));
    }
  }

  private static Book book(ObjectNode whole, List<BookPart> beside) {
    if (whole.path(BOOK) instanceof ObjectNode book) {
      return Findings.fromItsRoot(() -> BookFile.of(book, in(beside)));
    }
    throw Findings.refusal(Shown.of(whole.path(BOOK)), "the studio book");
  }

  private static Meshes in(List<BookPart> parts) {
    return name ->
        parts.stream()
            .filter(part -> part.collection().equals(MeshPart.COLLECTION))
            .filter(part -> part.id().equals(name))
            .findFirst()
            .map(part -> MeshPart.bytes(part.body()))
            .orElseThrow(() -> Meshes.missing(name));
  }

  private static boolean isOfBook(String collection) {
    return collection.equals(BookParts.STUDIO) || BookParts.LISTS.contains(collection);
  }
}
