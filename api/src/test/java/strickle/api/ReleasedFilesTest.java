package strickle.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.book.Book;
import strickle.json.BookFile;
import strickle.json.Meshes;
import strickle.json.PlanFile;
import strickle.json.StudioFile;
import strickle.plan.audit.Audit;

/**
 * What any released version has written can be read for ever. A folder here for each version holds
 * what that version wrote: book.json, plan.json of that book, and studio.json, what it exported.
 * The folder next holds what the next version will have written; a release gives it its number.
 */
class ReleasedFilesTest {

  private static final Pattern RELEASE =
      Pattern.compile("^## ([0-9]+\\.[0-9]+\\.[0-9]+) \\(", Pattern.MULTILINE);

  @Test
  void everyReleasedVersionHasLeftSomething() throws Exception {
    Matcher release = RELEASE.matcher(Files.readString(root().resolve("CHANGELOG.md")));
    TreeSet<String> released = new TreeSet<>(List.of("next"));
    while (release.find()) {
      released.add(release.group(1));
    }
    assertTrue(released.contains("0.1.0"), released.toString());
    TreeSet<String> kept = new TreeSet<>();
    for (Path version : folders()) {
      try (Stream<Path> files = Files.list(version)) {
        assertTrue(files.findAny().isPresent(), version + " is empty");
      }
      kept.add(version.getFileName().toString());
    }
    assertEquals(released, kept);
  }

  @Test
  void booksAndPlansOfEveryVersionAreReadAndTheirPlansKeepTheRules(@TempDir Path folder)
      throws Exception {
    int read = 0;
    try (Web web = Web.empty(folder)) {
      web.send("POST", "/api/studios", "{\"name\": \"Ash Lane\", \"begin\": \"empty\"}");
      for (Path version : with("book.json")) {
        String json = Files.readString(version.resolve("book.json"));
        Book book = BookFile.parse(json, Meshes.in(version));
        assertEquals(200, web.send("PUT", "/api/book", json, "If-Match", "*").statusCode());
        assertEquals(book, BookFile.parse(web.get("/api/book").body(), Meshes.in(version)));
        String plan = Files.readString(version.resolve("plan.json"));
        assertEquals(List.of(), Audit.of(book, PlanFile.parse(plan)), version.toString());
        read++;
      }
    }
    assertTrue(read > 0);
  }

  @Test
  void exportsOfEveryVersionAreImportedWhole(@TempDir Path folder) throws Exception {
    int read = 0;
    try (Web web = Web.empty(folder)) {
      web.send("POST", "/api/studios", "{\"name\": \"Ash Lane\", \"begin\": \"empty\"}");
      for (Path version : with("studio.json")) {
        String json = Files.readString(version.resolve("studio.json"));
        assertEquals(200, web.send("PUT", "/api/export", json, "If-Match", "*").statusCode());
        assertEquals(StudioFile.parse(json), StudioFile.parse(web.get("/api/export").body()));
        assertEquals(200, web.get("/api/plan-in-use").statusCode());
        assertEquals(200, web.get("/api/why").statusCode());
        read++;
      }
    }
    assertTrue(read > 0);
  }

  private static List<Path> with(String file) throws Exception {
    return folders().stream().filter(version -> Files.exists(version.resolve(file))).toList();
  }

  private static List<Path> folders() throws IOException, URISyntaxException {
    Path all = Path.of(ReleasedFilesTest.class.getResource("released").toURI());
    try (Stream<Path> versions = Files.list(all)) {
      return versions.sorted().toList();
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
