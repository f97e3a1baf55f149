package strickle.json;

import java.nio.file.Path;

/** Reads text files of other kinds than JSON, whole and strictly. */
public final class TextFile {

  private TextFile() {}

  /**
   * The text of a file, without a byte order mark.
   *
   * @param file the file, at most 8 MB of UTF-8
   * @param argument the argument it was given for, where faults are told
   * @param right what would be right in place of what is no file, as a clause
   * @throws strickle.book.Faulty when it is missing, a folder, too large, or not UTF-8
   */
  public static String read(Path file, String argument, String right) {
    return Findings.within(
        argument,
        () -> Utf8.withoutMark(Utf8.text(FileBytes.read(file, Limits.FILE_BYTES, right))));
  }
}
