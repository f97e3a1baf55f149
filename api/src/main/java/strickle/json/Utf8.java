package strickle.json;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;

/** Decodes UTF-8 strictly, and knows the byte order mark that some editors put in front. */
final class Utf8 {

  private static final String MARK = "\uFEFF";

  private Utf8() {}

  /**
   * The text of some bytes.
   *
   * @throws strickle.book.Faulty when they are not UTF-8, with line and column
   */
  static String text(byte[] bytes) {
    CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
    CharBuffer text = CharBuffer.allocate(bytes.length);
    ByteBuffer left = ByteBuffer.wrap(bytes);
    CoderResult end = decoder.decode(left, text, true);
    String read = text.flip().toString();
    if (end.isError()) {
      throw Findings.refusal(
          "bytes that are not UTF-8" + new TextPlaces(read).at(read.length()),
          "a file saved as UTF-8");
    }
    return read;
  }

  /** A text without a byte order mark at its start. */
  static String withoutMark(String text) {
    return text.startsWith(MARK) ? text.substring(MARK.length()) : text;
  }
}
