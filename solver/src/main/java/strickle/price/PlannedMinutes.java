package strickle.price;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import strickle.book.Book;
import strickle.book.Mould;
import strickle.book.Piece;
import strickle.mix.CastingMass;
import strickle.mix.Recipe;
import strickle.plan.Lot;
import strickle.plan.Plan;
import strickle.plan.Run;
import strickle.plan.Task;
import strickle.plan.TaskKind;

/**
 * The minutes of the lots of a plan. What a run takes by itself is its own; the mixing and washing
 * up of its lot, and what the pour really took beyond its minutes, is split among the runs of the
 * lot by wet mass.
 */
public final class PlannedMinutes implements MinutesOfPiece {

  private final Book book;
  private final Plan plan;
  private final StandardMinutes standard;
  private final Map<String, RunTally> tallies = new LinkedHashMap<>();

  private PlannedMinutes(Book book, Plan plan) {
    this.book = book;
    this.plan = plan;
    this.standard = new StandardMinutes(book);
  }

  /**
   * The minutes of a plan.
   *
   * @param plan a valid plan of this book; it may be under way
   */
  public static PlannedMinutes of(Book book, Plan plan) {
    Objects.requireNonNull(book, "book");
    PlannedMinutes minutes = new PlannedMinutes(book, plan);
    plan.lots().forEach(minutes::read);
    return minutes;
  }

  @Override
  public PriceBasis basis() {
    return PriceBasis.PLANNED;
  }

  /** The minutes; nothing for a piece that no run of the plan makes a good one of. */
  @Override
  public Optional<BigDecimal> perGoodPiece(Piece piece) {
    return split(piece).map(MinuteSplit::perGoodPiece);
  }

  /** The minutes by what they are spent on; nothing as with {@link #perGoodPiece}. */
  public Optional<MinuteSplit> split(Piece piece) {
    return tally(piece).map(RunTally::split);
  }

  /** How many lots of a piece are shared with another piece. */
  int sharedLots(Piece piece) {
    return tally(piece).map(RunTally::sharedLots).orElse(0);
  }

  /** How many pieces are known to be lost beyond what was counted with. */
  BigDecimal lost(Piece piece) {
    return tally(piece).map(RunTally::lost).orElse(BigDecimal.ZERO);
  }

  private Optional<RunTally> tally(Piece piece) {
    return Optional.ofNullable(tallies.get(piece.id())).filter(RunTally::bringsAny);
  }

  private void read(Lot lot) {
    BigDecimal lotMass = BigDecimal.ZERO;
    for (Run run : lot.runs()) {
      lotMass = lotMass.add(mass(lot, run));
    }
    for (Run run : lot.runs()) {
      BigDecimal share = Exact.divide(mass(lot, run), lotMass);
      Piece piece = book.piece(run.piece());
      RunTally tally = tallies.computeIfAbsent(piece.id(), id -> new RunTally());
      tally.lot(book.mix(lot.mix()), share, beyondOfPour(lot));
      List<MinuteItem> own = standard.ofRun(piece, run.castings());
      tally.run(own, minutes(run).subtract(afterPour(run, own)));
      tally.pieces(run, piece, book.mould(piece.mould()).cavities(), lot.runs().size() > 1);
    }
  }

  private BigDecimal mass(Lot lot, Run run) {
    Recipe recipe = Recipe.of(book.mix(lot.mix()), book::material);
    double each = CastingMass.wetGrams(book.mould(book.piece(run.piece()).mould()), recipe);
    return BigDecimal.valueOf(each).multiply(BigDecimal.valueOf(run.castings()));
  }

  /** What the pour of a lot takes in the plan beyond what it takes by the book. */
  private BigDecimal beyondOfPour(Lot lot) {
    long byTheBook = (long) book.mix(lot.mix()).mixMinutes() + book.mix(lot.mix()).washMinutes();
    for (Run run : lot.runs()) {
      byTheBook += ownInPour(run);
    }
    long planned =
        plan.tasks().stream()
            .filter(task -> task.kind() == TaskKind.POUR && task.lot().equals(lot.id()))
            .mapToLong(Task::minutes)
            .sum();
    return BigDecimal.valueOf(planned - byTheBook);
  }

  private BigDecimal minutes(Run run) {
    return BigDecimal.valueOf(
        plan.tasks().stream()
            .filter(task -> task.run().filter(run.id()::equals).isPresent())
            .mapToLong(Task::minutes)
            .sum());
  }

  private long ownInPour(Run run) {
    Mould mould = book.mould(book.piece(run.piece()).mould());
    return (long) run.castings() * (mould.prepMinutes() + mould.pourMinutes());
  }

  /** What a run takes by the book once it is poured. */
  private BigDecimal afterPour(Run run, List<MinuteItem> own) {
    BigDecimal all = own.stream().map(MinuteItem::minutes).reduce(BigDecimal.ZERO, BigDecimal::add);
    return all.subtract(BigDecimal.valueOf(ownInPour(run)));
  }
}
