package strickle.price;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Random;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import strickle.book.Book;
import strickle.book.BookWith;
import strickle.book.Piece;
import strickle.book.SampleBook;
import strickle.book.Studio;
import strickle.plan.Lot;
import strickle.plan.Plan;
import strickle.plan.Run;
import strickle.plan.Spell;
import strickle.plan.Task;
import strickle.plan.TaskKind;
import strickle.plan.Totals;

/** Shares of a plan's cost, in currencies of none, two, three and four digits. */
class PlanCostTest {

  private static final OffsetDateTime FROM = OffsetDateTime.parse("2027-04-05T00:00-05:00");

  private static Book book(String currency) {
    Studio s = SampleBook.studio();
    Studio abroad =
        new Studio(
            s.name(),
            CurrencyUnit.of(currency),
            s.timeZone(),
            s.wagePerHour(),
            s.overheadPerMonth(),
            s.productiveHoursPerMonth(),
            s.batchLimitGrams(),
            s.climate());
    Piece[] pieces = new Piece[7];
    for (int i = 0; i < pieces.length; i++) {
      pieces[i] = piece("p" + i, 100 - 7.3 * i);
    }
    Book book = BookWith.studio(SampleBook.example().withOrders(List.of()), abroad);
    return BookWith.pieces(BookWith.fairs(book), pieces);
  }

  private static Piece piece(String id, double goodPercent) {
    Piece p = SampleBook.planterSlate();
    return new Piece(
        id,
        id,
        p.mould(),
        p.mix(),
        goodPercent,
        0,
        1,
        p.route(),
        24,
        p.packing(),
        p.price(),
        p.leftoverValue());
  }

  private static Plan plan(Book book, Random random) {
    List<Lot> lots = new ArrayList<>();
    List<Task> tasks = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      List<Run> runs = new ArrayList<>();
      for (int piece = 0; piece < book.pieces().size(); piece++) {
        if (random.nextInt(3) > 0) {
          String id = "L" + i + "-" + piece;
          int castings = 1 + random.nextInt(4);
          runs.add(new Run(id, "p" + piece, castings, List.of(), OptionalLong.empty()));
        }
      }
      tasks.add(pour("L" + i, 100 + random.nextInt(100)));
      lots.add(new Lot("L" + i, "slate", runs, List.of(), 1));
    }
    Totals totals = new Totals(BigDecimal.ZERO, 0, 0, 5, FROM);
    return new Plan("b", FROM, 0, lots, tasks, List.of(), List.of(), List.of(), totals);
  }

  private static Task pour(String lot, int minutes) {
    List<Spell> spells = List.of(new Spell(FROM, FROM.plusMinutes(minutes)));
    Optional<String> noRun = Optional.empty();
    return new Task(lot + "/pour", TaskKind.POUR, lot, noRun, OptionalInt.empty(), "ana", spells);
  }

  @ParameterizedTest
  @ValueSource(strings = {"JPY", "USD", "KWD", "CLF"})
  void everyShareAddsUpToTheWholeInTheDigitsOfTheCurrency(String currency) {
    int digits = CurrencyUnit.of(currency).getDecimalPlaces();
    Book book = book(currency);
    Random random = new Random(20270405);
    for (int round = 0; round < 50; round++) {
      PlanCost cost = PlanCost.of(book, PlannedMinutes.of(book, plan(book, random)));

      BigDecimal sum = BigDecimal.ZERO;
      for (PlanCost.PieceShare share : cost.pieces()) {
        assertEquals(digits, share.full().scale());
        BigDecimal kinds =
            share.material().add(share.labour()).add(share.wear()).add(share.overhead());
        assertEquals(share.full(), kinds);
        sum = sum.add(share.full());
      }
      assertEquals(cost.full(), sum);
      assertEquals(digits, cost.full().scale());
    }
  }
}
