package strickle.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import strickle.book.Faulty;

class PasswordTest {

  private static final String RIGHT = "grey dust on the sill";

  // The reference implementation's own test, test.c: value from memory.
  @Test
  void theHashIsArgon2idsOfTheReferenceImplementation() {
    byte[] salt = "somesalt".getBytes(StandardCharsets.UTF_8);
    assertEquals(
        "09316115d5cf24ed5a15a31a3ba326e5cf32edc24702987c02b6566f61913cf7",
        HexFormat.of().formatHex(Password.hash("password", salt, 65_536, 2, 1, 32)));
  }

  @Test
  void onlyTheSamePasswordIsRight() {
    String hash = Password.hash(RIGHT);
    assertTrue(hash.startsWith("$argon2id$v=19$m=47104,t=2,p=1$"), hash);
    assertTrue(Password.isRight(RIGHT, Optional.of(hash)));
    assertFalse(Password.isRight(RIGHT + " ", Optional.of(hash)));
    assertFalse(Password.isRight("", Optional.of(hash)));
    assertFalse(Password.isRight(RIGHT, Optional.empty()));
    assertFalse(Password.isRight(RIGHT, Optional.of("nonsense")));
    assertNotEquals(hash, Password.hash(RIGHT));
  }

  @Test
  void aShortPasswordIsRefused() {
    assertThrows(Faulty.class, () -> Password.hash("ninechars"));
    assertThrows(Faulty.class, () -> Password.hash("x".repeat(201)));
  }
}
