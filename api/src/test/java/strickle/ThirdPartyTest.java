package strickle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** THIRD-PARTY.md lists every library with its version and a licence that may be used here. */
class ThirdPartyTest {

  /** The licences that may be, each with what a jar must say of itself if it says anything. */
  private static final Map<String, String> MAY_BE =
      Map.of(
          "Apache-2.0", "apache",
          "MIT", "mit|bouncy",
          "BSD-2-Clause", "bsd",
          "BSD-3-Clause", "bsd|edl",
          "0BSD", "0bsd",
          "CC0-1.0", "cc0|creativecommons",
          "EPL-2.0", "epl|eclipse public",
          "MPL-2.0", "mpl|mozilla",
          "LGPL-2.1-or-later", "lgpl",
          "GPL-2.0-with-classpath-exception", "classpath exception");

  private static final Pattern ROW =
      Pattern.compile("\\| ([a-z][^ |]*) \\| ([^ |]+) \\| ([0-9][^ |]*) \\| ([^ |]+) \\|");
  private static final Pattern LICENCES =
      Pattern.compile("<licenses>(.*?)</licenses>", Pattern.DOTALL);
  private static final String PAGE = "org.webjars.npm";

  private record Row(String group, String library, String version, String licence) {

    private String jar() {
      return library + "-" + version + ".jar";
    }
  }

  @Test
  void everyLibraryIsListedWithItsVersionAndNoneThatIsNotThere() throws IOException {
    Set<String> listed = new TreeSet<>();
    rows().stream().filter(row -> !row.group().equals(PAGE)).forEach(row -> listed.add(row.jar()));
    Set<String> there = new TreeSet<>();
    jars().filter(jar -> !jar.toString().contains("webjars")).forEach(jar -> there.add(name(jar)));
    // Who starts the tests may bring a launcher of their own or not.
    there.removeIf(
        jar ->
            jar.startsWith("junit-platform-")
                || jar.startsWith("surefire-")
                || jar.startsWith("common-java"));
    listed.removeIf(jar -> jar.startsWith("junit-platform-"));
    assertEquals(listed, there);
    assertTrue(listed.size() > 50, listed.size() + " libraries");
    System.out.println(listed.size() + " libraries listed with version and licence");
  }

  @Test
  void whatThePageUsesIsListedWithItsVersion() throws IOException {
    Set<String> listed = new TreeSet<>();
    rows().stream().filter(row -> row.group().equals(PAGE)).forEach(row -> listed.add(row.jar()));
    assertTrue(!listed.isEmpty());
    jars()
        .filter(jar -> jar.toString().contains("webjars"))
        .forEach(jar -> assertTrue(listed.contains(name(jar)), jar + " is not listed"));
  }

  @Test
  void everyLicenceMayBeUsedHereAndIsTheOneTheLibraryNames() throws IOException {
    Map<String, Path> byName = new TreeMap<>();
    jars().forEach(jar -> byName.put(name(jar), jar));
    List<String> wrong = new ArrayList<>();
    int told = 0;
    for (Row row : rows()) {
      String words = MAY_BE.get(row.licence());
      if (words == null) {
        wrong.add(row + " has a licence that may not be used here");
      } else if (byName.containsKey(row.jar())) {
        String says = licence(byName.get(row.jar()));
        told += says.isEmpty() ? 0 : 1;
        if (!says.isEmpty() && !Pattern.compile("(?i)" + words).matcher(says).find()) {
          wrong.add(row + " calls its licence " + says);
        }
      }
    }
    assertEquals(List.of(), wrong);
    assertTrue(told > 30, told + " libraries name their licence");
  }

  private static List<Row> rows() throws IOException {
    List<Row> rows = new ArrayList<>();
    Matcher row = ROW.matcher(Files.readString(root().resolve("THIRD-PARTY.md")));
    while (row.find()) {
      rows.add(new Row(row.group(1), row.group(2), row.group(3), row.group(4)));
    }
    return rows;
  }

  private static Stream<Path> jars() {
    return Stream.of(System.getProperty("java.class.path").split(File.pathSeparator, -1))
        .map(Path::of)
        .filter(path -> path.toString().endsWith(".jar"))
        .filter(path -> !name(path).startsWith("strickle-"));
  }

  private static String name(Path jar) {
    return jar.getFileName().toString();
  }

  // What a jar says of its licence, in its manifest or the description it was built by.
  private static String licence(Path jar) throws IOException {
    try (JarFile file = new JarFile(jar.toFile())) {
      StringBuilder says = new StringBuilder();
      Optional.ofNullable(file.getManifest())
          .map(manifest -> manifest.getMainAttributes().getValue("Bundle-License"))
          .ifPresent(says::append);
      List<JarEntry> poms =
          file.stream()
              .filter(entry -> entry.getName().matches("META-INF/maven/.*/pom[.]xml"))
              .toList();
      for (JarEntry pom : poms) {
        Matcher licences = LICENCES.matcher(text(file, pom));
        if (licences.find()) {
          says.append(licences.group(1));
        }
      }
      return says.toString();
    }
  }

  private static String text(JarFile file, JarEntry entry) throws IOException {
    try (InputStream in = file.getInputStream(entry)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static Path root() {
    Path root = Path.of("").toAbsolutePath();
    while (!Files.isDirectory(root.resolve("solver"))) {
      root = root.getParent();
    }
    return root;
  }
}
