package strickle.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Random;
import org.junit.jupiter.api.Test;
import strickle.book.Basis;
import strickle.book.Faulty;

class MessageTest {

  private record Asked(
      String name,
      boolean now,
      long schedules,
      OptionalInt step,
      OptionalLong grams,
      Optional<Basis> of,
      List<Integer> units) {}

  private record Numbers(double measure, BigDecimal amount, long whole) {}

  @Test
  void aMessageWrittenIsReadBackEqual() {
    Asked full =
        new Asked(
            "\u2028 \"quoted\" \\ \t",
            true,
            Long.MIN_VALUE,
            OptionalInt.of(3),
            OptionalLong.of(Long.MAX_VALUE),
            Optional.of(Basis.CEMENT),
            List.of(1, 2));
    assertEquals(full, Message.parse(Message.write(full), Asked.class));
    Asked bare =
        new Asked(
            "", false, 0, OptionalInt.empty(), OptionalLong.empty(), Optional.empty(), List.of());
    assertEquals(
        "{\"name\": \"\", \"now\": false, \"schedules\": 0, \"units\": []}\n", Message.write(bare));
    assertEquals(bare, Message.parse(Message.write(bare), Asked.class));
  }

  @Test
  void everyNumberComesBackAsItWas() {
    Random random = new Random(20270405);
    for (int i = 0; i < 3000; i++) {
      double measure = Double.longBitsToDouble(random.nextLong());
      if (Double.isFinite(measure)) {
        BigDecimal amount = BigDecimal.valueOf(random.nextLong(), random.nextInt(12));
        Numbers numbers = new Numbers(measure, amount, random.nextLong());
        assertEquals(numbers, Message.parse(Message.write(numbers), Numbers.class));
      }
    }
    for (double extreme : new double[] {Double.MIN_VALUE, Double.MAX_VALUE, 0.1 + 0.2, 1e23}) {
      Numbers numbers = new Numbers(-extreme, BigDecimal.ZERO, 0);
      assertEquals(numbers, Message.parse(Message.write(numbers), Numbers.class));
    }
  }

  @Test
  void negativeZeroIsZero() {
    assertEquals(
        new Numbers(0, BigDecimal.ZERO, 0),
        Message.parse("{\"measure\": -0.0, \"amount\": -0, \"whole\": -0e999999}", Numbers.class));
    assertEquals(
        0.0,
        Message.parse("{\"measure\": -1e-999, \"amount\": 1, \"whole\": 1}", Numbers.class)
            .measure());
  }

  @Test
  void faultsOfAMessageAreAllTold() {
    Faulty faulty =
        assertThrows(
            Faulty.class,
            () ->
                Message.parse(
                    "{\"name\": 1, \"now\": 0, \"schedules\": 9223372036854775808, \"unit\": 1}",
                    Asked.class));
    assertEquals(
        """
        $.name: found 1; right would be a text in double quotes
        $.now: found 0; right would be true or false
        $.schedules: found 9223372036854775808; right would be a whole number from \
        -9223372036854775808 to 9223372036854775807
        $.unit: found the unknown field "unit"; right would be "units\"\
        """,
        faulty.getMessage());
  }

  @Test
  void anEmptyMessageIsAFault() {
    Faulty faulty = assertThrows(Faulty.class, () -> Message.parse("", Asked.class));
    assertEquals(
        "$: found an empty text; right would be a value: a text in double quotes, a number, true,"
            + " false, null, { or [",
        faulty.getMessage());
  }
}
