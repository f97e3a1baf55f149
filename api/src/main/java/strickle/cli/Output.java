package strickle.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;
import java.util.Optional;

/**
 * Standard output that remembers how it failed: a reader that left early, as {@code head} does, is
 * no failure, a full disk is one. After a failure it swallows the rest.
 */
final class Output extends OutputStream {

  private final OutputStream to;
  private IOException failure;

  /** Writes to {@code to}, without a buffer of its own. */
  Output(OutputStream to) {
    this.to = to;
  }

  @Override
  public void write(int one) throws IOException {
    write(new byte[] {(byte) one}, 0, 1);
  }

  @Override
  public void write(byte[] bytes, int offset, int length) throws IOException {
    attempt(() -> to.write(bytes, offset, length));
  }

  @Override
  public void flush() throws IOException {
    attempt(to::flush);
  }

  /** Why not everything could be written; empty when it could, or nobody wanted the rest. */
  Optional<String> failure() {
    return Optional.ofNullable(failure)
        .map(failed -> String.valueOf(failed.getMessage()))
        .filter(why -> !isPipe(why));
  }

  private void attempt(Writing writing) throws IOException {
    if (failure == null) {
      try {
        writing.write();
      } catch (IOException failed) {
        failure = failed;
      }
    }
  }

  // Java has no other way to tell "Broken pipe" from "No space left on device".
  private static boolean isPipe(String why) {
    return why.toLowerCase(Locale.ROOT).contains("pipe");
  }

  @FunctionalInterface
  private interface Writing {
    void write() throws IOException;
  }
}
