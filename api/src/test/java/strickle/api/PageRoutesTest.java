package strickle.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.web.Page;

/** The page over real HTTP. */
class PageRoutesTest {

  private static final Pattern ADDRESS = Pattern.compile("\"(/page/[^\"]+)\"");

  @TempDir Path folder;
  private Web web;

  @BeforeEach
  void serve() {
    web = Web.empty(folder);
  }

  @AfterEach
  void end() {
    web.close();
  }

  @Test
  void everyAddressInTheDocumentAnswersAndTheImportMapsToo() {
    String document = web.get("/").body();
    Matcher address = ADDRESS.matcher(document);
    List<String> wrong = new ArrayList<>();
    int asked = 0;
    while (address.find()) {
      if (!address.group(1).endsWith("/")) {
        asked++;
        int status = web.get(address.group(1)).statusCode();
        if (status != 200) {
          wrong.add(address.group(1) + " " + status);
        }
      }
    }
    assertTrue(asked > 20, asked + " addresses");
    assertEquals(List.of(), wrong);
  }

  @Test
  void everyRoomAndWhateverStandsBelowItGivesThePage() {
    assertFalse(Page.now().rooms().isEmpty());
    for (String room : Page.now().rooms()) {
      for (String path : List.of("/" + room, "/" + room + "/some%20thing/below?by=person")) {
        HttpResponse<String> answer = web.get(path);
        assertEquals(200, answer.statusCode(), path);
        assertTrue(answer.body().startsWith("<!doctype html>"), path);
      }
    }
  }

  @Test
  void thePageIsUnderAStrictPolicyAndWhatMayBeKeptIsKept() {
    HttpResponse<String> document = web.get("/");
    String policy = header(document, "Content-Security-Policy");
    assertTrue(policy.startsWith("default-src 'none'; script-src 'self' 'sha256-"), policy);
    assertFalse(policy.contains("unsafe"), policy);
    assertTrue(policy.contains("frame-ancestors 'none'"), policy);
    assertEquals("nosniff", header(document, "X-Content-Type-Options"));
    assertEquals("no-referrer", header(document, "Referrer-Policy"));
    assertEquals("private, no-cache", header(document, "Cache-Control"));
    assertEquals("Accept-Encoding, Cookie", header(document, "Vary"), "who is known sees another");
    HttpResponse<String> file = web.get(place("main.js"));
    assertEquals("public, max-age=31536000, immutable", header(file, "Cache-Control"));
    assertEquals("text/javascript;charset=utf-8", header(file, "Content-Type"));
  }

  @Test
  void whoeverHasTheDocumentIsToldSo() {
    String tag = header(web.get("/"), "ETag");
    HttpResponse<String> again = web.get("/", "If-None-Match", tag);
    assertEquals(304, again.statusCode());
    assertEquals("", again.body());
  }

  @Test
  void filesGoPackedToWhoeverTakesThemSo() {
    HttpResponse<String> packed = web.get(place("app/words.js"), "Accept-Encoding", "br, gzip");
    assertEquals("gzip", header(packed, "Content-Encoding"));
    HttpResponse<String> plain = web.get(place("app/words.js"), "Accept-Encoding", "identity");
    assertEquals(Map.of(), headers(plain, "Content-Encoding"));
    assertTrue(plain.body().contains("export function say"));
  }

  @Test
  void whatIsNoFileOfThePageIsNotGivenWhateverItsName() {
    String print = Page.now().print();
    for (String path :
        List.of(
            "/page/" + print + "/Page.class",
            "/page/" + print + "/..%2f..%2fpom.xml",
            "/page/" + print + "/app/..%2f..%2f..%2fetc%2fpasswd",
            "/page/" + print + "/%2e%2e/%2e%2e/pom.xml",
            "/page/0000000000000000/main.js",
            "/page/" + print + "/",
            "/nowhere")) {
      int status = web.get(path).statusCode();
      assertTrue(status == 404 || status == 400, path + " " + status);
    }
  }

  private static String place(String name) {
    return "/page/" + Page.now().print() + "/" + name;
  }

  private static String header(HttpResponse<String> answer, String name) {
    return answer.headers().firstValue(name).orElse("");
  }

  private static Map<String, List<String>> headers(HttpResponse<String> answer, String name) {
    return answer.headers().allValues(name).isEmpty()
        ? Map.of()
        : Map.of(name, answer.headers().allValues(name));
  }
}
