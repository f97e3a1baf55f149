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
  private static final String RACK = "{\"id\": \"rack-9\", \"name\": \"rack\", \"places\": %d}";

  @TempDir Path folder;

  private final Map<Integer, AtomicLong> answers = new ConcurrentHashMap<>();
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
      web.send("POST", "/api/stations", RACK.formatted(1));
      long end = System.nanoTime() + lasting.toNanos();
      List<Thread> clients =
          IntStream.range(0, CLIENTS)
              .mapToObj(number -> Thread.ofVirtual().start(() -> client(web, end)))
              .toList();
      for (Thread client : clients) {
        client.join();
      }
      System.out.println(CLIENTS + " clients, answers " + answers + ", " + raised + " changes");
      assertEquals(1 + raised.get(), places(web.get("/api/stations/rack-9")));
      assertTrue(raised.get() > 0);
      assertTrue(answers.keySet().stream().allMatch(status -> status < 500), answers.toString());
    }
  }

  // Counts up what it read, which is refused when somebody else was quicker.
  private void client(Web web, long end) {
    while (System.nanoTime() < end) {
      HttpResponse<String> read = counted(web.get("/api/stations/rack-9"));
      String tag = read.headers().firstValue("ETag").orElseThrow();
      String more = RACK.formatted(places(read) + 1);
      HttpResponse<String> changed =
          counted(web.send("PUT", "/api/stations/rack-9", more, "If-Match", tag));
      if (changed.statusCode() == Status.OK) {
        raised.incrementAndGet();
      }
      counted(web.get("/api/pieces"));
    }
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
