package strickle.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

class ServeCommandTest {

  @TempDir Path folder;

  @Test
  @Timeout(60)
  void theStudioIsServedUntilItIsInterrupted() throws IOException, InterruptedException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Thread serving = Shell.begin(out, "serve", "--data", folder.resolve("data"), "--port", "0");
    String address = Shell.address(out);
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
}
