package strickle.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.Statement;
import java.util.HashSet;
import java.util.List;
import java.util.Queue;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.demo.Demo;
import strickle.demo.Size;
import strickle.json.BookFile;
import strickle.json.Meshes;
import strickle.json.PlanFile;
import strickle.plan.audit.Audit;

/**
 * Whoever was told that a change is made or a plan is asked for finds it after any end of the
 * process: while it writes, while it plans, and while it starts.
 */
class KilledTest {

  private static final int WRITERS = 4;
  private static final int RACKS_EACH = 5;
  private static final int MOST_CHANGES = 30;
  private static final int LONGEST_MILLIS = 20;
  private static final int LONGEST_START_MILLIS = 1500;
  private static final int EVERY_START = 5;
  private static final Pattern PLAN_ID = Pattern.compile("\"id\": \"([-0-9a-f]{36})\"");

  private static final Pattern NEXT = Pattern.compile("\"next\": \"([-0-9a-f]{36})\"");

  @TempDir Path folder;
  @TempDir Path program;

  private List<String> java = List.of();
  private final Random random = new Random(7);
  private final SureRacks racks = new SureRacks();
  private final Queue<String> plans = new ConcurrentLinkedQueue<>();

  @Test
  @Tag("slow")
  void everyAcknowledgedChangeIsThereAfterAKill() throws Exception {
    killed(5);
  }

  @Test
  @Tag("long")
  void everyAcknowledgedChangeIsThereAfterThreeHundredKills() throws Exception {
    killed(300);
  }

  private void killed(int times) throws Exception {
    java = FastStart.in(program);
    for (int round = 0; round < times; round++) {
      told(round);
      if (round % EVERY_START == EVERY_START - 1) {
        Served.killedAfter(folder, java, random.nextInt(LONGEST_START_MILLIS));
        continue;
      }
      try (Served served = Served.on(folder, java)) {
        assertTrue(served.serves(), served.told());
        if (round == 0) {
          served.demo();
        }
        complete(served);
        workUntilKilled(served, round);
      }
    }
    int made = allPlansAreOver();
    System.out.println(
        times
            + " kills, "
            + racks.acknowledged()
            + " changes acknowledged and none lost, "
            + racks.cutOff()
            + " cut off; "
            + plans.size()
            + " plans asked for and none lost, "
            + made
            + " laid out");
    assertTrue(racks.acknowledged() > times, racks.acknowledged() + " changes");
    assertTrue(made > 0 && plans.size() > times / 10, plans.size() + " plans");
  }

  private void told(int round) {
    if (round % 50 == 0 && round > 0) {
      System.out.println(round + " kills, " + racks.acknowledged() + " changes, none lost");
    }
  }

  private void complete(Served served) throws Exception {
    String book = served.send("GET", "/api/book", "").body();
    BookFile.parse(book, Meshes.in(folder));
    assertEquals(List.of(), racks.wrong(book));
    Set<String> lost = new HashSet<>(plans);
    lost.removeAll(listed(served));
    assertEquals(Set.of(), lost);
    sound();
  }

  private static Set<String> listed(Served served) throws InterruptedException {
    Set<String> listed = new HashSet<>();
    String path = "/api/plans?limit=200";
    for (String next = path; !next.isEmpty(); ) {
      String page = served.send("GET", next, "").body();
      Matcher id = PLAN_ID.matcher(page);
      while (id.find()) {
        listed.add(id.group(1));
      }
      Matcher more = NEXT.matcher(page);
      next = more.find() ? path + "&after=" + more.group(1) : "";
    }
    return listed;
  }

  // Beside the service, so that what a kill has left is the service's to put right, not ours.
  private void sound() throws Exception {
    try (Connection file =
            DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("strickle.db"));
        Statement statement = file.createStatement();
        ResultSet result = statement.executeQuery("pragma integrity_check")) {
      assertEquals("ok", result.getString(1));
    }
  }

  private void workUntilKilled(Served served, int round) throws InterruptedException {
    AtomicBoolean over = new AtomicBoolean();
    List<Thread> writers =
        IntStream.range(0, WRITERS)
            .mapToObj(writer -> Thread.ofVirtual().start(() -> write(served, writer, over)))
            .toList();
    Thread planner = Thread.ofVirtual().start(() -> plan(served, round));
    long enough = racks.acknowledged() + random.nextInt(MOST_CHANGES);
    while (racks.acknowledged() < enough) {
      Thread.sleep(1);
    }
    Thread.sleep(random.nextInt(LONGEST_MILLIS));
    served.kill();
    over.set(true);
    for (Thread writer : writers) {
      writer.join();
    }
    planner.join();
  }

  private void write(Served served, int writer, AtomicBoolean over) {
    try {
      for (int i = 0; !over.get(); i++) {
        racks.change(served, "sure-" + writer + "-" + i % RACKS_EACH);
      }
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }

  private void plan(Served served, int round) {
    try {
      String wanted =
          "{\"from\": \"2027-03-01T00:00\", \"schedules\": 60, \"seed\": " + round + "}";
      Served.Answer asked = served.send("POST", "/api/plans", wanted);
      Matcher id = PLAN_ID.matcher(asked.body());
      if (asked.status() == Status.ACCEPTED && id.find()) {
        plans.add(id.group(1));
      }
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }

  // One that ended the program three times is given up, and says so; every other is laid out.
  private int allPlansAreOver() throws Exception {
    int made = 0;
    try (Served served = Served.on(folder, java)) {
      assertTrue(served.serves(), served.told());
      complete(served);
      for (String plan : plans) {
        String place = "/api/plans/" + plan;
        String events = served.send("GET", place + "/events", "").body();
        String end = events.substring(events.lastIndexOf("event: done"));
        boolean done = end.contains("\"state\":\"done\"");
        boolean givenUp = end.contains("\"state\":\"failed\"") && end.contains("\"why\"");
        assertTrue(done || givenUp, end);
        if (done) {
          String result = served.send("GET", place + "/result", "").body();
          assertEquals(List.of(), Audit.of(Demo.book(Size.MEDIUM), PlanFile.parse(result)));
          made++;
        }
      }
    }
    return made;
  }
}
