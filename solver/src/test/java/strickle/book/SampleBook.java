package strickle.book;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.joda.money.CurrencyUnit;

/**
 * The example studio book, built in Java, for the tests of every package. The studio is invented.
 * {@link #example()} is the whole book; every record in it has a method of its own; the {@code
 * with…} methods give the same book with one collection replaced. To replace several that refer to
 * each other, use a {@link Draft}.
 */
public final class SampleBook {

  private static final LocalDateTime MONDAY = LocalDateTime.parse("2027-04-05T00:00");

  private SampleBook() {}

  /** The whole example: one caster, one piece of two nested tubs, one order, one fair. */
  public static Book example() {
    return new Book(
        studio(),
        List.of(ana()),
        List.of(rack()),
        List.of(tubA(), tubB()),
        List.of(planterDeep()),
        List.of(whiteBlend(), ironBlack(), releaseOil(), sealer(), boxM()),
        List.of(slate()),
        List.of(planterSlate()),
        List.of(gardenShop()),
        List.of(ownTable(), shopShelf()),
        List.of(springFair()),
        List.of());
  }

  /** The studio: US dollars, Chicago, 9 kg to a lot, 18 °C from Monday 5 April 2027 on. */
  public static Studio studio() {
    return new Studio(
        "Kiln Lane Castings",
        CurrencyUnit.USD,
        ZoneId.of("America/Chicago"),
        decimal("22.0"),
        decimal("310.0"),
        decimal("70"),
        9000,
        List.of(new Climate(MONDAY, 18.0, OptionalDouble.of(55))));
  }

  /** Ana: three long days, two short ones, and Thursday 8 April off. */
  public static Person ana() {
    List<Window> wholeDay = List.of(hours(9, 12), hours(13, 17));
    return new Person(
        "ana",
        "Ana",
        Map.of(
            DayOfWeek.MONDAY, wholeDay,
            DayOfWeek.TUESDAY, wholeDay,
            DayOfWeek.THURSDAY, wholeDay,
            DayOfWeek.FRIDAY, List.of(hours(9, 13)),
            DayOfWeek.SATURDAY, List.of(hours(10, 13))),
        List.of(new SpecialDay(LocalDate.parse("2027-04-08"), List.of())));
  }

  /** The drying rack with 24 places. */
  public static Station rack() {
    return new Station("rack", "drying rack", 24);
  }

  /** The outer tub, of which there is one. */
  public static Form tubA() {
    return new Form("tub-a", "deep tub", 1, decimal("14.5"), 150);
  }

  /** The inner tub, of which there is one. */
  public static Form tubB() {
    return new Form("tub-b", "mid tub", 1, decimal("12.0"), 150);
  }

  /** The planter's mould: both tubs, 1180 ml, a core that floats. */
  public static Mould planterDeep() {
    return new Mould(
        "planter-deep",
        "deep planter",
        List.of(new FormUse("tub-a", 1), new FormUse("tub-b", 1)),
        1,
        OptionalDouble.of(1180),
        List.of(),
        Optional.empty(),
        2,
        6,
        5,
        8,
        20,
        OptionalDouble.of(120),
        Optional.of(new Core(2600, 140, 1.5)),
        List.of(use("release-oil", "6")));
  }

  /** The binder, 45 % cement. */
  public static Material whiteBlend() {
    return new Material(
        "white-blend",
        "white blend",
        "binder",
        "g",
        OptionalDouble.of(2.9),
        OptionalDouble.of(45),
        pack("22700", "31.0"),
        decimal("14000"),
        3);
  }

  /** The pigment. */
  public static Material ironBlack() {
    return new Material(
        "iron-black",
        "iron oxide black",
        "pigment",
        "g",
        OptionalDouble.of(4.6),
        OptionalDouble.empty(),
        pack("1000", "15.0"),
        decimal("400"),
        5);
  }

  /** The release oil, by the gram. */
  public static Material releaseOil() {
    return material("release-oil", "release oil", "release", "g", pack("500", "8.0"), "300", 2);
  }

  /** The sealer, by the millilitre. */
  public static Material sealer() {
    return material("sealer", "water-based sealer", "coating", "ml", pack("946", "29.0"), "500", 4);
  }

  /** The box, by the piece. */
  public static Material boxM() {
    return material("box-m", "medium box", "packaging", "each", pack("25", "21.0"), "10", 3);
  }

  /** The mix: binder, 3 % black, 25 % water, wet density by absolute volume. */
  public static Mix slate() {
    return new Mix(
        "slate",
        "slate",
        Optional.of("#4a4f55"),
        List.of(new Part("white-blend", 100)),
        List.of(new Dose("iron-black", 3.0, Basis.DRY)),
        new Water(25, Basis.DRY_AND_PIGMENT),
        2,
        OptionalDouble.empty(),
        12,
        25,
        8);
  }

  /** The piece: sand, seal, seal again, dry for a day. */
  public static Piece planterSlate() {
    return new Piece(
        "planter-slate",
        "deep planter, slate",
        "planter-deep",
        "slate",
        92,
        1,
        2,
        List.of(sandTheRim(), firstSealCoat(), secondSealCoat()),
        24,
        List.of(use("box-m", "1")),
        Optional.of(decimal("64.0")),
        Optional.of(decimal("40.0")));
  }

  /** The first step: at once or within two days of the demould. */
  public static Step sandTheRim() {
    return new Step(
        "wet sand the rim",
        3,
        5,
        new After(WaitKind.REST, 0, OptionalDouble.of(48)),
        List.of(),
        List.of(),
        Optional.empty());
  }

  /** The second step: after five days of cure, by Ana only, then resting on the rack. */
  public static Step firstSealCoat() {
    return new Step(
        "first seal coat",
        5,
        4,
        new After(WaitKind.CURE, 120, OptionalDouble.empty()),
        List.of("ana"),
        List.of(use("sealer", "18")),
        Optional.of(new RestsOn("rack", 1)));
  }

  /** The third step: four hours to four days after the first coat. */
  public static Step secondSealCoat() {
    return new Step(
        "second seal coat",
        5,
        4,
        new After(WaitKind.DRY, 4, OptionalDouble.of(96)),
        List.of(),
        List.of(use("sealer", "12")),
        Optional.empty());
  }

  /** The order: four planters at 68 by 24 April, weight 3. */
  public static Order gardenShop() {
    return new Order(
        "O-104",
        "a garden shop",
        "custom",
        LocalDateTime.parse("2027-04-24T17:00"),
        decimal("3"),
        List.of(new Line("planter-slate", 4, Optional.of(decimal("68.0")))));
  }

  /** The channel with a card fee. */
  public static Channel ownTable() {
    return new Channel("own-table", "own table", decimal("2.9"), decimal("0.3"), decimal("0"));
  }

  /** The channel that takes half. */
  public static Channel shopShelf() {
    return new Channel("shop-shelf", "shop shelf", decimal("0"), decimal("0"), decimal("50"));
  }

  /** The fair on 1 May 2027. */
  public static Fair springFair() {
    return new Fair(
        "spring-fair",
        "spring fair",
        LocalDateTime.parse("2027-05-01T09:00"),
        decimal("140"),
        "own-table",
        List.of(new Demand("planter-slate", 2, 5, 11, Optional.of(decimal("64.0")))));
  }

  /** An order of weight 1 with one line without a price of its own; {@code due} is ISO 8601. */
  public static Order order(String id, String piece, int quantity, String due) {
    return new Order(
        id,
        "someone",
        "stock",
        LocalDateTime.parse(due),
        BigDecimal.ONE,
        List.of(new Line(piece, quantity, Optional.empty())));
  }

  /** Somebody who works the same hours on each of the days given. */
  public static Person person(String id, List<Window> hours, DayOfWeek... days) {
    Map<DayOfWeek, List<Window>> week = new EnumMap<>(DayOfWeek.class);
    for (DayOfWeek day : days) {
      week.put(day, hours);
    }
    return new Person(id, id, week, List.of());
  }

  /** A material without density or cement. */
  public static Material material(
      String id, String name, String kind, String unit, Pack pack, String onHand, int leadDays) {
    OptionalDouble none = OptionalDouble.empty();
    return new Material(id, name, kind, unit, none, none, pack, decimal(onHand), leadDays);
  }

  /** A pack of so much, for so much. */
  public static Pack pack(String quantity, String price) {
    return new Pack(decimal(quantity), decimal(price));
  }

  /** So much of a material. */
  public static Use use(String material, String quantity) {
    return new Use(material, decimal(quantity));
  }

  /** An opening window from one full hour to another. */
  public static Window hours(int from, int to) {
    return new Window(from * 60, to * 60);
  }

  /** A decimal number as it would be written in the book. */
  public static BigDecimal decimal(String number) {
    return new BigDecimal(number);
  }
}
