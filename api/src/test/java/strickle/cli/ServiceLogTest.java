package strickle.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The log has a line for each event, and nothing in it that says anything of anybody. */
@Timeout(120)
class ServiceLogTest {

  private static final Pattern LINE =
      Pattern.compile("[-0-9]{10}T[:.0-9]{12}Z (INFO|WARNING|SEVERE) [a-z].*");

  /** Parts of everything personal that is sent; upper and lower case are one. */
  private static final List<String> PERSONAL =
      List.of("zora", "quill", "example.org", "+43", "grey dust", "wedding", "k-4711", "Gasse");

  @TempDir Path folder;

  private final ByteArrayOutputStream err = new ByteArrayOutputStream();
  private final HttpClient client = HttpClient.newHttpClient();
  private Thread serving = new Thread();
  private String address = "";
  private int asked;

  @BeforeEach
  void start() throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Path data = folder.resolve("zora-quill");
    serving = Shell.begin(out, err, "serve", "--data", data, "--port", "0");
    address = Shell.address(out);
    send("POST", "/api/studios", "{'name': 'Zora Quill, Gasse 7', 'begin': 'demo'}");
  }

  @AfterEach
  void end() throws InterruptedException {
    serving.interrupt();
    serving.join();
    client.close();
  }

  private List<String> lines() throws InterruptedException {
    end();
    List<String> lines = err.toString(UTF_8).lines().toList();
    lines.forEach(line -> assertTrue(LINE.matcher(line).matches(), line));
    String all = err.toString(UTF_8).toLowerCase(Locale.ROOT);
    for (String part : PERSONAL) {
      assertTrue(!all.contains(part.toLowerCase(Locale.ROOT)), part + " in " + all);
    }
    return lines;
  }

  private static long of(List<String> lines, String words) {
    return lines.stream().filter(line -> line.contains(words)).count();
  }

  @Test
  void aDayInTheStudioLeavesALineForEachEventAndNobodyInIt() throws Exception {
    send("POST", "/api/people", "{'id': 'zora-quill', 'name': 'Zora Quill', 'hours': {}}");
    send("GET", "/api/people/zora-quill", "");
    send("PUT", "/api/people/zora-quill", "{'id': 'Zora', nonsense zora@example.org");
    send(
        "POST",
        "/api/orders",
        "{'id': 'quill-wedding', 'for': 'Zora Quill, zora@example.org, +43 1 234', 'due':"
            + " '2027-05-04T10:00', 'lines': [{'piece': 'doorstop-brick', 'quantity': 1}]}");
    send("POST", "/api/orders", "{'id': 'quill-wedding', 'for': 3, 'zora': '+43 1 234'}");
    send("DELETE", "/api/orders/quill-wedding", "");
    send("GET", "/zora-quill?who=zora@example.org", "");
    send("GET", "/api/pieces?after=zora@example.org", "");
    send("POST", "/api/orders.csv", "order,for\nquill-wedding,zora@example.org");
    send("PUT", "/api/meshes/zora-quill.stl", "solid zora");
    send("POST", "/api/snapshots", "{'why': 'before the Quill wedding'}");
    send("POST", "/api/promise", "{'piece': 'zora', 'quantity': 1, 'buyer': 'Zora Quill'}");
    send("POST", "/api/session", "{'studio': 'Zora Quill', 'password': 'grey dust on the sill'}");
    send("GET", "/calendar/zora-quill.ics", "");
    String plan = send("POST", "/api/plans", "{'from': '2027-03-01T00:00', 'schedules': 5}");
    send("GET", plan + "/events", "");
    List<String> lines = lines();
    assertEquals(asked, of(lines, " request method="), lines.toString());
    assertEquals(1, of(lines, " INFO serving port="));
    assertTrue(lines.get(lines.size() - 1).endsWith("INFO ended"), lines.toString());
    assertEquals(1, of(lines, "WARNING a password was wrong"), lines.toString());
    // How this test ends it disturbs a library.
    assertEquals(asked + 3, lines.size() - of(lines, "WARNING said by "), lines.toString());
  }

  @Test
  void whatIsRefusedAtTheGateIsAnEventWithoutWhoItWas() throws Exception {
    send("GET", "/api/people", "", "Origin", "http://zora-quill.example.org");
    List<String> lines = lines();
    assertEquals(1, of(lines, "WARNING refused at the gate status=403"), lines.toString());
  }

  @Test
  void troubleWithTheStoreIsToldByItsKindAndItsPlaceInTheProgram() throws Exception {
    Path file = folder.resolve("zora-quill").resolve("strickle.db");
    try (Connection other = DriverManager.getConnection("jdbc:sqlite:" + file);
        Statement statement = other.createStatement()) {
      statement.execute("drop table entry");
      send("POST", "/api/people", "{'id': 'zora-quill', 'name': 'Zora Quill', 'hours': {}}");
    }
    List<String> lines = lines();
    String told =
        lines.stream().filter(line -> line.contains("SEVERE store trouble")).findFirst().get();
    assertTrue(told.contains("thrown=strickle.store.StoreTrouble at strickle.store."), told);
    assertTrue(told.contains("caused by"), told);
  }

  /** Asks; the place of what came of it. */
  private String send(String method, String path, String body, String... headers) throws Exception {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(URI.create(address + path))
            .method(method, HttpRequest.BodyPublishers.ofString(body.replace('\'', '"')))
            .header("Strickle-Who", "Zora Quill")
            .header("Idempotency-Key", "zora-k-4711-" + asked);
    if (headers.length > 0) {
      request.headers(headers);
    }
    asked++;
    HttpResponse<String> answer =
        client.send(request.build(), HttpResponse.BodyHandlers.ofString());
    return answer.headers().firstValue("Location").orElse("");
  }
}
