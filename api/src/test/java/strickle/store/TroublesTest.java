package strickle.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.sql.SQLException;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strickle.demo.Demo;
import strickle.demo.Size;
import strickle.json.BookParts;

class TroublesTest {

  @ParameterizedTest
  @CsvSource({
    "08006, UNREACHABLE",
    "57P01, UNREACHABLE",
    "22001, VALUE",
    "22021, VALUE",
    "25006, SERVER_READ_ONLY",
    "42501, SERVER_READ_ONLY",
    "53100, SERVER_FULL",
    "53200, SERVER",
    "40001, SERVER",
    "XX000, SERVER",
  })
  void whatAServerSaysIsToldOfTheServerAndNotOfAFileOrADisk(String state, StoreTrouble.Kind kind) {
    StoreTrouble trouble = (StoreTrouble) Troubles.of(new SQLException("said", state));
    assertEquals(kind, trouble.kind());
    assertFalse(kind.sentence().contains("disk"), kind.sentence());
    assertFalse(kind.sentence().contains("file"), kind.sentence());
  }

  @Test
  void aTextThatAServerCannotKeepIsNoTroubleWithADisk() {
    try (Database database = Database.postgresql(Postgres.freshDatabase())) {
      Studios studios = new Studios(database, new SettableClock(Instant.EPOCH));
      StoreTrouble trouble =
          assertThrows(
              StoreTrouble.class,
              () ->
                  studios.create(
                      "Ash\0Lane", Optional.empty(), BookParts.of(Demo.book(Size.SMALL))));
      assertEquals(StoreTrouble.Kind.VALUE, trouble.kind());
    }
  }
}
