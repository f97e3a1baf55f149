package strickle.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.demo.Demo;
import strickle.demo.Size;
import strickle.json.BookParts;

class DailyCopiesTest {

  private static final String RACK = "{\"id\":\"rack-9\",\"name\":\"rack\",\"places\":4}";

  @TempDir Path folder;

  private final SettableClock clock = new SettableClock(Instant.parse("2027-04-05T23:30:00Z"));

  @Test
  void eachDayHasOneCopyAndFourteenStay() throws IOException {
    try (Database database = Database.inFolder(folder)) {
      made(database);
      DailyCopies copies = new DailyCopies(database, clock);
      for (int day = 0; day < 20; day++) {
        copies.keep();
        copies.keep();
        clock.set(clock.instant().plus(Duration.ofDays(1)));
      }
    }
    List<String> names = copies();
    assertEquals(14, names.size());
    assertEquals("strickle-2027-04-11.db", names.get(0));
    assertEquals("strickle-2027-04-24.db", names.get(13));
  }

  @Test
  void aClockThatJumpsBackLosesNoCopy() throws IOException {
    try (Database database = Database.inFolder(folder)) {
      made(database);
      new DailyCopies(database, clock).keep();
      clock.set(Instant.parse("1999-12-31T00:00:00Z"));
      new DailyCopies(database, clock).keep();
      clock.set(Instant.parse("2027-04-05T23:59:00Z"));
      new DailyCopies(database, clock).keep();
    }
    assertEquals(List.of("strickle-1999-12-31.db", "strickle-2027-04-05.db"), copies());
  }

  @Test
  void copiesDatedInTheFuturePushOutNoneOfToday() throws IOException {
    try (Database database = Database.inFolder(folder)) {
      made(database);
      DailyCopies copies = new DailyCopies(database, clock);
      for (int day = 0; day < 14; day++) {
        clock.set(Instant.parse("2099-01-01T00:00:00Z").plus(Duration.ofDays(day)));
        copies.keep();
      }
      for (int day = 0; day < 15; day++) {
        clock.set(Instant.parse("2027-04-05T09:00:00Z").plus(Duration.ofDays(day)));
        copies.keep();
      }
    }
    List<String> names = copies();
    assertEquals(28, names.size());
    assertEquals("strickle-2027-04-06.db", names.get(0));
    assertEquals("strickle-2027-04-19.db", names.get(13));
  }

  @Test
  void ofADamagedFileTheNewestCopyUpToTodayIsNamedAndOneOfTheFutureOnlyWhereThereIsNoOther()
      throws IOException {
    try (Database database = Database.inFolder(folder)) {
      made(database);
      DailyCopies copies = new DailyCopies(database, clock);
      for (String day : List.of("2099-01-01", "2027-04-05", "2027-04-06")) {
        clock.set(Instant.parse(day + "T09:00:00Z"));
        copies.keep();
      }
    }
    Files.writeString(folder.resolve("strickle.db"), "a letter to the bank ".repeat(99));
    assertEquals("strickle-2027-04-06.db", named());
    clock.set(Instant.parse("2027-04-05T00:00:00Z"));
    assertEquals("strickle-2027-04-05.db", named());
    clock.set(Instant.parse("2027-04-04T23:59:59Z"));
    assertEquals("strickle-2099-01-01.db", named());
    assertEquals(3, copies().size());
  }

  private String named() {
    StoreTrouble trouble = assertThrows(StoreTrouble.class, () -> Database.inFolder(folder, clock));
    Matcher copy =
        Pattern.compile("the newest copy \\S*(strickle-[0-9-]+\\.db)")
            .matcher(trouble.getMessage());
    assertTrue(copy.find(), trouble.getMessage());
    return copy.group(1);
  }

  @Test
  void aDamagedFileIsToldAndLeftAsItIsAndTheCopyTakesItsPlace() throws IOException {
    try (Database database = Database.inFolder(folder)) {
      made(database);
      new DailyCopies(database, clock).keep();
      Studios studios = new Studios(database, clock);
      StudioStore studio = studios.named("Ash Lane").orElseThrow();
      studio.change(
          new By("maren", "a rack"), now -> now.entries().with("stations", "rack-9", RACK));
    }
    Path file = folder.resolve("strickle.db");
    byte[] whole = Files.readAllBytes(file);
    for (byte[] damaged : damages(whole)) {
      Files.write(file, damaged);
      StoreTrouble trouble = assertThrows(StoreTrouble.class, () -> Database.inFolder(folder));
      assertEquals(StoreTrouble.Kind.CORRUPT, trouble.kind(), trouble.getMessage());
      assertTrue(trouble.getMessage().contains("strickle-2027-04-05.db"), trouble.getMessage());
      assertArrayEquals(damaged, Files.readAllBytes(file));
    }
    Files.copy(
        folder.resolve("snapshots/strickle-2027-04-05.db"),
        file,
        StandardCopyOption.REPLACE_EXISTING);
    try (Database database = Database.inFolder(folder)) {
      StudioStore studio = new Studios(database, clock).named("Ash Lane").orElseThrow();
      assertEquals(Demo.book(Size.SMALL), studio.now().book());
    }
  }

  // No SQLite file at all; the header of one and then nothing but noise; cut off; pages of zeros.
  private static List<byte[]> damages(byte[] whole) {
    byte[] noise = whole.clone();
    Arrays.fill(noise, 100, 3000, (byte) 0x5a);
    byte[] text =
        "this is not a studio's file, it is a letter to the bank"
            .repeat(40)
            .getBytes(StandardCharsets.UTF_8);
    byte[] zeros = whole.clone();
    Arrays.fill(zeros, whole.length / 3, whole.length, (byte) 0);
    return List.of(text, noise, Arrays.copyOf(whole, whole.length / 2), zeros);
  }

  private void made(Database database) {
    new Studios(database, clock)
        .create("Ash Lane", Optional.empty(), BookParts.of(Demo.book(Size.SMALL)));
  }

  private List<String> copies() throws IOException {
    try (Stream<Path> files = Files.list(folder.resolve("snapshots"))) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}
