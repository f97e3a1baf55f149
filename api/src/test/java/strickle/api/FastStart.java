package strickle.api;

import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;

/**
 * The options for Java with which a service of the classes under test starts soon, for tests that
 * start it often: with a cache of loaded classes, as the launcher makes it, where Java can.
 */
final class FastStart {

  private static final int FIRST_WITH_CACHES = 25;
  private static final List<String> SMALL =
      List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xmx256m");

  private FastStart() {}

  /** The options without a cache. */
  static List<String> none() {
    return with(List.of(), System.getProperty("java.class.path"));
  }

  /** The options with a cache that is made in a folder. */
  static List<String> in(Path folder) throws IOException, InterruptedException {
    if (Runtime.version().feature() < FIRST_WITH_CACHES) {
      return none();
    }
    String classes = jars(folder);
    Path cache = folder.resolve("classes.aot");
    List<String> words = new ArrayList<>(List.of(java()));
    words.addAll(with(List.of("-XX:AOTCacheOutput=" + cache), classes));
    words.addAll(List.of("strickle.cli.Rehearsal", folder.toString()));
    Process making =
        new ProcessBuilder(words)
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    boolean made = making.waitFor() == 0 && Files.exists(cache);
    return made ? with(List.of("-XX:AOTCache=" + cache), classes) : none();
  }

  /** The Java that runs this. */
  static String java() {
    return Path.of(System.getProperty("java.home"), "bin", "java").toString();
  }

  private static List<String> with(List<String> more, String classes) {
    List<String> words = new ArrayList<>(SMALL);
    words.addAll(more);
    words.addAll(List.of("--enable-native-access=ALL-UNNAMED", "-cp", classes));
    return words;
  }

  // A cache holds for jars only, so folders of classes become jars.
  private static String jars(Path folder) throws IOException {
    List<String> paths = new ArrayList<>();
    for (String path : System.getProperty("java.class.path").split(File.pathSeparator, -1)) {
      Path here = Path.of(path);
      if (!Files.isDirectory(here)) {
        paths.add(path);
      } else {
        Path jar = folder.resolve("classes-" + paths.size() + ".jar");
        pack(here, jar);
        paths.add(jar.toString());
      }
    }
    return String.join(File.pathSeparator, paths);
  }

  // Folders have entries too: migrations are found by listing theirs.
  private static void pack(Path classes, Path jar) throws IOException {
    try (OutputStream file = Files.newOutputStream(jar);
        JarOutputStream out = new JarOutputStream(file);
        Stream<Path> all = Files.walk(classes)) {
      for (Path one : all.filter(path -> !path.equals(classes)).sorted().toList()) {
        String name = classes.relativize(one).toString().replace(File.separatorChar, '/');
        if (Files.isDirectory(one)) {
          out.putNextEntry(new JarEntry(name + "/"));
        } else {
          out.putNextEntry(new JarEntry(name));
          Files.copy(one, out);
        }
      }
    }
  }
}
