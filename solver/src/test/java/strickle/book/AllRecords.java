package strickle.book;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** One good example of every record of the book, for rules that hold of all of them. */
final class AllRecords {

  private AllRecords() {}

  static final Climate CLIMATE =
      new Climate(LocalDateTime.parse("2027-04-05T00:00"), 18, OptionalDouble.of(55));
  static final SpecialDay SPECIAL_DAY =
      new SpecialDay(LocalDate.parse("2027-04-08"), List.of(SampleBook.hours(9, 12)));
  static final After AFTER = new After(WaitKind.DRY, 4, OptionalDouble.of(24));
  static final Dose DOSE = new Dose("iron-black", 3, Basis.DRY);
  static final Water WATER = new Water(25, Basis.DRY_AND_PIGMENT);
  static final Line LINE = new Line("planter-slate", 4, Optional.of(SampleBook.decimal("68.0")));
  static final Demand DEMAND = new Demand("planter-slate", 2, 5, 11, Optional.empty());
  static final Pin PIN =
      new Pin("pour", "planter-slate", 1, LocalDateTime.parse("2027-04-06T09:30"), "ana");

  static Stream<Record> records() {
    return Stream.of(
        SampleBook.studio(),
        CLIMATE,
        SampleBook.ana(),
        SPECIAL_DAY,
        SampleBook.rack(),
        SampleBook.tubA(),
        new FormUse("tub-a", 1),
        SampleBook.planterDeep(),
        new Core(2600, 140, 1.5),
        SampleBook.use("sealer", "18"),
        SampleBook.whiteBlend(),
        SampleBook.pack("22700", "31.0"),
        SampleBook.slate(),
        new Part("white-blend", 100),
        DOSE,
        WATER,
        SampleBook.planterSlate(),
        SampleBook.firstSealCoat(),
        AFTER,
        new RestsOn("rack", 1),
        SampleBook.gardenShop(),
        LINE,
        SampleBook.ownTable(),
        SampleBook.springFair(),
        DEMAND,
        PIN,
        SampleBook.example());
  }
}
