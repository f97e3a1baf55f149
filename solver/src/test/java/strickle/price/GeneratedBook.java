package strickle.price;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import strickle.book.After;
import strickle.book.Basis;
import strickle.book.Book;
import strickle.book.Channel;
import strickle.book.Dose;
import strickle.book.Form;
import strickle.book.FormUse;
import strickle.book.Material;
import strickle.book.Mix;
import strickle.book.Mould;
import strickle.book.Part;
import strickle.book.Piece;
import strickle.book.SampleBook;
import strickle.book.Step;
import strickle.book.Studio;
import strickle.book.Use;
import strickle.book.WaitKind;
import strickle.book.Water;

/** Invented books of one piece, as varied as prices can be; the same number, the same book. */
final class GeneratedBook {

  private static final List<String> USABLE = List.of("release-oil", "sealer", "box-m");

  private final Random random;

  private GeneratedBook(long number) {
    random = new Random(number);
  }

  static Book of(long number) {
    return new GeneratedBook(number).book();
  }

  private Book book() {
    Book sample = SampleBook.example();
    return new Book(
        studio(),
        sample.people(),
        sample.stations(),
        List.of(form("f0"), form("f1"), form("f2")),
        List.of(mould()),
        materials(),
        List.of(mix()),
        List.of(piece()),
        List.of(),
        channels(),
        List.of(),
        List.of());
  }

  private Studio studio() {
    Studio s = SampleBook.studio();
    return new Studio(
        s.name(),
        s.currency(),
        s.timeZone(),
        decimal(0, 60, 2),
        decimal(0, 2000, 2),
        decimal(10, 160, 1),
        s.batchLimitGrams(),
        s.climate());
  }

  private Form form(String id) {
    return new Form(id, "form " + id, 4, decimal(0, 80, 2), between(1, 400));
  }

  private List<Material> materials() {
    return List.of(
        material("white-blend", "binder", "g", between(20, 100)),
        material("sand", "aggregate", "g", 0),
        material("iron-black", "pigment", "g", 0),
        material("iron-red", "pigment", "g", 0),
        material("release-oil", "release", "g", 0),
        material("sealer", "coating", "ml", 0),
        material("box-m", "packaging", "each", 0));
  }

  private Material material(String id, String kind, String unit, int cementPercent) {
    return new Material(
        id,
        "the " + id,
        kind,
        unit,
        OptionalDouble.of(1 + random.nextInt(400) / 100.0),
        OptionalDouble.of(cementPercent),
        SampleBook.pack(decimal(1, 30_000, 0).toString(), decimal(0, 90, 2).toString()),
        BigDecimal.ZERO,
        0);
  }

  private Mix mix() {
    return new Mix(
        "slate",
        "slate",
        Optional.empty(),
        List.of(new Part("white-blend", between(50, 100)), new Part("sand", between(1, 200))),
        List.of(dose("iron-black"), dose("iron-red")),
        new Water(between(15, 40), any(Basis.DRY, Basis.CEMENT, Basis.DRY_AND_PIGMENT)),
        random.nextInt(5),
        random.nextBoolean() ? OptionalDouble.empty() : OptionalDouble.of(between(1500, 2400)),
        between(1, 20),
        between(30, 60),
        between(1, 12));
  }

  private Dose dose(String material) {
    return new Dose(material, between(1, 40) / 10.0, any(Basis.DRY, Basis.CEMENT));
  }

  private Mould mould() {
    Mould m = SampleBook.planterDeep();
    List<FormUse> forms =
        IntStream.range(0, 3)
            .filter(i -> i == 0 || random.nextBoolean())
            .mapToObj(i -> new FormUse("f" + i, between(1, 4)))
            .toList();
    return new Mould(
        m.id(),
        m.name(),
        forms,
        between(1, 6),
        OptionalDouble.of(between(50, 2500)),
        List.of(),
        Optional.empty(),
        random.nextInt(8),
        between(1, 9),
        between(1, 5),
        between(1, 9),
        m.setHours(),
        m.setAtMostHours(),
        Optional.empty(),
        uses());
  }

  private Piece piece() {
    Piece p = SampleBook.planterSlate();
    List<Step> route = IntStream.range(0, random.nextInt(5)).mapToObj(this::step).toList();
    return new Piece(
        p.id(),
        p.name(),
        p.mould(),
        p.mix(),
        between(1, 1000) / 10.0,
        0,
        between(1, 6),
        route,
        p.finalDryHours(),
        uses(),
        random.nextInt(4) == 0 ? Optional.empty() : Optional.of(decimal(1, 400, 2)),
        Optional.empty());
  }

  private Step step(int number) {
    After after = new After(WaitKind.REST, 0, OptionalDouble.empty());
    int setup = random.nextInt(9);
    int each = between(1, 9);
    String name = "step " + number;
    return new Step(name, setup, each, after, List.of(), uses(), Optional.empty());
  }

  private List<Use> uses() {
    List<Use> uses = new ArrayList<>();
    for (String material : USABLE) {
      if (random.nextBoolean()) {
        uses.add(new Use(material, decimal(1, 40, 1)));
      }
    }
    return uses;
  }

  private List<Channel> channels() {
    return IntStream.range(0, 1 + random.nextInt(3))
        .mapToObj(
            i ->
                new Channel(
                    "c" + i,
                    "channel " + i,
                    decimal(0, 40, 2),
                    decimal(0, 5, 2),
                    decimal(0, 70, 1)))
        .toList();
  }

  private int between(int lowest, int highest) {
    return lowest + random.nextInt(highest - lowest + 1);
  }

  private BigDecimal decimal(int lowest, int highest, int decimals) {
    BigDecimal steps = BigDecimal.valueOf(between(0, 10_000)).movePointLeft(4);
    BigDecimal range = BigDecimal.valueOf(highest - (long) lowest);
    return BigDecimal.valueOf(lowest)
        .add(range.multiply(steps))
        .setScale(decimals, RoundingMode.HALF_UP);
  }

  private Basis any(Basis... bases) {
    return bases[random.nextInt(bases.length)];
  }
}
