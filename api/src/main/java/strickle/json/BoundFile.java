package strickle.json;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strickle.json.contract.Shape;
import strickle.plan.Bounds;
import strickle.plan.Bounds.OrderBound;
import strickle.plan.Plan;
import strickle.plan.Totals;

/** Writes bounds ({@code strickle-bound/1}), and how far a plan is from them. */
public final class BoundFile {

  private static final FileFormat FORMAT = new FileFormat("strickle-bound/1", "bounds");

  /** What it looks like. */
  public static final Shape SHAPE = new Shape.Of(Written.class, FORMAT.name());

  private record Written(
      OffsetDateTime from,
      List<WrittenOrder> orders,
      BigDecimal weightedLateHours,
      long attendedMinutes,
      Optional<Distance> plan) {}

  private record WrittenOrder(
      String order, OffsetDateTime alone, OffsetDateTime plannedAlone, OffsetDateTime served) {}

  /** The plan's own figures, and by how much they are above the least. */
  private record Distance(
      BigDecimal weightedLateHours,
      long attendedMinutes,
      BigDecimal weightedLateHoursAbove,
      long attendedMinutesAbove) {}

  private BoundFile() {}

  /**
   * Writes bounds, with a newline at the end.
   *
   * @param alone when each order is ready in a plan of nothing else, in the order of the bounds
   * @param plan a plan of the book to hold against them
   */
  public static String write(Bounds bounds, List<OffsetDateTime> alone, Optional<Plan> plan) {
    List<WrittenOrder> orders = new ArrayList<>();
    for (int i = 0; i < bounds.orders().size(); i++) {
      OrderBound one = bounds.orders().get(i);
      orders.add(new WrittenOrder(one.order(), one.alone(), alone.get(i), one.served()));
    }
    Written written =
        new Written(
            bounds.from(),
            orders,
            bounds.weightedLateHours(),
            bounds.attendedMinutes(),
            plan.map(one -> distance(bounds, one.totals())));
    return FORMAT.text(RecordWriter.object(written));
  }

  private static Distance distance(Bounds bounds, Totals totals) {
    return new Distance(
        totals.weightedLateHours(),
        totals.attendedMinutes(),
        RecordWriter.plain(totals.weightedLateHours().subtract(bounds.weightedLateHours())),
        totals.attendedMinutes() - bounds.attendedMinutes());
  }
}
