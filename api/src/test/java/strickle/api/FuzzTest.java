package strickle.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.api.FuzzSequence.Step;
import strickle.store.Database;
import strickle.store.StoreHash;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/**
 * Whatever is asked is answered as the contract says, and what is refused has no effect. Every so
 * many requests it goes on with a new studio, so that what it looks through stays small.
 */
class FuzzTest {

  private static final int OF_ONE_STUDIO = 1000;
  private static final int MOST_WRONG = 20;

  /** Operations that think, hash a password or wait for a plan, and so take their time. */
  private static final Pattern SLOW =
      Pattern.compile("/api/(session|promise|what-if|fair|bound|why|sensitivity|replan|plans).*");

  private static final int ONE_OF_SLOW = 30;
  private static final String PLAN =
      "{\"from\": \"2027-03-01T00:00\", \"schedules\": 3, \"seed\": 1}";
  private static final Pattern ID = Pattern.compile("\"id\": \"([-0-9a-f]{36})\"");
  private static final Pattern ETAG = Pattern.compile("(?i)\r\netag: ([^\r]+)");

  private record Op(String method, String path, String body) {}

  @TempDir Path folder;

  private final Random random = new Random(11);
  private final FuzzWords words = new FuzzWords(random);
  private final ObjectMapper json = new ObjectMapper();
  private final Map<Integer, Integer> answers = new TreeMap<>();
  private final List<String> wrong = new ArrayList<>();
  private int asked;
  private int inSequence;
  private int refusedWithoutEffect;

  private List<Op> operations = List.of();
  private List<List<Step>> sequences = List.of();
  private Optional<ContractJudge> judge = Optional.empty();
  private int port;
  private StoreHash hash;
  private String before = "";
  private String tag = "*";
  private String id = "none";

  @Test
  @Tag("slow")
  void twoThousandRequestsAreAnsweredByTheContract() {
    fuzz(2_000, 1);
  }

  @Test
  @Tag("long")
  void aHundredThousandRequestsAreAnsweredByTheContract() {
    fuzz(100_000, 10);
  }

  // The hash is looked at after every so many refusals; it holds whatever was refused before.
  private void fuzz(int requests, int every) {
    for (int studio = 0; asked < requests && wrong.size() < MOST_WRONG; studio++) {
      Database database = Database.inFolder(folder.resolve("studio" + studio));
      hash = new StoreHash(database);
      try (Web web = Web.on(database)) {
        begin(web);
        int end = Math.min(requests, asked + OF_ONE_STUDIO);
        while (asked < end && wrong.size() < MOST_WRONG) {
          next(end, every);
        }
      }
    }
    System.out.println(
        asked
            + " requests, "
            + inSequence
            + " of them in sequences, answers by status "
            + answers
            + "; the store was the same after "
            + refusedWithoutEffect
            + " looks at it");
    assertEquals(List.of(), wrong);
    assertTrue(answers.keySet().stream().filter(status -> status < 300).count() >= 2);
  }

  private void begin(Web web) {
    port = web.port();
    web.send("POST", "/api/studios", "{\"name\": \"Ash Lane\", \"begin\": \"demo\"}");
    String contract = web.get("/api/openapi.json").body();
    judge = Optional.of(judge.orElseGet(() -> new ContractJudge(contract)));
    operations = operations(json.readTree(contract), web);
    sequences = sequences(web);
    before = hash.now();
  }

  private void next(int end, int every) {
    if (random.nextInt(20) > 0) {
      ask(step(), every);
      return;
    }
    List<Step> steps = FuzzSequence.spoilt(words.oneOf(sequences), words, random);
    for (Step step : steps.subList(0, Math.min(steps.size(), end - asked))) {
      inSequence++;
      ask(step, every);
    }
  }

  private void ask(Step step, int every) {
    byte[] request = bytes(step);
    String answer = RawHttp.ask(port, request);
    int status = RawHttp.status(answer);
    asked++;
    answers.merge(status, 1, Integer::sum);
    judge
        .orElseThrow()
        .wrong(step.method(), step.template(), answer)
        .ifPresent(why -> wrong.add(shown(request) + " -> " + shortened(why)));
    remember(answer);
    boolean done = status > 0 && status < 300 && !step.method().equals("GET");
    if (done) {
      before = hash.now();
    } else if (asked % every == 0) {
      look(shown(request) + " -> " + status);
    }
  }

  private void look(String request) {
    String now = hash.now();
    if (!before.equals(now)) {
      wrong.add("changed by a refused " + request);
      before = now;
    } else {
      refusedWithoutEffect++;
    }
  }

  private void remember(String answer) {
    Matcher etag = ETAG.matcher(answer);
    tag = etag.find() ? etag.group(1).strip() : tag;
    Matcher named = ID.matcher(answer);
    id = named.find() ? named.group(1) : id;
  }

  /** A request for any operation, with something wrong in most of them. */
  private Step step() {
    Op operation = words.oneOf(operations);
    while (SLOW.matcher(operation.path()).matches() && random.nextInt(ONE_OF_SLOW) > 0) {
      operation = words.oneOf(operations);
    }
    String method = random.nextInt(40) == 0 ? words.method() : operation.method();
    String path = operation.path();
    while (path.contains("{")) {
      path = path.replaceFirst("\\{[A-Za-z]+\\}", Matcher.quoteReplacement(words.id()));
    }
    if (random.nextInt(5) == 0) {
      path += words.query();
    }
    String body = random.nextInt(3) == 0 ? operation.body() : words.spoilt(operation.body());
    return new Step(method, operation.path(), path, words.headers(), body);
  }

  private byte[] bytes(Step step) {
    byte[] body = step.body().getBytes(StandardCharsets.UTF_8);
    String head =
        step.method()
            + " "
            + step.path().replace("/ID", "/" + id)
            + " HTTP/1.1\r\nHost: localhost:"
            + port
            + "\r\n"
            + step.headers().replace("TAG", tag)
            + "Connection: close\r\nContent-Length: "
            + body.length
            + "\r\n\r\n";
    byte[] start = head.getBytes(StandardCharsets.ISO_8859_1);
    byte[] all = Arrays.copyOf(start, start.length + body.length);
    System.arraycopy(body, 0, all, start.length, body.length);
    return all;
  }

  private static String shown(byte[] request) {
    return shortened(new String(request, StandardCharsets.ISO_8859_1).replace("\r\n", " | "));
  }

  private static String shortened(String text) {
    return text.substring(0, Math.min(text.length(), 500));
  }

  private static List<List<Step>> sequences(Web web) {
    List<List<Step>> all = new ArrayList<>();
    for (Collection collection : Collection.ALL) {
      String example = collection.example().replaceFirst("\"id\": \"[^\"]*\"", "\"id\": \"seq\"");
      all.add(FuzzSequence.ofThing(collection.name(), "seq", example));
    }
    all.add(FuzzSequence.ofThing("drying", "planter", Collection.DRYING.example()));
    all.add(FuzzSequence.ofThing("stations", "seq", Collection.ALL.get(1).example()));
    all.add(FuzzSequence.ofKeeping(web.get("/api/export").body()));
    all.add(FuzzSequence.ofPlan(PLAN));
    return all;
  }

  private static List<Op> operations(JsonNode contract, Web web) {
    List<Op> all = new ArrayList<>();
    for (Map.Entry<String, JsonNode> path : contract.get("paths").properties()) {
      for (Map.Entry<String, JsonNode> method : path.getValue().properties()) {
        all.add(operation(method.getKey(), path.getKey(), method.getValue(), web));
      }
    }
    return all;
  }

  private static Op operation(String method, String path, JsonNode node, Web web) {
    JsonNode content = node.path("requestBody").path("content");
    String example =
        content.propertyStream().findFirst().map(one -> text(one.getValue())).orElse("");
    boolean whole = example.isEmpty() && method.equals("put") && !path.contains("{");
    return new Op(method.toUpperCase(Locale.ROOT), path, whole ? web.get(path).body() : example);
  }

  private static String text(JsonNode media) {
    JsonNode example = media.path("example");
    return example.isMissingNode()
        ? ""
        : example.isString() ? example.asString() : example.toString();
  }
}
