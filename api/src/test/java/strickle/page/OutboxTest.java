package strickle.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Request;
import com.microsoft.playwright.Route;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInfo;

/**
 * Changes that have not reached the service wait in the browser: in their order, across a lost
 * connection, and none arrives twice or over somebody else's. Against the real service.
 */
@FunctionTest
class OutboxTest {

  private static final String ORDERS = "**/api/orders**";

  private final List<Request> sent = new ArrayList<>();
  private final Consumer<Request> noting = this::note;

  /** Keys are for ever, and the service knows those of the tests before. */
  private String own = "";

  @BeforeEach
  void begin(TestInfo test) {
    own = "-" + Integer.toHexString(test.getDisplayName().hashCode());
    Functions.page().onRequest(noting);
    Functions.page().evaluate("() => localStorage.clear()");
  }

  @AfterEach
  void end() {
    Functions.page().offRequest(noting);
    Functions.page().unroute(ORDERS);
  }

  private void note(Request request) {
    if (!request.method().equals("GET")) {
      sent.add(request);
    }
  }

  /** Keeps changes as the page would and sends all that waits. */
  private static final String SEND_ALL =
      """
      async ({load}, changes) => {
        const {outbox} = await load('app/outbox.js');
        const {sendAll} = await load('app/sending.js');
        const studio = (await (await fetch('/api/studios')).json()).items[0].id;
        for (const {base = null, mine = null, ...change} of changes) outbox.keep({...change, base, mine, studio});
        const refused = await sendAll(studio);
        return {
          refused: refused.map(({waiting, problem}) => `${waiting.key} ${problem.name}`),
          waiting: outbox.of(studio).map(({key}) => key),
        };
      }
      """;

  private static final String SEND_AGAIN =
      "async ({load}) => (await load('app/connection.js')).connection.back()";

  /** What was refused and what still waits, by the keys without what is this test's own. */
  private Map<?, ?> sendAll(List<Map<String, Object>> changes) {
    Map<String, List<String>> told = new HashMap<>();
    ((Map<?, ?>) Functions.call(SEND_ALL, changes))
        .forEach((name, keys) -> told.put(name.toString(), plain((List<?>) keys)));
    return told;
  }

  private List<String> plain(List<?> keys) {
    return keys.stream().map(key -> key.toString().replace(own, "")).toList();
  }

  private static Map<String, Object> order(String id, String forWhom) {
    Map<String, Object> line = Map.of("piece", "doorstop-brick", "quantity", 1);
    return Map.of(
        "id",
        id,
        "for",
        forWhom,
        "kind",
        "custom",
        "due",
        "2027-04-20T17:00",
        "weight",
        1.0,
        "lines",
        List.of(line));
  }

  private Map<String, Object> change(String key, String id, Object base, Object mine) {
    Map<String, Object> change = new HashMap<>();
    change.put("key", key + own);
    change.put("collection", "orders");
    change.put("id", id);
    change.put("base", base);
    change.put("mine", mine);
    return change;
  }

  private List<String> lines() {
    return sent.stream()
        .map(request -> request.method() + request.url().replaceAll(".*/api", " /api"))
        .toList();
  }

  /** The first request of a kind reaches the service, but its answer does not come back. */
  private static void loseTheAnswerOf(String method) {
    boolean[] lost = {false};
    Functions.page()
        .route(
            ORDERS,
            route -> {
              if (lost[0] || !route.request().method().equals(method)) {
                route.resume();
                return;
              }
              lost[0] = true;
              APIResponse arrived = route.fetch();
              assertTrue(arrived.ok(), arrived.text());
              route.abort("connectionreset");
            });
  }

  @Test
  void whatWaitsIsSentInTheOrderItWasMade() {
    Map<?, ?> told =
        sendAll(
            List.of(
                change("1", "W-1", null, order("W-1", "one")),
                change("2", "W-1", order("W-1", "one"), order("W-1", "two")),
                change("3", "W-2", null, order("W-2", "three")),
                change("4", "W-1", order("W-1", "two"), null)));
    assertEquals(Map.of("refused", List.of(), "waiting", List.of()), told);
    assertEquals(
        List.of(
            "POST /api/orders",
            "PUT /api/orders/W-1",
            "POST /api/orders",
            "DELETE /api/orders/W-1"),
        lines());
    assertFalse(Functions.house().get("/api/orders").contains("W-1"));
    assertTrue(Functions.house().get("/api/orders").contains("W-2"));
  }

  @Test
  void aNewThingChangedAgainBeforeItWasSentIsNoConflictWithItself() {
    Map<String, Object> asTyped = new HashMap<>(order("N-1", ""));
    asTyped.put("weight", 1); // what the service leaves out when it is the usual
    Map<String, Object> asChanged = new HashMap<>(asTyped);
    asChanged.put("for", "somebody");
    Map<?, ?> told =
        sendAll(List.of(change("1", "", null, asTyped), change("2", "N-1", asTyped, asChanged)));
    assertEquals(Map.of("refused", List.of(), "waiting", List.of()), told);
    assertTrue(Functions.house().get("/api/orders/N-1").contains("somebody"));
  }

  @Test
  void aNewThingWhoseAnswerWasLostIsAskedForAgainUnderItsKeyAndMadeOnce() {
    loseTheAnswerOf("POST");
    var made = List.of(change("key-of-L-1", "", null, order("L-1", "somebody")));
    assertEquals(Map.of("refused", List.of(), "waiting", List.of("key-of-L-1")), sendAll(made));
    Functions.call(SEND_AGAIN, null);
    assertEquals(Map.of("refused", List.of(), "waiting", List.of()), sendAll(List.of()));
    assertEquals(List.of("POST /api/orders", "POST /api/orders"), lines());
    assertEquals(
        List.of("key-of-L-1" + own, "key-of-L-1" + own),
        sent.stream().map(request -> request.headers().get("idempotency-key")).toList());
    assertEquals(1, Functions.house().get("/api/orders").split("\"L-1\"", -1).length - 1);
  }

  @Test
  void aChangeWhoseAnswerWasLostIsSeenToHaveArrivedAndNotMadeAgain() {
    sendAll(List.of(change("1", "", null, order("P-1", "one"))));
    loseTheAnswerOf("PUT");
    sendAll(List.of(change("2", "P-1", order("P-1", "one"), order("P-1", "two"))));
    Functions.call(SEND_AGAIN, null);
    assertEquals(Map.of("refused", List.of(), "waiting", List.of()), sendAll(List.of()));
    assertEquals(List.of("POST /api/orders", "PUT /api/orders/P-1"), lines());
  }

  @Test
  void aRemovalWhoseAnswerWasLostIsSeenToHaveArrived() {
    sendAll(List.of(change("1", "", null, order("D-1", "one"))));
    loseTheAnswerOf("DELETE");
    sendAll(List.of(change("2", "D-1", order("D-1", "one"), null)));
    Functions.call(SEND_AGAIN, null);
    assertEquals(Map.of("refused", List.of(), "waiting", List.of()), sendAll(List.of()));
    assertEquals(List.of("POST /api/orders", "DELETE /api/orders/D-1"), lines());
  }

  @Test
  void whatSomebodyElseChangedMeanwhileIsNotWrittenOverAndWaitsForADecision() {
    sendAll(
        List.of(
            change("1", "", null, order("C-1", "one")),
            change("2", "C-1", order("C-1", "one"), order("C-1", "theirs"))));
    Map<?, ?> told =
        sendAll(List.of(change("3", "C-1", order("C-1", "one"), order("C-1", "mine"))));
    assertEquals(Map.of("refused", List.of("3 Conflict"), "waiting", List.of("3")), told);
    assertTrue(Functions.house().get("/api/orders/C-1").contains("theirs"));
  }

  @Test
  void theSameChangeSentByAnotherWindowAMomentBeforeIsNoConflict() {
    sendAll(List.of(change("1", "", null, order("S-1", "one"))));
    Functions.page()
        .route(
            ORDERS,
            route -> {
              if (route.request().method().equals("PUT")) {
                assertTrue(route.fetch().ok());
              }
              route.resume(); // what was fetched before has moved the tag on
            });
    Map<?, ?> told = sendAll(List.of(change("2", "S-1", order("S-1", "one"), order("S-1", "two"))));
    assertEquals(Map.of("refused", List.of(), "waiting", List.of()), told);
    assertTrue(Functions.house().get("/api/orders/S-1").contains("two"));
  }

  @Test
  void whatIsRefusedWaitsAndDoesNotHoldBackWhatCameAfter() {
    Map<String, Object> wrong = new HashMap<>(order("R-1", "one"));
    wrong.put("lines", List.of(Map.of("piece", "nothing-of-ours", "quantity", 1)));
    Map<?, ?> told =
        sendAll(List.of(change("1", "", null, wrong), change("2", "", null, order("R-2", "one"))));
    assertEquals(Map.of("refused", List.of("1 Problem"), "waiting", List.of("1")), told);
    assertTrue(Functions.house().get("/api/orders").contains("R-2"));
  }

  @Test
  void onceTheServiceIsAwayNothingMoreIsTriedAndAllWaitsInItsOrder() {
    Functions.page().route(ORDERS, route -> route.abort("connectionrefused"));
    Map<?, ?> told =
        sendAll(
            List.of(
                change("1", "", null, order("A-1", "one")),
                change("2", "", null, order("A-2", "two"))));
    assertEquals(Map.of("refused", List.of(), "waiting", List.of("1", "2")), told);
    assertEquals(List.of("POST /api/orders"), lines());
    Functions.page().unroute(ORDERS);
    Functions.call(SEND_AGAIN, null);
    sendAll(List.of());
    assertEquals(3, sent.size());
  }

  @Test
  void twoWindowsThatSendAtOnceMakeNothingTwice() {
    Page other = Functions.another();
    other.onRequest(noting);
    try {
      Functions.page().route(ORDERS, Route::resume); // slower, so that the two meet
      Functions.call(KEEP, List.of(change("1", "", null, order("T-1", "one"))));
      Functions.call(START, null);
      Functions.call(other, START, null);
      Functions.page().evaluate("() => window.sending");
      other.evaluate("() => window.sending");
    } finally {
      other.close();
    }
    // A window may hear of what another has sent a moment late, and then asks under the same key.
    assertEquals(
        1,
        sent.stream().map(request -> request.headers().get("idempotency-key")).distinct().count());
    assertEquals(1, Functions.house().get("/api/orders").split("\"T-1\"", -1).length - 1);
    assertEquals(Map.of("refused", List.of(), "waiting", List.of()), sendAll(List.of()));
  }

  private static final String KEEP =
      """
      async ({load}, changes) => {
        const {outbox} = await load('app/outbox.js');
        const studio = (await (await fetch('/api/studios')).json()).items[0].id;
        for (const {base = null, mine = null, ...change} of changes) outbox.keep({...change, base, mine, studio});
      }
      """;

  /** Begins to send and does not wait for it. */
  private static final String START =
      """
      async ({load}) => {
        const {sendAll} = await load('app/sending.js');
        const studio = (await (await fetch('/api/studios')).json()).items[0].id;
        window.sending = sendAll(studio).then(() => true);
      }
      """;
}
