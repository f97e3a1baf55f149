package strickle.json;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Reads files whole, but never more than a limit. */
final class FileBytes {

  private FileBytes() {}

  /**
   * Reads a file.
   *
   * @param file the file
   * @param limit the most bytes it may have
   * @param right what would be right in place of what is no file, as a clause
   * @throws strickle.book.Faulty when it is missing, a folder, too large or cannot be read; the
   *     fault's path is empty
   */
  static byte[] read(Path file, int limit, String right) {
    if (Files.isDirectory(file)) {
      throw Findings.refusal("the folder " + Shown.text(file.toString()), right);
    }
    if (Files.notExists(file)) {
      throw Findings.refusal("no file " + Shown.text(file.toString()), right);
    }
    try {
      return upTo(limit, file);
    } catch (IOException unreadable) {
      throw Findings.refusal(
          "the file " + Shown.text(file.toString()) + ", which cannot be read" + why(unreadable),
          "a file that may be read");
    }
  }

  /** Refuses what is larger than the limit. */
  static void checkSize(long bytes, int limit) {
    if (bytes > limit) {
      throw Findings.refusal(
          "a file of " + Limits.megabytes(bytes), "at most " + Limits.megabytes(limit));
    }
  }

  // The size is looked at first, but a file may grow, and a pipe has no size.
  private static byte[] upTo(int limit, Path file) throws IOException {
    checkSize(Files.size(file), limit);
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(limit + 1);
      checkSize(bytes.length, limit);
      return bytes;
    }
  }

  private static String why(IOException unreadable) {
    return unreadable instanceof AccessDeniedException ? " (permission denied)" : "";
  }
}
