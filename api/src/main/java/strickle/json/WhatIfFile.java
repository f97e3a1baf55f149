package strickle.json;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.List;
import strickle.json.contract.Shape;
import strickle.plan.Planning;
import strickle.plan.Totals;
import strickle.plan.whatif.Answer;
import strickle.plan.whatif.Cost;
import strickle.plan.whatif.Tried;

/** Writes what comes of changes ({@code strickle-what-if/1}), the most helpful first. */
public final class WhatIfFile {

  private static final FileFormat FORMAT =
      new FileFormat("strickle-what-if/1", "an answer to what if");

  /** What it looks like. */
  public static final Shape SHAPE = new Shape.Of(Body.class, FORMAT.name());

  private WhatIfFile() {}

  private record Body(
      String book, OffsetDateTime from, Figures plan, Figures planningAlone, List<Entry> changes) {}

  private record Entry(String change, String words, Cost cost, boolean helps, Figures totals) {}

  /** Totals with late hours as they are written in a plan. */
  private record Figures(
      BigDecimal weightedLateHours,
      int lateOrders,
      long attendedMinutes,
      int lots,
      OffsetDateTime lastReady) {}

  /** Writes an answer, with a newline at the end. */
  public static String write(Answer answer) {
    Totals alone = answer.alone().totals();
    List<Entry> entries = answer.tried().stream().map(tried -> entry(tried, alone)).toList();
    return FORMAT.text(
        RecordWriter.object(
            new Body(
                answer.present().book(),
                Planning.begins(answer.present()),
                figures(answer.present().totals()),
                figures(alone),
                entries)));
  }

  private static Entry entry(Tried tried, Totals alone) {
    return new Entry(
        tried.change().text(),
        tried.words(),
        tried.cost(),
        tried.helps(alone),
        figures(tried.plan().totals()));
  }

  private static Figures figures(Totals totals) {
    return new Figures(
        RecordWriter.plain(totals.weightedLateHours()),
        totals.lateOrders(),
        totals.attendedMinutes(),
        totals.lots(),
        totals.lastReady());
  }
}
