package strickle.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.store.Database;

/** An older copy of the studio's file in its place is another studio to whoever knew the newer. */
class OlderFileTest {

  @TempDir Path folder;
  @TempDir Path apart;

  @Test
  void noTagStandsForOtherContentsAfterAnOlderFileWasPutBack() throws IOException {
    Web.demo(folder).close();
    Path older = Files.copy(file(), apart.resolve("older.db"));
    String book;
    String list;
    try (Web web = Web.on(Database.inFolder(folder))) {
      made(web, "a");
      book = tag(web, "/api/book");
      list = tag(web, "/api/price-list.pdf");
      assertEquals(304, web.get("/api/book", "If-None-Match", book).statusCode());
    }
    for (String beside : List.of("-wal", "-shm")) {
      Files.deleteIfExists(folder.resolve(file().getFileName() + beside));
    }
    Files.copy(older, file(), StandardCopyOption.REPLACE_EXISTING);
    try (Web web = Web.on(Database.inFolder(folder))) {
      made(web, "b");
      assertNotEquals(book, tag(web, "/api/book"));
      assertEquals(200, web.get("/api/book", "If-None-Match", book).statusCode());
      assertEquals(200, web.get("/api/price-list.pdf", "If-None-Match", list).statusCode());
      String now = web.get("/api/book").body();
      assertEquals(412, web.send("PUT", "/api/book", now, "If-Match", book).statusCode());
      assertEquals(412, web.send("POST", "/api/undo", "", "If-Match", book).statusCode());
    }
  }

  private Path file() {
    return folder.resolve("strickle.db");
  }

  private static void made(Web web, String id) {
    String body = "{\"id\": \"" + id + "\", \"name\": \"rack\", \"places\": 4}";
    assertEquals(201, web.send("POST", "/api/stations", body).statusCode());
  }

  private static String tag(Web web, String path) {
    return web.get(path).headers().firstValue("ETag").orElseThrow();
  }
}
