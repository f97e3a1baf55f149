package strickle.api;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a studio's racks must be like, by what was acknowledged of making, changing and removing
 * them. A change that was cut off may have happened or not.
 */
final class SureRacks {

  private static final Pattern RACK =
      Pattern.compile("\"id\": \"(sure-[^\"]+)\",[^}]*\"places\": ([0-9]+)", Pattern.DOTALL);

  private final Map<String, OptionalInt> sure = new ConcurrentHashMap<>();
  private final Map<String, OptionalInt> perhaps = new ConcurrentHashMap<>();
  private final AtomicInteger places = new AtomicInteger();
  private final AtomicLong acknowledged = new AtomicLong();
  private final AtomicLong cutOff = new AtomicLong();

  /** Makes, changes or removes a rack that nobody else is at; whether it was acknowledged. */
  boolean change(Served served, String id) throws InterruptedException {
    boolean there = sure.getOrDefault(id, OptionalInt.empty()).isPresent();
    int next = places.incrementAndGet();
    OptionalInt after = there && next % 3 == 0 ? OptionalInt.empty() : OptionalInt.of(next);
    perhaps.put(id, after);
    int status = send(served, id, there, after).status();
    if (status == 0) {
      cutOff.incrementAndGet();
      return false;
    }
    perhaps.remove(id);
    boolean done = status == Status.OK || status == Status.CREATED || status == Status.DONE;
    if (done) {
      sure.put(id, after);
      acknowledged.incrementAndGet();
    }
    return done;
  }

  private static Served.Answer send(Served served, String id, boolean there, OptionalInt after)
      throws InterruptedException {
    String place = "/api/stations/" + id;
    if (after.isEmpty()) {
      return served.send("DELETE", place, "", "If-Match", "*");
    }
    String body =
        "{\"id\": \"" + id + "\", \"name\": \"rack\", \"places\": " + after.getAsInt() + "}";
    return there
        ? served.send("PUT", place, body, "If-Match", "*")
        : served.send("POST", "/api/stations", body);
  }

  /** What of a book is neither what was acknowledged nor what was cut off; then it is known. */
  List<String> wrong(String book) {
    Map<String, OptionalInt> found = new HashMap<>();
    Matcher rack = RACK.matcher(book);
    while (rack.find()) {
      found.put(rack.group(1), OptionalInt.of(Integer.parseInt(rack.group(2))));
    }
    List<String> wrong = new ArrayList<>();
    found.keySet().forEach(id -> sure.putIfAbsent(id, OptionalInt.empty()));
    for (Map.Entry<String, OptionalInt> known : sure.entrySet()) {
      OptionalInt now = found.getOrDefault(known.getKey(), OptionalInt.empty());
      OptionalInt other = perhaps.getOrDefault(known.getKey(), known.getValue());
      if (!now.equals(known.getValue()) && !now.equals(other)) {
        wrong.add(known.getKey() + " is " + now + ", not " + known.getValue() + " or " + other);
      }
      known.setValue(now);
    }
    perhaps.clear();
    return wrong;
  }

  /** How many changes were acknowledged. */
  long acknowledged() {
    return acknowledged.get();
  }

  /** How many were cut off, and may have happened or not. */
  long cutOff() {
    return cutOff.get();
  }
}
