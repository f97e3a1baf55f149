package strickle.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Keeps two programs from serving one folder; the system gives it back when a program dies. */
final class FolderLock implements AutoCloseable {

  private static final String NAME = "strickle.lock";

  private final FileChannel channel;

  private FolderLock(FileChannel channel) {
    this.channel = channel;
  }

  /**
   * Takes a folder, which is made when it is not there.
   *
   * @throws StoreTrouble when it is taken or cannot be made
   */
  static FolderLock of(Path folder) {
    FileChannel channel = opened(folder);
    try {
      FileLock lock = channel.tryLock();
      if (lock != null) {
        return new FolderLock(channel);
      }
    } catch (IOException | OverlappingFileLockException taken) {
      // As below.
    }
    FolderLock unused = new FolderLock(channel);
    unused.close();
    throw new StoreTrouble(
        StoreTrouble.Kind.LOCKED, "another Strickle serves the folder " + folder, null);
  }

  private static FileChannel opened(Path folder) {
    try {
      Files.createDirectories(folder);
      return FileChannel.open(
          folder.resolve(NAME), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    } catch (IOException cannot) {
      throw Troubles.of(cannot);
    }
  }

  /** Gives the folder back. */
  @Override
  public void close() {
    try {
      channel.close();
    } catch (IOException ignored) {
      // The lock is gone with the process at the latest.
    }
  }
}
