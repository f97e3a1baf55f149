package strickle.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every statement on what studios keep carries the id of one studio. */
class StudioIdTest {

  private static final Pattern STATEMENT =
      Pattern.compile(
          "(?s)\"((?:select|insert|update|delete|vacuum|pragma)\\b(?:[^\"]|\"\\s*\\+\\s*\")*)\"");
  private static final Pattern CREATED = Pattern.compile("(?s)create table (\\w+) \\((.*?)\\n\\);");
  private static final Pattern OF_ONE =
      Pattern.compile("studio_id = :studio|s\\.id = :studio|values \\(:studio,");
  private static final Pattern STUDIO_ITSELF =
      Pattern.compile("(from|update|into) studio\\b.*(\\bid = :id\\b|values \\(:id,)");

  /** Statements that are of no one studio, each with why. */
  private static final Map<String, String> OF_NONE =
      Map.of(
          "select id, name from studio order by name",
          "which studios there are",
          "select id, name from studio where password_hash is null and (select count(*) from"
              + " studio) = 1",
          "the only one, which needs no password",
          "select studio_id, id from plan where state in ('waiting', 'running') order by"
              + " created_at, number",
          "the queue, which serves all of them; nothing of them is told to anybody",
          "delete from scheduled_tasks",
          "the library's own table",
          "insert into session (token_hash, studio_id, created_at, ends_at) values (:token,"
              + " :studio, :at, :end)",
          "carries it, but not first",
          "select s.id, s.name, t.ends_at from session t join studio s on s.id = t.studio_id where"
              + " t.token_hash = :token",
          "says which studio a session is of",
          "delete from session where token_hash = :token",
          "the session that ends itself");

  @Test
  void everyStatementCarriesTheIdOfTheStudioItIsOf() throws IOException {
    List<String> without = new ArrayList<>();
    Set<String> unused = new TreeSet<>(OF_NONE.keySet());
    Map<String, String> statements = statements();
    statements.forEach(
        (statement, file) -> {
          unused.remove(statement);
          boolean one = OF_ONE.matcher(statement).find() || STUDIO_ITSELF.matcher(statement).find();
          boolean ofTables = tablesWithStudios().stream().anyMatch(words(statement)::contains);
          if (ofTables && !one && !OF_NONE.containsKey(statement)) {
            without.add(file + ": " + statement);
          }
        });
    assertEquals(List.of(), without);
    assertEquals(Set.of(), unused);
    assertTrue(statements.size() > 30, statements.size() + " statements");
    System.out.println(statements.size() + " statements, none without its studio");
  }

  @Test
  void everyTableOfOursKnowsItsStudio() throws IOException {
    List<String> without = new ArrayList<>();
    for (Path file : files("api/src/main/resources/strickle/store/migration", ".sql")) {
      Matcher table = CREATED.matcher(Files.readString(file));
      while (table.find()) {
        boolean library = table.group(1).equals("scheduled_tasks");
        boolean itself = table.group(1).equals("studio");
        if (!library && !itself && !table.group(2).contains("studio_id varchar(36) not null")) {
          without.add(table.group(1));
        }
      }
    }
    assertEquals(List.of(), without);
  }

  private static List<String> words(String statement) {
    return List.of(statement.split("[^a-z_]+", -1));
  }

  private static List<String> tablesWithStudios() {
    return List.of(
        "studio", "entry", "journal", "journal_change", "snapshot", "creation", "plan", "session");
  }

  // A statement is one text of the program, or several that are joined; a constant in it is put in.
  private static Map<String, String> statements() throws IOException {
    Map<String, String> statements = new TreeMap<>();
    for (Path file : files("api/src/main/java/strickle/store", ".java")) {
      String java = joined(Files.readString(file));
      Matcher statement = STATEMENT.matcher(java);
      while (statement.find()) {
        String text = statement.group(1).replaceAll("\\s+", " ").strip();
        statements.put(text, file.getFileName().toString());
      }
    }
    return statements;
  }

  private static String joined(String java) {
    return java.replaceAll("\"\\s*\\+\\s*\"", "");
  }

  private static List<Path> files(String folder, String ending) throws IOException {
    Path root = Path.of("").toAbsolutePath();
    while (!Files.isDirectory(root.resolve("solver"))) {
      root = root.getParent();
    }
    try (Stream<Path> files = Files.walk(root.resolve(folder))) {
      return files.filter(file -> file.toString().endsWith(ending)).sorted().toList();
    }
  }
}
