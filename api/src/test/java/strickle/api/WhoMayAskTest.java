package strickle.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.store.Database;
import strickle.store.StoreHash;

/** The table who-may-ask.txt, over real HTTP. */
class WhoMayAskTest {

  private record Row(
      String host,
      String origin,
      String site,
      String mode,
      String method,
      String path,
      boolean may) {

    private String request(int port, int number) {
      StringBuilder text = new StringBuilder(method + " " + path + " HTTP/1.1\r\n");
      header(text, "Host", host, port);
      header(text, "Origin", origin, port);
      header(text, "Sec-Fetch-Site", site, port);
      header(text, "Sec-Fetch-Mode", mode, port);
      String rack = "{\"id\": \"r" + number + "\", \"name\": \"rack\", \"places\": 4}";
      String body = method.equals("POST") || method.equals("PUT") ? rack : "";
      return text.append("Connection: close\r\nContent-Length: ")
          .append(body.length())
          .append("\r\n\r\n")
          .append(body)
          .toString();
    }

    private static void header(StringBuilder text, String name, String value, int port) {
      if (!value.equals("-")) {
        String real = value.replace("PORT", Integer.toString(port));
        text.append(name).append(": ").append(real).append("\r\n");
      }
    }
  }

  @Test
  void whoeverIsHostileIsRefusedWithoutEffectAndNobodyElse(@TempDir Path folder) throws Exception {
    Database database = Database.inFolder(folder);
    StoreHash hash = new StoreHash(database);
    try (Web web = Web.on(database)) {
      web.send("POST", "/api/studios", "{\"name\": \"Ash Lane\", \"begin\": \"demo\"}");
      List<Row> rows = rows();
      assertTrue(rows.size() >= 200, rows.size() + " rows");
      List<String> wrong = new ArrayList<>();
      int number = 0;
      for (Row row : rows) {
        String before = hash.now();
        String answer = RawHttp.ask(web.port(), row.request(web.port(), number++));
        String after = hash.now();
        int status = RawHttp.status(answer);
        // What is no HTTP at all is refused before the names are read.
        boolean refused = (status == 403 || status == 400) && before.equals(after);
        boolean served = status > 0 && status != 403 && status != 400 && status < 500;
        if (row.may() ? !served : !refused) {
          wrong.add(row + " was answered " + status);
        }
        boolean told = row.method().equals("HEAD") || RawHttp.body(answer).startsWith("{");
        if (!row.may() && !(told && answer.contains("application/problem+json"))) {
          wrong.add(row + " was refused with " + answer);
        }
      }
      System.out.println(
          rows.size() + " requests by their names, refused or let in as the table says");
      assertEquals(List.of(), wrong);
    }
  }

  @Test
  void everyAnswerTellsTheBrowserWhatItMayNotDo(@TempDir Path folder) {
    try (Web web = Web.demo(folder)) {
      String host = "Host: localhost:" + web.port() + "\r\n";
      for (String line :
          List.of(
              "GET /api/book HTTP/1.1\r\n" + host,
              "GET /nowhere HTTP/1.1\r\n" + host,
              "GET /%2e%2e/secret HTTP/1.1\r\n" + host,
              "GET /api/book HTTP/1.1\r\nHost: evil.example\r\n",
              "TRACE / HTTP/1.1\r\n" + host,
              "GET / HTTP/1.1\r\nUpgrade: websocket\r\nConnection: Upgrade\r\n"
                  + "Sec-WebSocket-Version: 13\r\nSec-WebSocket-Key: dGhlIHNhbXBsZSBub25jZQ==\r\n"
                  + host)) {
        String answer = RawHttp.ask(web.port(), line + "Connection: close\r\n\r\n");
        assertTrue(answer.contains("Content-Security-Policy: default-src 'self';"), line + answer);
        assertTrue(!answer.contains("unsafe-"), answer);
        assertTrue(!answer.contains("Server:") && !answer.contains("Access-Control"), answer);
        assertTrue(RawHttp.status(answer) == 200 || answer.contains("problem+json"), answer);
      }
    }
  }

  private static List<Row> rows() throws IOException {
    try (InputStream in = WhoMayAskTest.class.getResourceAsStream("who-may-ask.txt")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> !line.startsWith("#"))
          .map(line -> line.split("\\|", -1))
          .map(c -> new Row(c[0], c[1], c[2], c[3], c[4], c[5], c[6].equals("yes")))
          .toList();
    }
  }
}
