package strickle.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.SocketException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.store.Database;
import strickle.store.Studios;

/** Who only stands in the door keeps nobody out. */
@Tag("slow")
class DoorkeeperTest {

  private static final List<String> HALVES =
      List.of(
          "",
          "G",
          "GET /health HTTP/1.1\r\nHost: local",
          "POST /api/session HTTP/1.1\r\nHost: localhost:PORT\r\nContent-Length: 900\r\n\r\n{");

  @TempDir Path folder;

  @Test
  void whoSendsNothingOrHalfARequestKeepsNobodyOutOfAServiceForOthers() throws Exception {
    Database database = Database.inFolder(folder);
    String hash = Password.hash("grey dust on the sill");
    StudioRoutes.createEmpty(new Studios(database, Clock.systemUTC()), "Ash Lane", hash);
    Listening everywhere = new Listening("0.0.0.0", 0, Set.of(), false, Listening.USUAL_PATIENCE);
    try (Web web = Web.of(database, Clock.systemUTC(), everywhere)) {
      for (String half : HALVES) {
        keepsNobodyOut(web, half);
      }
    }
  }

  @Test
  void whoSendsNothingOrHalfARequestKeepsNobodyOutHere() throws Exception {
    try (Web web = Web.demo(folder)) {
      for (String half : HALVES) {
        keepsNobodyOut(web, half);
      }
    }
  }

  private static void keepsNobodyOut(Web web, String half) throws IOException {
    List<Socket> standing = new ArrayList<>();
    try {
      for (int i = 0; i < 230; i++) {
        standing.add(standing(web.port(), half));
      }
      String health = "GET /health HTTP/1.1\r\nHost: localhost:" + web.port() + "\r\n\r\n";
      long begun = System.nanoTime();
      assertEquals(200, RawHttp.status(RawHttp.ask(web.port(), health)), half);
      assertTrue(System.nanoTime() - begun < Duration.ofSeconds(5).toNanos(), half);
    } finally {
      for (Socket one : standing) {
        one.close();
      }
    }
  }

  private static Socket standing(int port, String half) throws IOException {
    Socket socket = new Socket(InetAddress.getLoopbackAddress(), port);
    String sent = half.replace("PORT", Integer.toString(port));
    socket.getOutputStream().write(sent.getBytes(StandardCharsets.ISO_8859_1));
    socket.getOutputStream().flush();
    return socket;
  }

  @Test
  void aHeadThatTricklesInIsNotWaitedFor() throws Exception {
    try (Web web = Web.demo(folder);
        Socket slow = standing(web.port(), "GET /health HTTP/1.1\r\nX: ")) {
      int sent = 0;
      try {
        while (sent < 150 && slow.getInputStream().available() == 0) {
          slow.getOutputStream().write('x');
          slow.getOutputStream().flush();
          sent++;
          Thread.sleep(100);
        }
      } catch (SocketException gone) {
        // As it should be.
      }
      assertTrue(sent > 20 && sent < 150, sent + " bytes");
    }
  }

  @Test
  void aStreamOfEventsGoesOnWhileOthersStandInTheDoor() throws Exception {
    try (Web web = Web.demo(folder)) {
      String plan = web.asked("/api/plans", "{\"from\": \"2027-03-01T00:00\", \"seconds\": 600}");
      try (Socket listening = standing(web.port(), get(plan + "/events", web.port()))) {
        InputStream in = listening.getInputStream();
        listening.setSoTimeout(20_000);
        assertTrue(read(in, "event: progress").contains("200 OK"));
        keepsNobodyOut(web, "");
        web.send("POST", plan + "/stop", "");
        assertTrue(read(in, "event: done").contains("event: done"));
      }
    }
  }

  private static String get(String path, int port) {
    return "GET " + path + " HTTP/1.1\r\nHost: localhost:" + port + "\r\n\r\n";
  }

  private static String read(InputStream in, String until) throws IOException {
    StringBuilder all = new StringBuilder();
    byte[] some = new byte[4096];
    int read = in.read(some);
    while (read >= 0) {
      all.append(new String(some, 0, read, StandardCharsets.UTF_8));
      if (all.indexOf(until) >= 0) {
        return all.toString();
      }
      read = in.read(some);
    }
    return all.toString();
  }
}
