package strickle.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Fifty who read and write at once neither lose a change nor meet a fault. */
class CrowdTest {

  private static final int CLIENTS = 50;
  private static final Pattern PLACES = Pattern.compile("\"places\": ([0-9]+)");

  private static final String PLACE = "/api/stations/";

  @TempDir Path folder;

  private final Map<Integer, AtomicLong> answers = new ConcurrentHashMap<>();
  private final Map<String, Long> owned = new ConcurrentHashMap<>();
  private final AtomicLong raised = new AtomicLong();

  @Test
  @Tag("slow")
  void fiftyClientsLoseNothingInThreeSeconds() throws Exception {
    crowd(Duration.ofSeconds(3));
  }

  @Test
  @Tag("long")
  void fiftyClientsLoseNothingInAMinute() throws Exception {
    crowd(Duration.ofMinutes(1));
  }

  private void crowd(Duration lasting) throws Exception {
    try (Web web = Web.demo(folder)) {
      web.send("POST", "/api/stations", rack("rack-9", 1));
      long end = System.nanoTime() + lasting.toNanos();
      List<Thread> clients =
          IntStream.range(0, CLIENTS)
              .mapToObj(number -> Thread.ofVirtual().start(() -> client(web, number, end)))
              .toList();
      for (Thread client : clients) {
        client.join();
      }
      System.out.println(
          CLIENTS
              + " clients, answers "
              + answers
              + ", "
              + raised
              + " changes of one thing and "
              + owned.values().stream().mapToLong(Long::longValue).sum()
              + " of things of their own");
      assertEquals(1 + raised.get(), places(web.get("/api/stations/rack-9")));
      assertTrue(raised.get() > 0);
      owned.forEach((id, times) -> assertEquals(1 + times, places(web.get(PLACE + id)), id));
      assertTrue(answers.keySet().stream().allMatch(status -> status < 500), answers.toString());
    }
  }

  // Counts up what it read, which is refused when somebody else was quicker.
  private void client(Web web, int number, long end) {
    String own = "own-" + number;
    counted(web.send("POST", "/api/stations", rack(own, 1)));
    for (int times = 1; System.nanoTime() < end; times++) {
      if (times % 5 == 0) {
        raiseOwn(web, own);
      }
      HttpResponse<String> read = counted(web.get("/api/stations/rack-9"));
      String tag = read.headers().firstValue("ETag").orElseThrow();
      String more = rack("rack-9", places(read) + 1);
      HttpResponse<String> changed =
          counted(web.send("PUT", "/api/stations/rack-9", more, "If-Match", tag));
      if (changed.statusCode() == Status.OK) {
        raised.incrementAndGet();
      }
      counted(web.get("/api/pieces"));
    }
  }

  // Nobody else is at it, so what it holds is what was last acknowledged.
  private void raiseOwn(Web web, String own) {
    String place = "/api/stations/" + own;
    HttpResponse<String> read = counted(web.get(place));
    long next = places(read) + 1;
    String tag = read.headers().firstValue("ETag").orElseThrow();
    HttpResponse<String> changed =
        counted(web.send("PUT", place, rack(own, next), "If-Match", tag));
    assertEquals(Status.OK, changed.statusCode(), changed.body());
    owned.merge(own, 1L, Long::sum);
  }

  private static String rack(String id, long places) {
    return "{\"id\": \"" + id + "\", \"name\": \"rack\", \"places\": " + places + "}";
  }

  private HttpResponse<String> counted(HttpResponse<String> answer) {
    answers.computeIfAbsent(answer.statusCode(), status -> new AtomicLong()).incrementAndGet();
    return answer;
  }

  private static long places(HttpResponse<String> rack) {
    Matcher matcher = PLACES.matcher(rack.body());
    assertTrue(matcher.find(), rack.body());
    return Long.parseLong(matcher.group(1));
  }
}
