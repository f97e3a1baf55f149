package strickle.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Finds the page's own files where the classes were loaded from: in a jar, or in a folder. */
final class OwnFiles {

  private static final String FIRST = "index.html";

  private OwnFiles() {}

  /** Whether they lie in a folder, as for somebody who is changing them. */
  static boolean areInAFolder() {
    return where().getProtocol().equals("file");
  }

  /**
   * All of them by name.
   *
   * @throws UncheckedIOException if they cannot be read
   */
  static Map<String, byte[]> read() {
    try {
      URI first = where().toURI();
      if (areInAFolder()) {
        return walk(Path.of(first).getParent());
      }
      try (FileSystem jar = FileSystems.newFileSystem(jar(first), Map.of())) {
        return walk(jar.getPath(first.getSchemeSpecificPart().split("!", -1)[1]).getParent());
      }
    } catch (IOException broken) {
      throw new UncheckedIOException("The page's files cannot be read", broken);
    } catch (URISyntaxException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  /**
   * Something that is another as soon as a file in the folder is.
   *
   * @throws UncheckedIOException if they cannot be looked at
   */
  static String stamp() {
    try (Stream<Path> all = Files.walk(Path.of(where().toURI()).getParent())) {
      return all.map(OwnFiles::stamp).collect(Collectors.joining("\n"));
    } catch (IOException broken) {
      throw new UncheckedIOException("The page's files cannot be looked at", broken);
    } catch (URISyntaxException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  private static String stamp(Path file) {
    try {
      return file + " " + Files.getLastModifiedTime(file);
    } catch (IOException gone) {
      return file + " gone";
    }
  }

  private static Path jar(URI inJar) {
    return Path.of(URI.create(inJar.getRawSchemeSpecificPart().split("!", -1)[0]));
  }

  private static URL where() {
    URL first = OwnFiles.class.getResource(FIRST);
    if (first == null) {
      throw new IllegalStateException(
          "The page's file " + FIRST + " is missing beside " + OwnFiles.class.getName());
    }
    return first;
  }

  private static Map<String, byte[]> walk(Path root) throws IOException {
    Map<String, byte[]> found = new TreeMap<>();
    try (Stream<Path> all = Files.walk(root)) {
      List<Path> files = all.filter(Files::isRegularFile).toList();
      for (Path file : files) {
        String name = root.relativize(file).toString().replace('\\', '/');
        if (PageFile.kind(name).isPresent()) {
          found.put(name, Files.readAllBytes(file));
        }
      }
    }
    return found;
  }
}
