package strickle.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermission;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import strickle.book.Fault;
import strickle.book.Faulty;

/**
 * A file to be written at the end of a command. Whether that can work is found out before the work
 * begins. It is written beside its place and moved there in one step: at any moment the place holds
 * the old file or the new one, whole.
 */
final class OutFile {

  private static final String USUAL = "--out";

  private final String option;
  private final String given;
  private final Path file;

  private OutFile(String option, String given, Path file) {
    this.option = option;
    this.given = given;
    this.file = file;
  }

  /**
   * The file of an option {@code --out}.
   *
   * @throws strickle.book.Faulty when it is no path
   * @throws Trouble when it cannot be written
   */
  static OutFile at(String given) {
    return at(USUAL, given);
  }

  /** The same, of an option with another name. */
  static OutFile at(String option, String given) {
    Path path = Paths.of(option, given, "the path of a file").toAbsolutePath();
    String named = option + " " + given;
    must(path.getFileName() != null && !Files.isDirectory(path), named, "a folder", "a file");
    must(
        Files.isDirectory(path.getParent()),
        named,
        "no folder \"" + path.getParent() + "\"",
        "a file in a folder that is there");
    Path file = existing(named, path);
    must(
        Files.isWritable(file.getParent()),
        named,
        "the folder \"" + file.getParent() + "\", which may not be written to",
        "a file in a folder that may");
    return new OutFile(option, given, file);
  }

  /**
   * The same, and it must not be the file that is read.
   *
   * @throws strickle.book.Faulty when it is that, or no path
   * @throws Trouble when it cannot be written
   */
  static OutFile beside(Optional<Path> read, String given) {
    OutFile out = at(given);
    read.ifPresent(book -> out.mustNotBe(book, "book"));
    return out;
  }

  /**
   * Makes sure that a file that is read is not overwritten.
   *
   * @param what what it is, such as "book"
   * @throws strickle.book.Faulty when it is this one
   */
  void mustNotBe(Path read, String what) {
    if (is(read)) {
      String right = "another file, or the " + what + " would be lost";
      throw new Faulty(List.of(new Fault(option, "the " + what + " itself", right)));
    }
  }

  private boolean is(Path other) {
    try {
      return file.equals(other.toAbsolutePath())
          || (Files.exists(file) && Files.isSameFile(file, other));
    } catch (IOException unknown) {
      return false;
    }
  }

  /** Makes sure that two options do not name the same file. */
  void mustNotBe(OutFile other) {
    if (is(other.file)) {
      String found = "the file of " + other.option;
      throw new Faulty(List.of(new Fault(option, found, "another file")));
    }
  }

  /** The path as it was given. */
  String text() {
    return given;
  }

  /**
   * Writes the file, or leaves everything as it was.
   *
   * @throws Trouble when it cannot be written after all
   */
  void write(String content) {
    write(content.getBytes(UTF_8));
  }

  /** The same, with bytes. */
  void write(byte[] content) {
    try {
      writeBeside(content);
    } catch (IOException failed) {
      throw new Trouble(option + " " + given + " could not be written: " + why(failed));
    }
  }

  private void writeBeside(byte[] content) throws IOException {
    String number = ProcessHandle.current().pid() + "-" + Long.toHexString(System.nanoTime());
    Path beside = file.resolveSibling(".strickle-" + number + ".tmp");
    try (FileChannel channel =
        FileChannel.open(beside, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      fill(channel, ByteBuffer.wrap(content));
      keepPermissions(beside);
      Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(beside);
    }
  }

  // On the disk before the move: after a power cut too, the place holds one whole file.
  private static void fill(FileChannel channel, ByteBuffer content) throws IOException {
    while (content.hasRemaining()) {
      channel.write(content);
    }
    channel.force(true);
  }

  private void keepPermissions(Path beside) throws IOException {
    if (Files.exists(file)
        && file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
      Set<PosixFilePermission> permissions = Files.getPosixFilePermissions(file);
      Files.setPosixFilePermissions(beside, permissions);
    }
  }

  // A link is followed, so that its file is replaced and not the link.
  private static Path existing(String named, Path path) {
    if (!Files.exists(path)) {
      return path;
    }
    must(Files.isRegularFile(path), named, "something that is no ordinary file", "a file");
    must(Files.isWritable(path), named, "a file that may not be written to", "one that may");
    try {
      return path.toRealPath();
    } catch (IOException unreadable) {
      throw new Trouble(named + " could not be looked at: " + why(unreadable));
    }
  }

  private static void must(boolean holds, String named, String found, String right) {
    if (!holds) {
      throw new Trouble(named + ": found " + found + "; right would be " + right);
    }
  }

  private static String why(IOException failed) {
    return failed instanceof FileSystemException system && system.getReason() != null
        ? system.getReason()
        : failed.getClass().getSimpleName() + " " + failed.getMessage();
  }
}
