package strickle.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.time.Instant;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.store.Database;
import strickle.store.SettableClock;

/** What goes wrong around a service is told plainly and loses nothing. */
@Tag("slow")
class TroubleTest {

  @TempDir Path folder;

  private final SettableClock clock = new SettableClock(Instant.parse("2027-04-05T09:00:00Z"));

  @Test
  void aFullDiskIsToldAndWithRoomItGoesOn() throws Exception {
    assumeTrue(mounted("size=4m"), "only root can make a small disk");
    try (Web web = demo()) {
      Path filler = folder.resolve("filler");
      fill(filler);
      String before = web.get("/api/book").body();
      HttpResponse<String> refused = post(web, "a");
      assertEquals(503, refused.statusCode(), refused.body());
      assertTrue(refused.body().contains("The disk is full: nothing was changed."));
      assertEquals(before, web.get("/api/book").body());
      Files.delete(filler);
      assertEquals(201, post(web, "a").statusCode());
    } finally {
      run("umount", "-l", folder.toString());
    }
  }

  @Test
  void aDiskThatMayOnlyBeReadIsTold() throws Exception {
    assumeTrue(mounted("size=8m"), "only root can make a disk of its own");
    try {
      try (Web web = demo()) {
        assertEquals(201, post(web, "a").statusCode());
      }
      run("mount", "-o", "remount,ro", folder.toString());
      try (Served served = Served.on(folder)) {
        assertEquals(1, served.exitCode());
        assertTrue(served.told().contains("may only be read"), served.told());
      }
      run("mount", "-o", "remount,rw", folder.toString());
      try (Web web = Web.of(Database.inFolder(folder), clock, Listening.here(0))) {
        assertEquals(200, web.get("/api/stations/a").statusCode());
      }
    } finally {
      run("umount", "-l", folder.toString());
    }
  }

  @Test
  void aFileThatMayNotGrowIsToldAndLosesNothing() throws Exception {
    int blocks = 6000; // of 512 bytes: room for the studio and for its native library
    int made = 0;
    try (Served served = Served.after("ulimit -f " + blocks, folder)) {
      assertTrue(served.serves(), served.told());
      served.demo();
      Served.Answer answer = served.station("s0");
      while (answer.status() == 201 && made < 5000) {
        made++;
        answer = served.station("s" + made);
      }
      assertEquals(503, answer.status(), answer.body());
      assertTrue(answer.body().contains("nothing was changed"), answer.body());
    }
    try (Web web = Web.of(Database.inFolder(folder), clock, Listening.here(0))) {
      for (int i = 0; i < made; i++) {
        assertEquals(200, web.get("/api/stations/s" + i).statusCode(), "s" + i + " of " + made);
      }
      assertEquals(404, web.get("/api/stations/s" + made).statusCode());
    }
  }

  @Test
  void aFolderThatIsServedAlreadyIsToldAndADamagedFileLeftAlone() throws Exception {
    try (Web web = demo();
        Served second = Served.on(folder)) {
      assertEquals(1, second.exitCode());
      assertTrue(second.told().contains("another Strickle serves the folder"), second.told());
      assertEquals(201, post(web, "a").statusCode());
    }
    Path file = folder.resolve("strickle.db");
    byte[] whole = Files.readAllBytes(file);
    try (RandomAccessFile damaged = new RandomAccessFile(file.toFile(), "rw")) {
      damaged.write("no studio".getBytes(StandardCharsets.US_ASCII));
    }
    try (Served served = Served.on(folder)) {
      assertEquals(1, served.exitCode());
      assertTrue(served.told().contains("damaged"), served.told());
      assertTrue(served.told().contains("strickle-2027-04-05.db"), served.told());
      assertEquals(1, served.told().lines().count(), served.told());
    }
    Files.write(file, whole);
    try (Web web = Web.of(Database.inFolder(folder), clock, Listening.here(0))) {
      assertEquals(200, web.get("/api/stations/a").statusCode());
    }
  }

  @Test
  void aFileThatAnotherProgramHoldsIsToldAndLosesNothing() throws Exception {
    try (Web web = demo();
        Connection other =
            DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("strickle.db"));
        Statement statement = other.createStatement()) {
      statement.execute("begin immediate");
      String before = web.get("/api/book").body();
      HttpResponse<String> refused = post(web, "a");
      assertEquals(503, refused.statusCode(), refused.body());
      assertTrue(refused.body().contains("held by another program: nothing was changed."));
      assertEquals(before, web.get("/api/book").body());
      statement.execute("rollback");
      assertEquals(201, post(web, "a").statusCode());
    }
  }

  @Test
  void aClockThatJumpsAndAnotherTimeZoneLoseNothing() throws Exception {
    try (Web web = demo()) {
      assertEquals(201, post(web, "a").statusCode());
      clock.set(Instant.parse("2001-01-01T00:00:00Z"));
      assertEquals(201, post(web, "b").statusCode());
      clock.set(Instant.parse("2040-01-01T00:00:00Z"));
      assertEquals(201, post(web, "c").statusCode());
      for (int i = 0; i < 3; i++) {
        assertEquals(200, web.send("POST", "/api/undo", "", "If-Match", "*").statusCode());
      }
      assertEquals(404, web.get("/api/stations/a").statusCode());
      assertEquals(200, web.send("POST", "/api/redo", "", "If-Match", "*").statusCode());
    }
    try (Served far =
        Served.on(folder, "-Duser.timezone=Pacific/Kiritimati", "-Duser.language=tr")) {
      assertTrue(far.serves(), far.told());
      assertEquals(200, far.send("GET", "/api/stations/a", "").status());
      assertEquals(201, far.station("d").status());
      assertTrue(far.send("GET", "/api/journal", "").body().contains("2040-01-01T00:00:00Z"));
    }
  }

  @Test
  void whatIsUnderWayEndsBeforeTheServiceDoes() throws Exception {
    try (Served served = Served.on(folder)) {
      served.demo();
      Thread late = Thread.ofVirtual().start(served::end);
      int made = 0;
      Served.Answer answer = served.station("s0");
      while (answer.status() == 201) {
        made++;
        answer = served.station("s" + made);
      }
      late.join();
      assertTrue(answer.status() == 0 || answer.status() == 503, answer.toString());
      long before = System.nanoTime();
      assertEquals(143, served.exitCode());
      assertTrue(System.nanoTime() - before < TimeUnit.SECONDS.toNanos(30));
      try (Web web = Web.of(Database.inFolder(folder), clock, Listening.here(0))) {
        for (int i = 0; i < made; i++) {
          assertEquals(200, web.get("/api/stations/s" + i).statusCode());
        }
      }
    }
  }

  private Web demo() {
    Web web = Web.of(Database.inFolder(folder), clock, Listening.here(0));
    web.send("POST", "/api/studios", "{\"name\": \"Ash Lane\", \"begin\": \"demo\"}");
    return web;
  }

  private static HttpResponse<String> post(Web web, String id) {
    String rack = "{\"id\": \"" + id + "\", \"name\": \"rack\", \"places\": 4}";
    return web.send("POST", "/api/stations", rack);
  }

  private static void fill(Path filler) throws IOException {
    byte[] some = new byte[1024];
    try (RandomAccessFile file = new RandomAccessFile(filler.toFile(), "rw")) {
      while (true) {
        file.write(some);
      }
    } catch (IOException full) {
      assertTrue(Files.size(filler) > 0, full.toString());
    }
  }

  private boolean mounted(String size) throws Exception {
    return run("mount", "-t", "tmpfs", "-o", size, "studio", folder.toString()) == 0;
  }

  private static int run(String... command) throws Exception {
    try {
      return new ProcessBuilder(command).redirectErrorStream(true).start().waitFor();
    } catch (IOException noSuchCommand) {
      return 1;
    }
  }
}
