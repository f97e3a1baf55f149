package strickle.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import strickle.book.Book;
import strickle.book.Channel;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.Piece;
import strickle.plan.Plan;
import strickle.price.Target.LargeLine;

/** Says whether a piece holds a margin at a price, and what would make it. */
public final class TargetCheck {

  private static final int LARGEST = 3;

  private TargetCheck() {}

  /**
   * Checks a target.
   *
   * @param plan a valid plan of this book to take the minutes from; without one they are those of
   *     the typical run
   * @throws Faulty with {@code .piece} and {@code .channel} for what the book does not have, {@code
   *     .piece} for what the plan does not make, {@code .price} for one with more digits than the
   *     currency has, {@code .marginPercent} for one that the fee leaves no room for, and paths
   *     that start at the book for what keeps a casting from being weighed
   */
  public static Target of(Book book, TargetRequest request, Optional<Plan> plan) {
    List<Fault> faults = new ArrayList<>(Weighable.faults(book));
    Optional<Piece> piece = Named.piece(book, request.piece(), ".piece", faults);
    Optional<Channel> channel = Named.channel(book, request.channel(), ".channel", faults);
    faults.addAll(RequestCheck.ofPrice(book, ".price", request.price()));
    channel.ifPresent(one -> RequestCheck.room(one, request.marginPercent(), faults));
    raise(faults);
    Optional<MinuteSplit> split = minutes(book, piece.orElseThrow(), plan);
    if (split.isEmpty()) {
      faults.add(RequestCheck.notPlanned(".piece", request.piece()));
    }
    raise(faults);
    Deal deal =
        new Deal(
            PieceModel.of(book, piece.orElseThrow()),
            split.orElseThrow(),
            new Sale(channel.orElseThrow()),
            request.price());
    PriceBasis basis = plan.isPresent() ? PriceBasis.PLANNED : PriceBasis.STANDARD;
    return answer(request, basis, deal, new Levers(book, piece.orElseThrow(), deal, request));
  }

  private static void raise(List<Fault> faults) {
    if (!faults.isEmpty()) {
      throw new Faulty(faults);
    }
  }

  /** The minutes of a piece by a plan, or by its typical run; nothing when not in the plan. */
  static Optional<MinuteSplit> minutes(Book book, Piece piece, Optional<Plan> plan) {
    return plan.isPresent()
        ? PlannedMinutes.of(book, plan.get()).split(piece)
        : Optional.of(new StandardMinutes(book).split(piece));
  }

  private static Target answer(TargetRequest request, PriceBasis basis, Deal deal, Levers levers) {
    UnitCost cost = deal.cost();
    BigDecimal most = deal.mostCost(request.marginPercent());
    return new Target(
        levers.currency(),
        basis,
        request.piece(),
        request.channel(),
        request.price(),
        request.marginPercent(),
        levers.holds(deal),
        Exact.atTheDoor(cost.minutes()),
        Exact.atTheDoor(cost.full()),
        Exact.atTheDoor(deal.sale().net(deal.price())),
        Exact.atTheDoor(deal.profit()),
        Exact.atTheDoor(deal.marginPercent()),
        Exact.atTheDoor(most),
        Exact.atTheDoor(most.subtract(cost.full())),
        largest(cost),
        levers.all(),
        levers.table(),
        request
            .referencePrice()
            .map(other -> ReferencePrice.of(other, cost.full(), request.price())));
  }

  private static List<LargeLine> largest(UnitCost cost) {
    return cost.lines().stream()
        .sorted(Comparator.comparing(ExactLine::amount).reversed())
        .limit(LARGEST)
        .map(line -> large(line, cost.full()))
        .toList();
  }

  private static LargeLine large(ExactLine line, BigDecimal full) {
    BigDecimal share =
        full.signum() == 0
            ? BigDecimal.ZERO
            : Exact.divide(line.amount().multiply(Exact.HUNDRED), full);
    return new LargeLine(
        line.what(), line.kind(), Exact.atTheDoor(line.amount()), Exact.atTheDoor(share));
  }
}
