package strickle.book;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class MixRulesTest {

  private static final OptionalDouble NONE = OptionalDouble.empty();
  private static final Material NO_DENSITY =
      Altered.of(SampleBook.whiteBlend(), "relativeDensity", NONE);
  private static final Material SAND =
      Altered.of(Altered.of(SampleBook.whiteBlend(), "id", "sand"), "cementPercent", NONE);
  private static final Mix CEMENT_WATER =
      Altered.of(SampleBook.slate(), "water", new Water(40, Basis.CEMENT));

  private static Draft materials(Material white, Material black) {
    return Draft.of(SampleBook.example())
        .materials(
            white, black, SampleBook.releaseOil(), SampleBook.sealer(), SampleBook.boxM(), SAND);
  }

  private static Draft example() {
    return materials(SampleBook.whiteBlend(), SampleBook.ironBlack());
  }

  @Test
  void aMixWithoutMeasuredDensityNeedsThatOfEveryMaterial() {
    Material black = Altered.of(SampleBook.ironBlack(), "relativeDensity", NONE);

    assertEquals(
        List.of(
            new Fault(
                "$.materials[0].relativeDensity",
                "nothing",
                "a number from 0.05 to 25, because mix \"slate\" gives no wetDensityKgPerM3"),
            new Fault(
                "$.materials[1].relativeDensity",
                "nothing",
                "a number from 0.05 to 25, because mix \"slate\" gives no wetDensityKgPerM3")),
        Faults.of(materials(NO_DENSITY, black)::book));
  }

  @Test
  void aMeasuredDensityIsEnough() {
    Mix measured = Altered.of(SampleBook.slate(), "wetDensityKgPerM3", OptionalDouble.of(2072));
    Book book = materials(NO_DENSITY, SampleBook.ironBlack()).mixes(measured).book();

    assertEquals(NONE, book.material("white-blend").relativeDensity());
  }

  @Test
  void aMaterialWantingInSeveralMixesIsToldOnce() {
    Mix other = Altered.of(SampleBook.slate(), "id", "slate-2");

    assertEquals(
        List.of("$.materials[0].relativeDensity"),
        Faults.paths(
            materials(NO_DENSITY, SampleBook.ironBlack()).mixes(SampleBook.slate(), other)::book));
  }

  @Test
  void aPercentageOfTheCementNeedsTheCementOfEveryDryMaterial() {
    List<Part> whiteAndSand = List.of(new Part("white-blend", 1), new Part("sand", 2));
    Mix sandy = Altered.of(CEMENT_WATER, "dry", whiteAndSand);

    assertEquals(
        new Fault(
            "$.materials[5].cementPercent",
            "nothing",
            "a number from 0 to 100, because mix \"slate\" takes a percentage of the cement"),
        Faults.only(example().mixes(sandy)::book));
  }

  @Test
  void aPigmentOfTheCementNeedsItToo() {
    Material white = Altered.of(SampleBook.whiteBlend(), "cementPercent", NONE);
    Mix mix =
        Altered.of(SampleBook.slate(), "pigment", List.of(new Dose("iron-black", 3, Basis.CEMENT)));

    assertEquals(
        List.of("$.materials[0].cementPercent"),
        Faults.paths(materials(white, SampleBook.ironBlack()).mixes(mix)::book));
  }

  @Test
  void withoutSuchAPercentageNobodyAsksForCement() {
    Material white = Altered.of(SampleBook.whiteBlend(), "cementPercent", NONE);

    assertEquals(
        NONE,
        materials(white, SampleBook.ironBlack()).book().material("white-blend").cementPercent());
  }

  @Test
  void aPercentageOfNoCementAtAllIsRefused() {
    Material white = Altered.of(SampleBook.whiteBlend(), "cementPercent", OptionalDouble.of(0));

    assertEquals(
        new Fault(
            "$.mixes[0].dry",
            "no cement in any dry material",
            "some cement, because the mix takes a percentage of it"),
        Faults.only(materials(white, SampleBook.ironBlack()).mixes(CEMENT_WATER)::book));
  }

  @Test
  void whatIsMixedIsWeighedInGrams() {
    Material white = Altered.of(SampleBook.whiteBlend(), "unit", "kg");
    Material black = Altered.of(SampleBook.ironBlack(), "unit", "ml");

    assertEquals(
        List.of(
            new Fault(
                "$.materials[0].unit", "\"kg\"", "\"g\", because mix \"slate\" weighs it out"),
            new Fault(
                "$.materials[1].unit", "\"ml\"", "\"g\", because mix \"slate\" weighs it out")),
        Faults.of(materials(white, black)::book));
  }

  @Test
  void anUnknownDryMaterialIsNotAlsoAWantOfCement() {
    Mix unknown = Altered.of(CEMENT_WATER, "dry", List.of(new Part("gravel", 1)));

    assertEquals(
        List.of("$.mixes[0].dry[0].material"), Faults.paths(example().mixes(unknown)::book));
  }

  @Test
  void aPourTakesAtLeastAMinute() {
    Mould quick =
        Altered.of(Altered.of(SampleBook.planterDeep(), "prepMinutes", 0), "pourMinutes", 0);
    Mix ready = Altered.of(SampleBook.slate(), "mixMinutes", 0);

    Fault fault = Faults.only(example().moulds(quick).mixes(ready)::book);

    assertEquals("$.pieces[0].mould", fault.path());
    assertEquals("\"planter-deep\" with mix \"slate\", 0 minutes", fault.found());
  }

  @Test
  void theMinuteOfAPourMayBePreparationMixingOrPouring() {
    Mould quick =
        Altered.of(Altered.of(SampleBook.planterDeep(), "prepMinutes", 0), "pourMinutes", 0);
    Mix ready = Altered.of(SampleBook.slate(), "mixMinutes", 0);
    Mould prepared = Altered.of(quick, "prepMinutes", 1);
    Mould poured = Altered.of(quick, "pourMinutes", 1);
    Mix mixed = Altered.of(ready, "mixMinutes", 1);

    assertEquals(List.of(prepared), example().moulds(prepared).mixes(ready).book().moulds());
    assertEquals(List.of(poured), example().moulds(poured).mixes(ready).book().moulds());
    assertEquals(List.of(mixed), example().moulds(quick).mixes(mixed).book().mixes());
  }
}
