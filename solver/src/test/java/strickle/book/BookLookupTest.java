package strickle.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class BookLookupTest {

  private static final Book EXAMPLE = SampleBook.example();

  private static Draft draft() {
    return Draft.of(EXAMPLE);
  }

  @Test
  void everythingIsFoundById() {
    assertSame(EXAMPLE.people().get(0), EXAMPLE.person("ana"));
    assertSame(EXAMPLE.stations().get(0), EXAMPLE.station("rack"));
    assertSame(EXAMPLE.forms().get(1), EXAMPLE.form("tub-b"));
    assertSame(EXAMPLE.moulds().get(0), EXAMPLE.mould("planter-deep"));
    assertSame(EXAMPLE.materials().get(3), EXAMPLE.material("sealer"));
    assertSame(EXAMPLE.mixes().get(0), EXAMPLE.mix("slate"));
    assertSame(EXAMPLE.pieces().get(0), EXAMPLE.piece("planter-slate"));
    assertSame(EXAMPLE.orders().get(0), EXAMPLE.order("O-104"));
    assertSame(EXAMPLE.channels().get(1), EXAMPLE.channel("shop-shelf"));
    assertSame(EXAMPLE.fairs().get(0), EXAMPLE.fair("spring-fair"));
  }

  static Stream<Arguments> lookups() {
    return Stream.of(
        lookup("person", EXAMPLE::person),
        lookup("station", EXAMPLE::station),
        lookup("form", EXAMPLE::form),
        lookup("mould", EXAMPLE::mould),
        lookup("material", EXAMPLE::material),
        lookup("mix", EXAMPLE::mix),
        lookup("piece", EXAMPLE::piece),
        lookup("order", EXAMPLE::order),
        lookup("channel", EXAMPLE::channel),
        lookup("fair", EXAMPLE::fair));
  }

  private static Arguments lookup(String what, Function<String, Record> lookup) {
    return Arguments.of(what, lookup);
  }

  @ParameterizedTest
  @MethodSource("lookups")
  void anUnknownIdIsToldByName(String what, Function<String, Record> lookup) {
    assertEquals(
        "no " + what + " \"nowhere to be found\" in the book",
        assertThrows(IllegalArgumentException.class, () -> lookup.apply("nowhere to be found"))
            .getMessage());
    assertEquals(
        "no " + what + " nothing in the book",
        assertThrows(IllegalArgumentException.class, () -> lookup.apply(null)).getMessage());
  }

  @Test
  void anUnknownIdIsToldWithTheNearest() {
    assertEquals(
        "no person \"Ana \" in the book; did you mean \"ana\"?",
        assertThrows(IllegalArgumentException.class, () -> EXAMPLE.person("Ana ")).getMessage());
  }

  @Test
  void thousandsOfItemsAreFoundWithoutSearching() {
    Form[] forms =
        IntStream.range(0, 5000)
            .mapToObj(i -> Altered.of(SampleBook.tubA(), "id", i == 0 ? "tub-a" : "tub-b" + i))
            .toArray(Form[]::new);
    forms[4999] = SampleBook.tubB();
    Book book = draft().forms(forms).book();

    assertTimeoutPreemptively(
        Duration.ofSeconds(20),
        () -> {
          for (int i = 0; i < 5_000_000; i++) {
            assertSame(forms[4999], book.form("tub-b"));
          }
        });
  }
}
