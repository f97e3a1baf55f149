package strickle.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class FeasibleTest {

  private static final Mould MOULD = SampleBook.planterDeep();
  private static final Person BO = new Person("bo", "Bo", Map.of(), List.of());

  private static Draft draft() {
    return Draft.of(SampleBook.example());
  }

  private static List<Fault> faults(Draft draft) {
    return Feasible.faults(draft.book());
  }

  private static Fault only(Draft draft) {
    List<Fault> faults = faults(draft);
    assertEquals(1, faults.size(), faults::toString);
    return faults.get(0);
  }

  private static Piece routed(Step... steps) {
    return Altered.of(SampleBook.planterSlate(), "route", List.of(steps));
  }

  private static Mould taking(FormUse... forms) {
    return Altered.of(MOULD, "forms", List.of(forms));
  }

  @Test
  void theExampleCanBeMade() {
    assertEquals(List.of(), faults(draft()));
  }

  @Test
  void aPourFitsTheLongestHoursWithoutABreak() {
    // Wash 8 and mix 12 of the mix and pour 5 of the mould leave 215 of the 240 minutes.
    assertEquals(List.of(), faults(draft().moulds(Altered.of(MOULD, "prepMinutes", 215))));

    assertEquals(
        new Fault(
            "$.pieces[0].mould",
            "a pour of 241 minutes for one casting (prep 216, mix 12, pour 5, wash 8)",
            "at most 240 minutes, the longest hours without a break (Ana, Monday 13:00-17:00);"
                + " open longer at a stretch or shorten the pour"),
        only(draft().moulds(Altered.of(MOULD, "prepMinutes", 216))));
  }

  @Test
  void theHoursOfASpecialDayCount() {
    SpecialDay longDay =
        new SpecialDay(LocalDate.parse("2027-04-18"), List.of(SampleBook.hours(8, 13)));
    Person busy = Altered.of(SampleBook.ana(), "exceptions", List.of(longDay));

    assertEquals(
        List.of(), faults(draft().people(busy).moulds(Altered.of(MOULD, "prepMinutes", 275))));
    assertTrue(
        only(draft().people(busy).moulds(Altered.of(MOULD, "prepMinutes", 276)))
            .right()
            .contains("(Ana, 2027-04-18 08:00-13:00)"));
  }

  @Test
  void touchingWindowsAreTwoWindows() {
    List<Window> touching = List.of(SampleBook.hours(8, 12), SampleBook.hours(12, 16));
    Person touch = SampleBook.person("ana", touching, DayOfWeek.MONDAY);

    assertEquals(
        "$.pieces[0].mould",
        only(draft().people(touch).moulds(Altered.of(MOULD, "prepMinutes", 216))).path());
  }

  @Test
  void anyonesHoursAreLongEnoughForAPour() {
    Person longer = SampleBook.person("bo", List.of(SampleBook.hours(8, 18)), DayOfWeek.SUNDAY);

    assertEquals(
        List.of(),
        faults(
            draft()
                .people(SampleBook.ana(), longer)
                .moulds(Altered.of(MOULD, "prepMinutes", 500))));
  }

  @Test
  void somebodyWithHoursMayDoEveryStep() {
    Step byBo = Altered.of(SampleBook.firstSealCoat(), "by", List.of("bo"));
    Step byBoth = Altered.of(byBo, "by", List.of("bo", "ana"));

    assertEquals(
        new Fault(
            "$.pieces[0].route[1].by",
            "only \"bo\", without any opening hours",
            "somebody with opening hours, or nobody named, so that anyone may do it"),
        only(draft().people(SampleBook.ana(), BO).pieces(routed(SampleBook.sandTheRim(), byBo))));
    assertEquals(List.of(), faults(draft().people(SampleBook.ana(), BO).pieces(routed(byBoth))));
  }

  @Test
  void somebodyHasHoursWhileThereIsSomethingToMake() {
    Draft nobodyOpen = draft().people(Altered.of(BO, "id", "ana"));
    Draft nobody = draft().people().pieces(routed(SampleBook.sandTheRim()));

    assertEquals("$.people", only(nobodyOpen).path());
    assertEquals("nobody with opening hours", only(nobodyOpen).found());
    assertEquals("nobody", only(nobody).found());
    assertEquals(List.of(), faults(draft().people().pieces().orders().fairs()));
  }

  @Test
  void oneCastingFitsOnItsStation() {
    Mould twelve = Altered.of(MOULD, "cavities", 12);
    Step wide =
        Altered.of(SampleBook.firstSealCoat(), "restsOn", Optional.of(new RestsOn("rack", 2)));
    Draft full = draft().moulds(twelve).pieces(routed(wide));

    assertEquals(List.of(), faults(full));
    assertEquals(
        new Fault(
            "$.pieces[0].route[0].restsOn",
            "24 places for one casting (pieces 12, places for each 2)",
            "at most 23, the places of station \"rack\"; make more places or take fewer"),
        only(full.stations(new Station("rack", "rack", 23))));
  }

  @Test
  void aMouldNeedsNoMoreOfAFormThanThereIs() {
    FormUse two = new FormUse("tub-a", 2);

    assertEquals(
        new Fault(
            "$.moulds[0].forms[0].count",
            "2 of form \"tub-a\" for one casting",
            "at most 1, which is all there are; get more of the form or need fewer"),
        only(draft().moulds(taking(two))));
    Form pair = Altered.of(SampleBook.tubA(), "count", 2);
    assertEquals(List.of(), faults(draft().forms(pair, SampleBook.tubB()).moulds(taking(two))));
  }

  @Test
  void aFormListedTwiceInAMouldIsSummed() {
    FormUse one = new FormUse("tub-a", 1);

    Fault fault = only(draft().moulds(taking(one, new FormUse("tub-b", 1), one, one)));

    assertEquals("$.moulds[0].forms[2].count", fault.path());
    assertEquals("2 of form \"tub-a\" for one casting", fault.found());
  }

  @Test
  void aMixStaysWorkableForTheWholeOfOnePour() {
    assertEquals(List.of(), faults(draft().moulds(Altered.of(MOULD, "pourMinutes", 25))));

    assertEquals(
        new Fault(
            "$.pieces[0].mix",
            "\"slate\", workable for 25 minutes, in a mould that takes 26 minutes to pour",
            "a mix workable for at least 26 minutes, or a mould poured within 25"),
        only(draft().moulds(Altered.of(MOULD, "pourMinutes", 26))));
  }

  @Test
  void piecesThatNobodyOrderedAreLookedAtToo() {
    Draft slow = draft().orders().fairs().moulds(Altered.of(MOULD, "pourMinutes", 26));

    assertEquals("$.pieces[0].mix", only(slow).path());
  }

  @Test
  void allFaultsAreToldAtOnceAndCannotBeChanged() {
    Mould bad = Altered.of(taking(new FormUse("tub-a", 2)), "pourMinutes", 300);
    Step byBo = Altered.of(SampleBook.firstSealCoat(), "by", List.of("bo"));
    Piece second = Altered.of(routed(byBo), "id", "second");
    Draft draft =
        draft()
            .people(SampleBook.ana(), BO)
            .moulds(Altered.of(bad, "cavities", 25))
            .pieces(SampleBook.planterSlate(), second);

    List<Fault> faults = faults(draft);

    assertEquals(
        List.of(
            "$.moulds[0].forms[0].count",
            "$.pieces[0].mould",
            "$.pieces[0].mix",
            "$.pieces[0].route[1].restsOn",
            "$.pieces[1].mould",
            "$.pieces[1].mix",
            "$.pieces[1].route[0].by",
            "$.pieces[1].route[0].restsOn"),
        faults.stream().map(Fault::path).toList());
    assertThrows(UnsupportedOperationException.class, faults::clear);
  }
}
