package strickle.json;

import java.util.List;
import strickle.book.Fault;
import strickle.book.Faulty;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * A kind of file: one object whose first field, "format", says what it is.
 *
 * @param name the format with its version, such as {@code strickle-book/1}
 * @param what what such a file is, with its article
 * @param mostBytes how large it may be
 */
record FileFormat(String name, String what, int mostBytes) {

  private static final String FIELD = "format";
  private static final char VERSION = '/';

  /** A kind of file of the usual size. */
  FileFormat(String name, String what) {
    this(name, what, Limits.FILE_BYTES);
  }

  /**
   * The object in a text, without its format.
   *
   * @param text the file
   * @param findings where faults are noted that need not keep the object from being examined
   * @throws Faulty when there is no such object
   */
  ObjectNode body(String text, Findings findings) {
    FileBytes.checkSize(text.length(), mostBytes);
    if (Utf8.withoutMark(text).isBlank()) {
      throw Findings.refusal("an empty file", right());
    }
    JsonNode root = Tree.of(text, findings);
    if (!(root instanceof ObjectNode object)) {
      throw Findings.refusal(Shown.of(root), right());
    }
    checkFormat(object.path(FIELD), findings);
    object.remove(FIELD);
    return object;
  }

  /** The whole text of a file. */
  String text(ObjectNode body) {
    ObjectNode whole = JsonNodeFactory.instance.objectNode();
    whole.put(FIELD, name);
    whole.setAll(body);
    return Pretty.text(whole);
  }

  private void checkFormat(JsonNode format, Findings findings) {
    String found = format.isMissingNode() ? "nothing" : Shown.of(format);
    if (format.isString() && isOtherKind(format.stringValue())) {
      // Every field of it would be unknown, which helps nobody.
      throw new Faulty(List.of(new Fault(JsonPath.field(FIELD), found, right())));
    }
    if (!format.isString() || !format.stringValue().equals(name)) {
      findings.add(new Fault(JsonPath.ROOT + JsonPath.field(FIELD), found, '"' + name + '"'));
    }
  }

  // Another file of this program, not another version of this one.
  private boolean isOtherKind(String format) {
    String family = name.substring(0, name.indexOf('-') + 1);
    String kind = name.substring(0, name.indexOf(VERSION) + 1);
    return format.startsWith(family) && !format.startsWith(kind);
  }

  private String right() {
    return what + ", beginning with {\"" + FIELD + "\": \"" + name + "\", …";
  }
}
