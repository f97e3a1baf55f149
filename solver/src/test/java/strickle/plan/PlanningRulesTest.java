package strickle.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static strickle.plan.Studios.MONDAY;
import static strickle.plan.Studios.form;
import static strickle.plan.Studios.mix;
import static strickle.plan.Studios.mould;
import static strickle.plan.Studios.order;
import static strickle.plan.Studios.piece;
import static strickle.plan.Studios.step;
import static strickle.plan.Studios.tiles;
import static strickle.plan.Studios.weekdays;

import java.time.DayOfWeek;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import strickle.book.Altered;
import strickle.book.Book;
import strickle.book.BookWith;
import strickle.book.Core;
import strickle.book.Draft;
import strickle.book.Mould;
import strickle.book.Order;
import strickle.book.Piece;
import strickle.book.RestsOn;
import strickle.book.SampleBook;
import strickle.book.Station;
import strickle.book.Step;

/** Lots, forms, stations and people; every plan is read by the audit as well. */
class PlanningRulesTest {

  private static final String DUE = "2027-04-30T12:00";

  /** Ten trays, ten tiles ordered for as soon as can be. */
  private static Book tenTrays() {
    return BookWith.forms(tiles(order("A", 10, MONDAY + "09:00")), form("tray", 10));
  }

  private static List<Integer> castings(Plan plan) {
    return plan.lots().stream()
        .map(lot -> lot.runs().stream().mapToInt(Run::castings).sum())
        .sorted(Comparator.reverseOrder())
        .toList();
  }

  @Test
  void aLotIsAsLargeAsTheWorkingTimeLets() {
    assertEquals(List.of(5, 5), castings(Planned.of(tenTrays())));
    Book quick = Studios.mix(tenTrays(), "workingMinutes", 9);
    assertEquals(10, Planned.of(quick).totals().lots());
  }

  @Test
  void aLotIsAsLargeAsTheBatchLimitLets() {
    Book four = Studios.studio(tenTrays(), "batchLimitGrams", 4000.0);
    Plan plan = Planned.of(four);
    assertEquals(3, plan.totals().lots());
    assertEquals(4, castings(plan).get(0));
    Book three = Studios.studio(tenTrays(), "batchLimitGrams", 3999.9999);
    assertEquals(4, Planned.of(three).totals().lots());
  }

  @Test
  void aLotIsAsLargeAsTheFormsLet() {
    Book book = BookWith.forms(tenTrays(), form("tray", 3));
    assertEquals(List.of(3, 3, 3, 1), castings(Planned.of(book)));
  }

  @Test
  void aLotIsAsLargeAsTheLongestWindowLets() {
    // An hour holds two tiles, a pour of 50 minutes; three would take 65.
    Book book =
        BookWith.people(
            tenTrays(),
            SampleBook.person("ana", List.of(SampleBook.hours(9, 10)), DayOfWeek.values()));
    assertEquals(2, castings(Planned.of(book)).get(0));
  }

  @Test
  void aRunIsAsLargeAsItsStationLets() {
    Step resting =
        Altered.of(
            step(1, 0, OptionalDouble.empty()), "restsOn", Optional.of(new RestsOn("rack", 2)));
    Book book =
        Draft.of(piece(tenTrays(), "route", List.of(resting)))
            .stations(new Station("rack", "rack", 5))
            .book();
    Plan plan = Planned.of(book);
    assertTrue(castings(plan).get(0) <= 2, () -> castings(plan).toString());
  }

  @Test
  void piecesOfOneMixShareALotAndOthersDoNot() {
    Book book =
        Draft.of(tenTrays())
            .mixes(mix("slate"), mix("white"))
            .pieces(
                piece("tile", "slab"),
                piece("brick", "slab"),
                Altered.of(piece("pale", "slab"), "mix", "white"))
            .orders(order("A", 2, DUE), ordered("brick", 2), ordered("pale", 2))
            .book();
    Plan plan = Planned.of(book);
    assertEquals(2, plan.totals().lots());
    assertEquals(
        List.of(List.of("brick", "tile"), List.of("pale")),
        plan.lots().stream()
            .map(lot -> lot.runs().stream().map(Run::piece).sorted().toList())
            .sorted(Comparator.comparing(Object::toString))
            .toList());
  }

  private static Order ordered(String piece, int quantity) {
    return SampleBook.order(piece, piece, quantity, DUE);
  }

  @Test
  void nestedFormsKeepEachOtherWaiting() {
    Book book =
        Draft.of(tiles())
            .people(weekdays("ana"), weekdays("ben"))
            .forms(form("big", 1), form("middle", 1), form("small", 1))
            .moulds(mould("deep", "big", "middle"), mould("low", "middle", "small"))
            .pieces(piece("deep", "deep"), piece("low", "low"))
            .orders(ordered("deep", 2), ordered("low", 2))
            .book();
    Plan plan = Planned.of(book);
    List<OffsetDateTime> edges = new ArrayList<>();
    for (Lot lot : plan.lots()) {
      edges.add(find(plan, lot.id() + "/pour").start());
      edges.add(find(plan, lot.id() + "-1/demould").end());
    }
    assertEquals(8, edges.size());
    assertEquals(edges.stream().sorted().toList(), edges);
  }

  private static Task find(Plan plan, String id) {
    return plan.tasks().stream().filter(task -> task.id().equals(id)).findFirst().orElseThrow();
  }

  @Test
  void anOuterAndItsCoreAreTwoFormsOfOneCasting() {
    Book book =
        Draft.of(tiles(order("A", 1, DUE)))
            .forms(form("tray", 3), form("core", 2))
            .moulds(mould("slab", "tray", "core", "core"))
            .book();
    assertEquals(
        List.of(new FormHold("core", List.of(1, 2)), new FormHold("tray", List.of(1))),
        Planned.of(book).lots().get(0).runs().get(0).forms());
  }

  @Test
  void aStationThatIsFullKeepsTheNextRunWaiting() {
    Step seal =
        Altered.of(
            step(5, 0, OptionalDouble.empty()), "restsOn", Optional.of(new RestsOn("rack", 1)));
    Piece tile = Altered.of(piece("tile", "slab"), "finalDryHours", 30.0);
    Book book =
        Draft.of(tiles(order("A", 2, DUE)))
            .forms(form("tray", 2))
            .stations(new Station("rack", "rack", 1))
            .pieces(Altered.of(tile, "route", List.of(seal)))
            .book();
    List<OffsetDateTime> ready = Planned.of(book).ready().stream().map(Ready::at).sorted().toList();
    assertTrue(ready.get(1).isAfter(ready.get(0).plusHours(30)), ready::toString);
  }

  @Test
  void twoPeoplePourAtOnce() {
    Book book =
        Draft.of(tiles())
            .people(weekdays("ana"), weekdays("ben"))
            .forms(form("tray", 2))
            .mixes(mix("slate"), mix("white"))
            .pieces(piece("tile", "slab"), Altered.of(piece("pale", "slab"), "mix", "white"))
            .orders(
                order("A", 1, MONDAY + "13:33"), SampleBook.order("B", "pale", 1, MONDAY + "13:33"))
            .book();
    Plan plan = Planned.of(book);
    assertEquals(0, plan.totals().lateOrders());
    assertEquals(
        List.of("L1/pour ana 04-05T09:00 09:35", "L2/pour ben 04-05T09:00 09:35"),
        Planned.tasks(plan).stream().filter(task -> task.contains("pour")).toList());
  }

  @Test
  void aStepIsDoneByWhomItNamesOnly() {
    Step bens = Altered.of(step(5, 0, OptionalDouble.empty()), "by", List.of("ben"));
    Book book =
        Draft.of(tiles())
            .people(
                weekdays("ana"),
                SampleBook.person("ben", List.of(SampleBook.hours(12, 13)), DayOfWeek.THURSDAY))
            .pieces(Altered.of(piece("tile", "slab"), "route", List.of(bens)))
            .orders(order("A", 1, DUE))
            .book();
    assertEquals("L1-1/step-1 ben 04-08T12:00 12:05", Planned.tasks(Planned.of(book)).get(2));
  }

  @Test
  void setupComesOnceForARunAndMinutesForEachPieceOfIt() {
    Step sand = Altered.of(step(5, 0, OptionalDouble.empty()), "setupMinutes", 30);
    Book book =
        Studios.mould(BookWith.forms(tiles(order("A", 6, DUE)), form("tray", 2)), "cavities", 3);
    Plan plan = Planned.of(piece(book, "route", List.of(sand)));
    assertEquals(1, plan.totals().lots());
    assertEquals(30 + 6 * 5, find(plan, "L1-1/step-1").minutes());
    assertEquals(2 * 6, find(plan, "L1-1/demould").minutes());
    assertEquals(2 * 15 + 20, find(plan, "L1/pour").minutes());
  }

  @Test
  void aMostWaitIsKeptByPouringLater() {
    // Taken out at 9:00 the next day, it sets from 16:00 on at the soonest: 27 minutes into a pour.
    Book book = tiles(order("A", 1, MONDAY + "12:00"));
    book = Studios.mould(Studios.mould(book, "setHours", 9.0), "setAtMostHours", of(17));
    Task pour = Planned.of(book).tasks().get(0);
    assertEquals(Studios.at(MONDAY + "15:33"), pour.start());
  }

  private static OptionalDouble of(double hours) {
    return OptionalDouble.of(hours);
  }

  /** Ballast and weigh-out by the formulas of the page on the file formats. */
  @Test
  void theLotIsWeighedOutAndItsCoresAreHeldDown() {
    Mould floating =
        Altered.of(mould("slab", "tray"), "core", Optional.of(new Core(300, 100, 1.5)));
    Book book = BookWith.moulds(tiles(order("A", 1, DUE)), floating);
    Lot lot = Planned.of(book).lots().get(0);
    // (2 g/ml x 300 ml − 100 g) x 1.5; 1000 g of 100 white, 3 black and 25 % of both in water.
    assertEquals(OptionalLong.of(750), lot.runs().get(0).ballastGramsEach());
    assertEquals(1000.0, lot.wetGrams());
    assertEquals(
        List.of(
            new Weighed("white-blend", 776.7),
            new Weighed("iron-black", 23.3),
            new Weighed("water", 200.0)),
        lot.weighOut());
  }

  @Test
  void aMouldWithoutACoreNeedsNoBallast() {
    Lot lot = Planned.of(tiles(order("A", 1, DUE))).lots().get(0);
    assertEquals(OptionalLong.empty(), lot.runs().get(0).ballastGramsEach());
  }

  @Test
  void castingsThatWillFailAreCastAsWell() {
    Book book = piece(tenTrays(), "goodPercent", 80.0);
    assertEquals(13, castings(Planned.of(book)).stream().mapToInt(Integer::intValue).sum());
  }

  @Test
  void anOrderIsReadyWhenTheRunThatCompletesItIs() {
    // At 80 % two castings are 1.6 good tiles and three 2.4: A waits for the second, B for all.
    Book book = piece(tiles(order("A", 1, DUE), order("B", 1, DUE)), "goodPercent", 80.0);
    Plan plan = Planned.of(book);
    List<OffsetDateTime> ready = plan.ready().stream().map(Ready::at).sorted().toList();
    assertEquals(3, ready.size());
    assertEquals(ready.get(1), plan.orders().get(0).ready());
    assertEquals(ready.get(2), plan.orders().get(1).ready());
  }
}
