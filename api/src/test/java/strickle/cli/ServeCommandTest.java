package strickle.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

class ServeCommandTest {

  private static final Pattern ADDRESS = Pattern.compile("http://localhost:[0-9]+");
  private static final Pattern LOG_LINE =
      Pattern.compile("[-0-9]{10}T[:.0-9]{12}Z (INFO|WARNING|SEVERE) [^\\n]+");
  private static final long BREATH_MILLIS = 50;

  @TempDir Path folder;

  @Test
  @Timeout(60)
  void theStudioIsServedUntilItIsInterrupted() throws IOException, InterruptedException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Thread serving = Shell.begin(out, "serve", "--data", folder.resolve("data"), "--port", "0");
    String address = address(out);
    try (InputStream health = URI.create(address + "/health").toURL().openStream()) {
      assertTrue(new String(health.readAllBytes(), UTF_8).contains("\"ok\""));
    }
    Shell.Result second = Shell.run("serve", "--data", folder.resolve("data"), "--port", "0");
    assertEquals(Outcome.FAILED, second.code());
    assertTrue(second.err().contains("another Strickle serves the folder"), second.err());
    serving.interrupt();
    serving.join();
    assertTrue(Files.exists(folder.resolve("data").resolve("strickle.db")));
  }

  @Test
  @Timeout(60)
  void theLogHasALineForEachEventAndNothingPersonal() throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Thread serving =
        Shell.begin(out, err, "serve", "--data", folder.resolve("data"), "--port", "0");
    String address = address(out);
    try (HttpClient client = HttpClient.newHttpClient()) {
      send(client, "POST", address + "/api/studios", "{\"name\": \"Zora Q\", \"begin\": \"demo\"}");
      send(
          client,
          "POST",
          address + "/api/people",
          "{\"id\": \"zora-q\", \"name\": \"Zora Q\", \"hours\": {}}");
      send(client, "GET", address + "/api/people/zora-q", "");
      send(client, "PUT", address + "/api/people/zora-q", "{\"id\": \"Zora Q\", nonsense");
      send(client, "GET", address + "/zora-q?who=zora-q", "");
      send(
          client,
          "POST",
          address + "/api/session",
          "{\"studio\": \"Zora Q\", \"password\": \"zora\"}");
    }
    serving.interrupt();
    serving.join();
    List<String> lines = err.toString(UTF_8).lines().toList();
    lines.forEach(line -> assertTrue(LOG_LINE.matcher(line).matches(), line));
    assertEquals(6, lines.stream().filter(line -> line.contains(" request method=")).count());
    assertFalse(err.toString(UTF_8).toLowerCase(Locale.ROOT).contains("zora"), err.toString(UTF_8));
    assertTrue(lines.get(lines.size() - 1).endsWith("INFO ended"), lines.toString());
  }

  private static void send(HttpClient client, String method, String address, String body)
      throws IOException, InterruptedException {
    client.send(
        HttpRequest.newBuilder(URI.create(address))
            .method(method, HttpRequest.BodyPublishers.ofString(body))
            .header("Strickle-Who", "Zora Q")
            .build(),
        HttpResponse.BodyHandlers.discarding());
  }

  @Test
  void whatCannotBeServedIsRefused() {
    List<String> port = Shell.run("serve", "--data", folder, "--port", "70000").faults();
    assertEquals(
        List.of("--port: found \"70000\"; right would be a whole number from 0 to 65535"), port);
    Shell.Result both =
        Shell.run("serve", "--data", folder, "--database", "jdbc:postgresql:studio");
    assertEquals(List.of("--data"), both.paths());
    Shell.Result other = Shell.run("serve", "--database", "jdbc:other:studio");
    assertEquals(List.of("--database"), other.paths());
    assertFalse(Files.exists(folder.resolve("strickle.db")));
  }

  // What is printed is looked at again and again; the test's own limit ends a wait in vain.
  private static String address(ByteArrayOutputStream out) throws InterruptedException {
    while (true) {
      Matcher address = ADDRESS.matcher(out.toString(UTF_8));
      if (address.find()) {
        return address.group();
      }
      Thread.sleep(BREATH_MILLIS);
    }
  }
}
