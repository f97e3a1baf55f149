package strickle.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.book.After;
import strickle.book.Basis;
import strickle.book.Book;
import strickle.book.Climate;
import strickle.book.Core;
import strickle.book.Line;
import strickle.book.Mix;
import strickle.book.Order;
import strickle.book.Piece;
import strickle.book.RestsOn;
import strickle.book.ShapePart;
import strickle.book.Solid;
import strickle.book.Step;
import strickle.book.Studio;
import strickle.book.Use;
import strickle.book.WaitKind;
import strickle.book.Water;
import strickle.book.Window;
import strickle.demo.Demo;
import strickle.demo.Generator;
import strickle.demo.Size;

class BookFileTest {

  private static final Book EXAMPLE = ExampleBook.parse(ExampleBook.json());

  @Test
  void studioIsReadWithItsCurrencyZoneAndClimate() {
    assertEquals(
        new Studio(
            "Kiln Lane Castings",
            CurrencyUnit.USD,
            ZoneId.of("America/Chicago"),
            new BigDecimal("22.0"),
            new BigDecimal("310.0"),
            new BigDecimal("70"),
            9000,
            List.of(
                new Climate(LocalDateTime.parse("2027-04-05T00:00"), 18.0, OptionalDouble.of(55)))),
        EXAMPLE.studio());
  }

  @Test
  void hoursAreReadByWeekdayAndDatesWithoutHoursAreClosed() {
    assertEquals(
        List.of(new Window(540, 720), new Window(780, 1020)),
        EXAMPLE.people().get(0).hours().get(DayOfWeek.MONDAY));
    assertFalse(EXAMPLE.people().get(0).hours().containsKey(DayOfWeek.WEDNESDAY));
    assertEquals(LocalDate.parse("2027-04-08"), EXAMPLE.people().get(0).exceptions().get(0).date());
    assertEquals(List.of(), EXAMPLE.people().get(0).exceptions().get(0).hours());
  }

  @Test
  void stepsAreReadWithTheirWaitsLimitsAndPlaces() {
    assertEquals(
        new Step(
            "first seal coat",
            5,
            4,
            new After(WaitKind.CURE, 120, OptionalDouble.empty()),
            List.of("ana"),
            List.of(new Use("sealer", BigDecimal.valueOf(18))),
            Optional.of(new RestsOn("rack", 1))),
        EXAMPLE.pieces().get(0).route().get(1));
  }

  @Test
  void mixesAreReadWithWhatEachPercentageIsOf() {
    Mix slate = EXAMPLE.mixes().get(0);
    assertEquals(new Water(25, Basis.DRY_AND_PIGMENT), slate.water());
    assertEquals(Basis.DRY, slate.pigment().get(0).of());
    assertEquals(OptionalDouble.empty(), slate.wetDensityKgPerM3());
  }

  @Test
  void ordersAreReadWithTheBuyerInTheFieldFor() {
    assertEquals(
        new Order(
            "O-104",
            "a garden shop",
            "custom",
            LocalDateTime.parse("2027-04-24T17:00"),
            BigDecimal.valueOf(3),
            List.of(new Line("planter-slate", 4, Optional.of(new BigDecimal("68.0"))))),
        EXAMPLE.orders().get(0));
  }

  @Test
  void coresAreReadWithTheirSafety() {
    assertEquals(Optional.of(new Core(2600, 140, 1.5)), EXAMPLE.moulds().get(0).core());
  }

  @Test
  void aBookWrittenAndReadAgainIsEqual() {
    assertEquals(EXAMPLE, ExampleBook.parse(BookFile.write(EXAMPLE)));
  }

  @Test
  void aBookWrittenTwiceIsTheSameText() {
    String written = BookFile.write(EXAMPLE);
    assertEquals(written, BookFile.write(ExampleBook.parse(written)));
  }

  @Test
  void demoAndGeneratedBooksWrittenAndReadAgainAreEqual() {
    for (Size size : Size.values()) {
      Book book = Demo.book(size);
      assertEquals(book, ExampleBook.parse(BookFile.write(book)), size.name());
    }
    for (int i = 1; i <= 5; i++) {
      Book book = Generator.book(40 * i, i);
      assertEquals(book, ExampleBook.parse(BookFile.write(book)), "seed " + i);
    }
  }

  @Test
  void writtenBooksBeginWithTheirFormatAndKeepTheOrderOfFields() {
    String written = BookFile.write(EXAMPLE);
    assertTrue(
        written.startsWith(
            """
            {
              "format": "strickle-book/1",
              "studio": {
                "name": "Kiln Lane Castings",
                "currency": "USD",
                "timeZone": "America/Chicago",
                "wagePerHour": 22.0,
            """),
        written);
    assertTrue(written.endsWith("}\n"), written);
  }

  @Test
  void writtenBooksLeaveOutWhatIsNotThere() {
    String written = BookFile.write(EXAMPLE);
    assertFalse(written.contains("null"), written);
    assertFalse(written.contains("wetDensityKgPerM3"), written);
    assertFalse(written.contains("\"shape\""), written);
    assertFalse(written.contains("\"mesh\""), written);
    assertFalse(written.contains("\"by\": []"), written);
    assertTrue(written.contains("{\"date\": \"2027-04-08\", \"hours\": []}"), written);
  }

  @Test
  void onlyTheStudioIsNeededAndEverythingElseIsAnEmptyList() {
    Book book =
        ExampleBook.parse(
            """
            {"format": "strickle-book/1", "studio": {"name": "Small", "currency": "EUR",
             "timeZone": "Europe/Vienna", "wagePerHour": 20, "overheadPerMonth": 0,
             "productiveHoursPerMonth": 60, "batchLimitGrams": 5000}}
            """);
    assertEquals(List.of(), book.people());
    assertEquals(List.of(), book.pins());
    assertEquals(List.of(), book.studio().climate());
    assertEquals(book, ExampleBook.parse(BookFile.write(book)));
  }

  @Test
  void fieldsThatAreMissingOrNullTakeTheirDefaults() {
    String plain =
        "\"pieces\": [{\"id\": \"bare\", \"name\": \"bare\", \"mould\": \"planter-deep\","
            + " \"mix\": \"slate\", \"leftoverValue\": null, \"packing\": null,"
            + " \"route\": [{\"step\": \"wipe\", \"minutesEach\": 1, \"setupMinutes\": null}]}, ";
    Piece bare = ExampleBook.parse(ExampleBook.with("\"pieces\": [", plain)).pieces().get(0);
    assertEquals(
        new Piece(
            "bare",
            "bare",
            "planter-deep",
            "slate",
            100,
            0,
            1,
            List.of(
                new Step(
                    "wipe",
                    0,
                    1,
                    new After(WaitKind.REST, 0, OptionalDouble.empty()),
                    List.of(),
                    List.of(),
                    Optional.empty())),
            0,
            List.of(),
            Optional.empty(),
            Optional.empty()),
        bare);
  }

  @Test
  void ordersWithoutBuyerKindOrWeightAreCustomAndOfWeightOne() {
    String json =
        ExampleBook.with("\"for\": \"a garden shop\", \"kind\": \"custom\", ", "")
            .replace("\"weight\": 3, ", "");
    Order order = ExampleBook.parse(json).orders().get(0);
    assertEquals("", order.buyer());
    assertEquals("custom", order.kind());
    assertEquals(BigDecimal.ONE, order.weight());
  }

  @Test
  void aShapeIsOneSolidOrAList() {
    assertEquals(
        List.of(new ShapePart(new Solid.Cylinder(50, 100), false)),
        shape("{\"solid\": \"cylinder\", \"radiusMm\": 50, \"heightMm\": 100}"));
    assertEquals(
        List.of(
            new ShapePart(new Solid.Box(100, 80, 60), false),
            new ShapePart(new Solid.ConeFrustum(20, 25, 50), true)),
        shape(
            "[{\"solid\": \"box\", \"lengthMm\": 100, \"widthMm\": 80, \"heightMm\": 60},"
                + "{\"subtract\": true, \"solid\": \"cone-frustum\", \"bottomRadiusMm\": 20,"
                + " \"topRadiusMm\": 25, \"heightMm\": 50}]"));
  }

  @Test
  void everyKindOfSolidIsReadAndWrittenBack() {
    shape("{\"solid\": \"box\", \"lengthMm\": 1, \"widthMm\": 2, \"heightMm\": 3}");
    shape("{\"solid\": \"cylinder\", \"radiusMm\": 1, \"heightMm\": 2.5}");
    shape(
        "{\"solid\": \"cone-frustum\", \"bottomRadiusMm\": 1, \"topRadiusMm\": 2,"
            + " \"heightMm\": 3}");
    shape(
        "{\"solid\": \"pyramid-frustum\", \"bottomLengthMm\": 10, \"bottomWidthMm\": 20,"
            + " \"topLengthMm\": 5, \"topWidthMm\": 10, \"heightMm\": 3}");
    shape("{\"solid\": \"spherical-cap\", \"sphereRadiusMm\": 10, \"heightMm\": 3}");
    shape("{\"solid\": \"hemisphere\", \"radiusMm\": 10}");
    shape("{\"solid\": \"torus\", \"ringRadiusMm\": 10, \"tubeRadiusMm\": 3}");
    shape("{\"solid\": \"ellipsoid\", \"semiAMm\": 1, \"semiBMm\": 2, \"semiCMm\": 3}");
    assertEquals(8, Names.solids().size());
  }

  @Test
  void numbersMayBeWrittenInAnyWayThatMeansTheSame() {
    Book book = ExampleBook.parse(ExampleBook.with("\"places\": 24", "\"places\": 2.40e1"));
    assertEquals(EXAMPLE, book);
  }

  @Test
  void amountsAreWrittenWithoutExponents() {
    String json = ExampleBook.with("\"onHand\": 14000", "\"onHand\": 1.4e4");
    String written = BookFile.write(ExampleBook.parse(json));
    assertTrue(written.contains("\"onHand\": 14000,"), written);
  }

  @Test
  void aByteOrderMarkIsAccepted() {
    String marked = "\uFEFF" + ExampleBook.json();
    assertEquals(EXAMPLE, ExampleBook.parse(marked));
    assertEquals(
        EXAMPLE,
        BookFile.parse(marked.getBytes(StandardCharsets.UTF_8), Meshes.in(ExampleBook.NOWHERE)));
  }

  @Test
  void namesMayHoldAnyLetters() {
    String json = ExampleBook.with("Kiln Lane Castings", "Gießerei „Łódź“ 陶 🏺 \\\"x\\\" \\/");
    Book book = ExampleBook.parse(json);
    assertEquals("Gießerei „Łódź“ 陶 🏺 \"x\" /", book.studio().name());
    assertEquals(book, ExampleBook.parse(BookFile.write(book)));
  }

  @Test
  void aBookIsReadFromItsFile(@TempDir Path folder) throws Exception {
    Path file = Files.writeString(folder.resolve("book.json"), ExampleBook.json());
    assertEquals(EXAMPLE, BookFile.read(file));
  }

  private static List<ShapePart> shape(String shape) {
    Book book = ExampleBook.parse(ExampleBook.with("\"volumeMl\": 1180", "\"shape\": " + shape));
    assertEquals(book, ExampleBook.parse(BookFile.write(book)), shape);
    return book.moulds().get(0).shape();
  }
}
