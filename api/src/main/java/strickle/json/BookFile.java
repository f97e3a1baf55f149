package strickle.json;

import java.nio.file.Path;
import java.util.Optional;
import strickle.book.Book;
import tools.jackson.databind.node.ObjectNode;

/**
 * Reads and writes studio books ({@code strickle-book/1}).
 *
 * <p>What is wrong comes as one {@link strickle.book.Faulty} with every fault: its JSON path (RFC
 * 9535) such as {@code $.moulds[0].volumeMl}, what was found there and what would be right. What is
 * wrong with the file as a whole stands at {@code $}, with line and column where there are any.
 */
public final class BookFile {

  private static final FileFormat FORMAT = new FileFormat("strickle-book/1", "a studio book");

  private BookFile() {}

  /**
   * Reads a book; meshes are looked for in its folder.
   *
   * @param file the file, at most 8 MB of UTF-8
   * @throws strickle.book.Faulty when it is missing, a folder, too large, cannot be read, or is
   *     faulty itself
   */
  public static Book read(Path file) {
    byte[] json =
        Findings.within(
            JsonPath.ROOT,
            () -> FileBytes.read(file, Limits.FILE_BYTES, "the path of a studio book"));
    return parse(json, Meshes.in(file.toAbsolutePath().resolveSibling("")));
  }

  /**
   * Makes a book of the bytes of a file.
   *
   * @param json at most 8 MB of UTF-8
   * @param meshes where the files that moulds name as their mesh lie
   * @throws strickle.book.Faulty when anything is wrong with it
   */
  public static Book parse(byte[] json, Meshes meshes) {
    String text =
        Findings.within(
            JsonPath.ROOT,
            () -> {
              FileBytes.checkSize(json.length, Limits.FILE_BYTES);
              return Utf8.text(json);
            });
    return parse(text, meshes);
  }

  /**
   * Makes a book of a text.
   *
   * @param json the text of a file
   * @param meshes where the files that moulds name as their mesh lie
   * @throws strickle.book.Faulty when anything is wrong with it
   */
  public static Book parse(String json, Meshes meshes) {
    Findings findings = new Findings();
    Optional<ObjectNode> body = findings.attempt(JsonPath.ROOT, () -> FORMAT.body(json, findings));
    return of(body, meshes, findings);
  }

  /** Makes a book of its tree; faults come as they do of a text. */
  static Book of(ObjectNode body, Meshes meshes) {
    return of(Optional.of(body), meshes, new Findings());
  }

  private static Book of(Optional<ObjectNode> body, Meshes meshes, Findings findings) {
    RecordReader<Book> reader = new Readers(meshes).record(Book.class);
    Optional<Book> book =
        body.flatMap(node -> findings.attempt(JsonPath.ROOT, () -> reader.read(node)));
    if (body.isPresent() && book.isEmpty()) {
      // What could not be made could not be searched for ids that are nowhere, either.
      Mentions.missing(body.get()).forEach(findings::addUnlessTold);
    }
    findings.settle();
    return book.orElseThrow();
  }

  /**
   * Writes a book so that reading it again gives an equal one: UTF-8, fields in a fixed order,
   * nothing for what is not there.
   */
  public static String write(Book book) {
    return FORMAT.text(RecordWriter.object(book));
  }
}
