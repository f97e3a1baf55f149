package strickle;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.net.URISyntaxException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** What the launcher does to libraries from before Java 6, that they may be kept in its cache. */
@Tag("slow")
class NewerClassesTest {

  private static final int FIRST_WITH_CACHES = 25;
  private static final int FIRST_WITH_STACK_MAPS = 50;
  private static final Path PROGRAM = Path.of("src/launch/java/NewerClasses.java");

  @TempDir Path folder;

  private Path jar;

  @BeforeEach
  void copyAnOldLibrary() throws IOException, URISyntaxException {
    assumeTrue(Runtime.version().feature() >= FIRST_WITH_CACHES);
    URL place = CommandLine.class.getProtectionDomain().getCodeSource().getLocation();
    jar = Files.copy(Path.of(place.toURI()), folder.resolve("old.jar"));
  }

  @Test
  void everyClassOfAnOldLibraryIsWrittenAnewAndPassesTheCheckOfToday() throws Exception {
    assertTrue(oldest() < FIRST_WITH_STACK_MAPS, "this library is not old any more");
    int before = names().size();
    run();
    assertTrue(oldest() >= FIRST_WITH_STACK_MAPS);
    assertEquals(before, names().size());
    try (URLClassLoader loader =
        new URLClassLoader(new URL[] {jar.toUri().toURL()}, ClassLoader.getPlatformClassLoader())) {
      for (String name : names()) {
        Class.forName(name, true, loader); // reads it, checks it and begins it
      }
    }
  }

  @Test
  void whatIsNewEnoughStaysAsItIs() throws Exception {
    run();
    byte[] once = Files.readAllBytes(jar);
    run();
    assertArrayEquals(once, Files.readAllBytes(jar));
    try (var files = Files.list(folder)) {
      assertEquals(List.of(jar), files.toList());
    }
  }

  @Test
  void twoWhoBeginWithTheSameWriteTheSame() throws Exception {
    Path other = Files.copy(jar, Files.createDirectory(folder.resolve("other")).resolve("old.jar"));
    Files.setLastModifiedTime(other, Files.getLastModifiedTime(jar));
    run(jar);
    run(other);
    assertArrayEquals(Files.readAllBytes(jar), Files.readAllBytes(other));
    assertEquals(Files.getLastModifiedTime(jar), Files.getLastModifiedTime(other));
  }

  private void run() throws IOException, InterruptedException {
    run(jar);
  }

  private static void run(Path library) throws IOException, InterruptedException {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    Process running =
        new ProcessBuilder(java, PROGRAM.toString(), library.toString()).inheritIO().start();
    assertEquals(0, running.waitFor());
  }

  // Those of the library itself; what describes its module is no class.
  private List<String> names() throws IOException {
    try (ZipFile library = new ZipFile(jar.toFile())) {
      return library.stream()
          .map(ZipEntry::getName)
          .filter(name -> name.startsWith("picocli/") && name.endsWith(".class"))
          .map(name -> name.replace(".class", "").replace('/', '.'))
          .toList();
    }
  }

  private int oldest() throws IOException {
    int oldest = Integer.MAX_VALUE;
    try (ZipFile library = new ZipFile(jar.toFile())) {
      for (String name : names()) {
        try (InputStream in =
            library.getInputStream(library.getEntry(name.replace('.', '/') + ".class"))) {
          byte[] head = in.readNBytes(8);
          int version = ((head[6] & 0xff) << 8) | (head[7] & 0xff);
          oldest = Math.min(oldest, version);
        }
      }
    }
    return oldest;
  }
}
