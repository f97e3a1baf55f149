package strickle.json;

import java.util.Optional;

/** Reads and writes single records that are no files of their own, such as what a page sends. */
public final class Message {

  private Message() {}

  /**
   * Makes a record of a text: fields by the names of the components, strictly.
   *
   * @param json an object
   * @param type a record of texts, numbers, times, enums, optionals, lists and such records
   * @throws strickle.book.Faulty with every fault when anything is wrong with it
   */
  public static <R extends Record> R parse(String json, Class<R> type) {
    Findings findings = new Findings();
    RecordReader<R> reader = new Readers().record(type);
    Optional<R> message =
        findings.attempt(
            JsonPath.ROOT,
            () -> {
              FileBytes.checkSize(json.length(), Limits.FILE_BYTES);
              return reader.read(Tree.of(json, findings));
            });
    findings.settle();
    return message.orElseThrow();
  }

  /** Writes a record: what is not there left out, amounts without exponents. */
  public static String write(Record message) {
    return Pretty.text(RecordWriter.object(message));
  }

  /** Writes a record in one line, without a newline. */
  public static String line(Record message) {
    return RecordWriter.object(message).toString();
  }
}
