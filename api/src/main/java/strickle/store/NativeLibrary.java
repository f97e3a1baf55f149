package strickle.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.sqlite.SQLiteJDBCLoader;
import org.sqlite.util.LibraryLoaderUtil;

/**
 * The part of SQLite that is not Java. It comes in a jar, and without more it is unpacked at every
 * start. The system property {@code org.sqlite.lib.path} names a folder in which it lies ready.
 */
public final class NativeLibrary {

  private NativeLibrary() {}

  /**
   * Unpacks it, for this system, into a folder, which is made; nothing where there is none for this
   * system, as the system then has its own.
   *
   * @throws IOException if it cannot be written
   */
  public static void unpack(Path folder) throws IOException {
    String name = LibraryLoaderUtil.getNativeLibName();
    String resource = LibraryLoaderUtil.getNativeLibResourcePath() + "/" + name;
    try (InputStream in = SQLiteJDBCLoader.class.getResourceAsStream(resource)) {
      if (in != null) {
        Files.copy(in, Files.createDirectories(folder).resolve(name));
      }
    }
  }
}
