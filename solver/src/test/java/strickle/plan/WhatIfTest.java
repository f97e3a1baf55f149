package strickle.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static strickle.plan.LateBooks.FRIDAY_AFTERNOON;
import static strickle.plan.Studios.FROM;
import static strickle.plan.Studios.MONDAY;
import static strickle.plan.Studios.order;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import strickle.book.Book;
import strickle.book.BookWith;
import strickle.book.Climate;
import strickle.book.Draft;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.plan.whatif.Answer;
import strickle.plan.whatif.Change;
import strickle.plan.whatif.ChangeText;
import strickle.plan.whatif.Ideas;
import strickle.plan.whatif.Together;
import strickle.plan.whatif.Tried;
import strickle.plan.whatif.WhatIf;

/** What comes of changes in studios that can be worked out by head; see {@link Studios}. */
class WhatIfTest {

  private static final Optional<Effort> FEW = Optional.of(Effort.ofSchedules(2000));

  private static Answer answer(Book book, Plan plan, List<Change> changes) {
    Answer answer = WhatIf.of(book, plan, changes, FEW, 0, done -> {}).run();
    Planned.assertValid(book, answer.alone());
    answer.tried().forEach(tried -> Planned.assertValid(tried.book(), tried.plan()));
    return answer;
  }

  private static Answer answer(Book book, OffsetDateTime from) {
    Plan plan = Planned.of(book, from);
    return answer(book, plan, Ideas.of(book, plan));
  }

  private static Answer tries(Book book, OffsetDateTime from, String... texts) {
    List<Change> changes = List.of(texts).stream().map(ChangeText::read).toList();
    return answer(book, Planned.of(book, from), changes);
  }

  private static List<String> texts(Answer answer) {
    return answer.tried().stream().map(tried -> tried.change().text()).toList();
  }

  private static Totals with(Answer answer, String text) {
    return answer.tried().stream()
        .filter(tried -> tried.change().text().equals(text))
        .findFirst()
        .orElseThrow()
        .plan()
        .totals();
  }

  @Test
  void aSecondTrayFreesTheOrderThatWaitsForTheFirst() {
    // The second tile cannot be poured before the first is out of the tray, at 13:33.
    Answer answer = answer(LateBooks.oneTray(), FROM);
    assertEquals(1, answer.alone().totals().lateOrders());
    assertEquals("form:tray+1", answer.tried().get(0).change().text());
    assertEquals(0, answer.tried().get(0).plan().totals().lateOrders());
    assertTrue(answer.tried().get(0).helps(answer.alone().totals()));
  }

  @Test
  void hoursOnASaturdayFreeWhatWouldWaitForMonday() {
    // Poured on Friday at 14:00, set at 18:27, due on Saturday at noon.
    Answer answer = answer(LateBooks.overTheWeekend(), FRIDAY_AFTERNOON);
    assertEquals(1, answer.alone().totals().lateOrders());
    assertEquals(0, with(answer, "hours:ana:2027-04-10T09:00-13:00").lateOrders());
    assertEquals(0, with(answer, "hours:ana:2027-04-09T17:00-20:00").lateOrders());
    assertTrue(answer.tried().get(0).change().text().startsWith("hours:ana:"));
  }

  @Test
  void nothingHelpsAgainstTheTimeAMixTakesToSet() {
    // Four hours to set from Monday at 9:00 cannot be over by 11:00, whoever and whatever is there.
    Book book = LateBooks.tiles(order("A", 1, MONDAY + "11:00"));
    Answer answer =
        tries(
            book,
            FROM,
            "form:tray+5",
            "helper:2027-04-05",
            "hours:ana:2027-04-05T17:00-20:00",
            "batch:90000");
    Totals alone = answer.alone().totals();
    assertEquals(1, alone.lateOrders());
    for (Tried tried : answer.tried()) {
      assertFalse(tried.changes(alone), tried.words());
      assertEquals(answer.present(), tried.plan(), "nothing has to move");
    }
  }

  @Test
  void aWarmerRoomSetsSooner() {
    Climate cold = new Climate(LocalDateTime.parse(MONDAY + "00:00"), 10, OptionalDouble.empty());
    Book book =
        Studios.studio(Studios.tiles(order("A", 1, MONDAY + "14:00")), "climate", List.of(cold));
    Answer answer = answer(book, FROM);
    assertTrue(texts(answer).contains("room:20"));
    // Seven hours or so at 10 °C; at 20 °C out by 13:34, as exp(13.65 - 4000/293) is 0.998.
    assertEquals(1, answer.alone().totals().lateOrders());
    assertEquals(0, with(answer, "room:20").lateOrders());
    assertEquals(Studios.at(MONDAY + "13:34"), with(answer, "room:20").lastReady());
  }

  @Test
  void aLargerBucketSparesALot() {
    // Six tiles of 1 kg in 4 kg lots are two lots; in one lot 12 + 8 minutes are spared.
    Book book =
        Draft.of(Studios.tiles(order("A", 6, "2027-04-09T12:00")))
            .forms(Studios.form("tray", 6))
            .book();
    book = Studios.mix(Studios.studio(book, "batchLimitGrams", 4000.0), "workingMinutes", 60);
    Answer answer = answer(book, FROM);
    assertTrue(texts(answer).contains("batch:6000"), texts(answer).toString());
    long spared =
        answer.alone().totals().attendedMinutes() - with(answer, "batch:6000").attendedMinutes();
    assertEquals(20, spared);
  }

  @Test
  void morePlacesFreeWhatWaitsForTheRack() {
    Answer answer = answer(LateBooks.oneRackPlace(), FROM);
    assertEquals(1, answer.alone().totals().lateOrders());
    assertEquals(0, with(answer, "places:rack+1").lateOrders());
  }

  @Test
  void formsThatLackTogetherAreTriedTogether() {
    Book book =
        Draft.of(LateBooks.oneTray())
            .forms(Studios.form("tray", 1), Studios.form("core", 1))
            .moulds(Studios.mould("slab", "tray", "core"))
            .book();
    Answer answer = answer(book, FROM);
    assertEquals("form:core+1 form:tray+1", answer.tried().get(0).change().text());
    assertEquals(0, answer.tried().get(0).plan().totals().lateOrders());
    assertEquals(1, with(answer, "form:tray+1").lateOrders());
    assertEquals(1, with(answer, "form:core+1").lateOrders());
  }

  @Test
  void whatLowersLatenessComesFirstAndOfEqualsTheCheapest() {
    Book book = LateBooks.oneTray();
    Answer answer =
        tries(book, FROM, "batch:90000", "form:tray+3", "helper:2027-04-09", "form:tray+1");
    assertEquals(
        List.of("form:tray+1", "form:tray+3", "helper:2027-04-09", "batch:90000"), texts(answer));
  }

  @Test
  void lateOrdersComeBeforeHandworkAndHandworkBeforeTheLastPiece() {
    OffsetDateTime soon = FROM.plusDays(1);
    Totals late = new Totals(BigDecimal.ONE, 1, 10, 1, FROM);
    Totals work = new Totals(BigDecimal.ZERO, 0, 12, 1, FROM);
    Totals last = new Totals(BigDecimal.ZERO, 0, 11, 1, soon);
    Totals best = new Totals(BigDecimal.ZERO, 0, 11, 1, FROM);
    List<Totals> sorted = new ArrayList<>(List.of(late, work, last, best));
    sorted.sort(Tried.BY_HELP);
    assertEquals(List.of(best, last, work, late), sorted);
  }

  @Test
  void noChangeIsCreditedWithWhatMorePlanningGives() {
    // Two tiles poured apart, though two trays and one lot would do: the present plan is poor.
    Book two =
        Draft.of(Studios.tiles(order("A", 2, "2027-04-09T12:00")))
            .forms(Studios.form("tray", 2))
            .book();
    Book one = BookWith.forms(two, Studios.form("tray", 1));
    Plan poor = Planned.of(one);
    Planned.assertValid(two, poor);
    Answer answer = answer(two, poor, List.of(ChangeText.read("helper:2027-04-09")));
    long spared = poor.totals().attendedMinutes() - answer.alone().totals().attendedMinutes();
    assertEquals(20, spared);
    assertFalse(answer.tried().get(0).changes(answer.alone().totals()));
    assertEquals(poor, answer.present());
  }

  @Test
  void whatIsTriedCoversTheOrdersAsThePresentPlanDoes() {
    Book book = LateBooks.tile(LateBooks.oneTray(), "goodPercent", 80.0);
    PlanRequest request =
        new PlanRequest(FROM, Effort.ofSchedules(60), 0).covering(OptionalDouble.of(95));
    Plan sure = Planning.of(book, request, progress -> {}).run();
    Answer answer = answer(book, sure, List.of(ChangeText.read("form:tray+1")));
    Plan better = answer.tried().get(0).plan();
    assertEquals(OptionalDouble.of(95), better.coverPercent());
    assertEquals(castings(sure), castings(better));
    assertTrue(castings(sure) > castings(Planned.of(book)));
    assertTrue(answer.tried().get(0).helps(answer.alone().totals()));
  }

  private static int castings(Plan plan) {
    return plan.lots().stream().flatMap(lot -> lot.runs().stream()).mapToInt(Run::castings).sum();
  }

  @Test
  void severalTogetherAreOneChange() {
    Change both = Together.of(ChangeText.read("form:tray+1"), ChangeText.read("helper:2027-04-05"));
    Book book = LateBooks.oneTray();
    Answer answer = answer(book, Planned.of(book), List.of(both));
    assertEquals(0, answer.tried().get(0).plan().totals().lateOrders());
    assertEquals(2, answer.tried().get(0).book().people().size());
  }

  @Test
  void theSameEffortGivesTheSameAnswer() {
    Book book = LateBooks.vaseAndTile();
    Plan plan = Planned.of(book);
    List<Change> changes = Ideas.of(book, plan);
    assertEquals(answer(book, plan, changes), answer(book, plan, changes));
    assertEquals(changes, Ideas.of(book, plan));
  }

  @Test
  void itCanBeTriedForATimeAndStopped() {
    Book book = LateBooks.oneTray();
    Plan plan = Planned.of(book);
    List<Change> changes = List.of(ChangeText.read("form:tray+1"));
    List<Integer> told = new ArrayList<>();
    Optional<Effort> anHour = Optional.of(Effort.ofTime(Duration.ofHours(1)));
    WhatIf whatIf = WhatIf.of(book, plan, changes, anHour, 0, told::add);
    whatIf.stop();
    Answer answer = whatIf.run();
    answer.tried().forEach(tried -> Planned.assertValid(tried.book(), tried.plan()));
    assertEquals(List.of(1, 2, 3, 4), told);
    assertEquals(4, WhatIf.searches(changes));
  }

  @Test
  void aBookWithNothingToPourHasNothingWorthTrying() {
    Book book = Studios.tiles();
    assertEquals(List.of(), Ideas.of(book, Planned.of(book)));
    assertEquals(List.of(), answer(book, FROM).tried());
  }

  @Test
  void aChangeThatCannotBeMadeOrIsOverIsRefusedWithItsPlace() {
    Book book = LateBooks.oneTray();
    Plan plan = Planned.of(book);
    List<Change> changes =
        List.of(
            ChangeText.read("form:tray+1"),
            ChangeText.read("form:trai+1"),
            ChangeText.read("helper:2027-04-04"));
    Faulty faulty =
        assertThrows(Faulty.class, () -> WhatIf.of(book, plan, changes, FEW, 0, done -> {}));
    assertEquals(
        List.of(".changes[1]", ".changes[2]"), faulty.faults().stream().map(Fault::path).toList());
    assertTrue(faulty.faults().get(1).right().contains("2027-04-05"));
  }
}
