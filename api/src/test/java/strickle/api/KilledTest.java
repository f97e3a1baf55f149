package strickle.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.Statement;
import java.util.List;
import java.util.Queue;
import java.util.Random;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.json.BookFile;
import strickle.json.Meshes;

/** Whoever was told that a change is made finds it after any end of the process. */
class KilledTest {

  private static final int WRITERS = 4;
  private static final int LONGEST_MILLIS = 400;

  @TempDir Path folder;

  private final Random random = new Random(7);
  private final Queue<String> acknowledged = new ConcurrentLinkedQueue<>();

  @Test
  @Tag("slow")
  void everyAcknowledgedChangeIsThereAfterAKill() throws Exception {
    killed(10);
  }

  @Test
  @Tag("long")
  void everyAcknowledgedChangeIsThereAfterThreeHundredKills() throws Exception {
    killed(300);
  }

  private void killed(int times) throws Exception {
    for (int round = 0; round < times; round++) {
      try (Served served = Served.on(folder)) {
        assertTrue(served.serves(), served.told());
        if (round == 0) {
          served.demo();
        }
        complete(served);
        writeUntilKilled(served, round);
      }
      sound();
    }
    System.out.println(times + " kills, " + acknowledged.size() + " changes, none lost");
    assertTrue(acknowledged.size() > times, acknowledged.size() + " changes");
  }

  private void complete(Served served) throws InterruptedException {
    String book = served.send("GET", "/api/book", "").body();
    BookFile.parse(book, Meshes.in(folder));
    List<String> lost = acknowledged.stream().filter(id -> !book.contains('"' + id + '"')).toList();
    assertEquals(List.of(), lost);
  }

  private void writeUntilKilled(Served served, int round) throws InterruptedException {
    AtomicBoolean over = new AtomicBoolean();
    List<Thread> writers =
        IntStream.range(0, WRITERS)
            .mapToObj(writer -> "k" + round + "-" + writer)
            .map(name -> Thread.ofVirtual().start(() -> write(served, name, over)))
            .toList();
    Thread.sleep(random.nextInt(LONGEST_MILLIS));
    served.kill();
    over.set(true);
    for (Thread writer : writers) {
      writer.join();
    }
  }

  private void write(Served served, String name, AtomicBoolean over) {
    try {
      for (int i = 0; !over.get(); i++) {
        String id = name + "-" + i;
        if (served.station(id).status() == Status.CREATED) {
          acknowledged.add(id);
        }
      }
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }

  private void sound() throws Exception {
    try (Connection file =
            DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("strickle.db"));
        Statement statement = file.createStatement();
        ResultSet result = statement.executeQuery("pragma integrity_check")) {
      assertEquals("ok", result.getString(1));
    }
  }
}
