package strickle.cure;

import java.util.List;
import java.util.stream.IntStream;

/**
 * The weights of one piece while it dries.
 *
 * @param weighings in the order of time, at least {@value #FEWEST}
 * @param scaleStepGrams what the scale can tell apart, above 0, at most a kilogram
 */
public record DryingLog(List<Weighing> weighings, double scaleStepGrams) {

  /** A curve of three unknowns, and two weighings more to see whether it is one. */
  public static final int FEWEST = 5;

  /** A rise of more than this part of the whole loss is no chance (common practice, no source). */
  private static final double MOST_RISE = 0.1;

  /** Less than this part of the heaviest weight is another piece (common practice, no source). */
  private static final double LEAST_LEFT = 0.6;

  private static final double MOST_STEP = 1000;

  /**
   * Checks the log.
   *
   * @throws strickle.book.Faulty with every fault, paths relative to the log: too few weighings,
   *     weighings out of order or twice at a time, a piece that has not become lighter, or one that
   *     became heavier in between by more than two steps of the scale and a tenth of its whole
   *     loss, or less than three fifths of its heaviest weight
   */
  public DryingLog {
    weighings = List.copyOf(weighings);
    Checks checks = new Checks();
    checks.above(".scaleStepGrams", scaleStepGrams, 0, MOST_STEP);
    checks.that(
        weighings.size() >= FEWEST,
        ".weighings",
        weighings.size() == 1 ? "1 weighing" : weighings.size() + " weighings",
        "at least " + FEWEST + ", or nothing can be predicted from them");
    checkOrder(checks, weighings);
    if (weighings.size() >= 2) {
      checkLoss(checks, weighings, scaleStepGrams);
    }
    checks.done();
  }

  private static void checkOrder(Checks checks, List<Weighing> weighings) {
    for (int i = 1; i < weighings.size(); i++) {
      double days = weighings.get(i).days();
      checks.that(
          days > weighings.get(i - 1).days(),
          ".weighings[" + i + "].days",
          Checks.shown(days) + " after " + Checks.shown(weighings.get(i - 1).days()),
          "a time after that of the weighing before");
    }
  }

  private static void checkLoss(Checks checks, List<Weighing> weighings, double step) {
    double loss = weighings.get(0).grams() - weighings.get(weighings.size() - 1).grams();
    checks.that(
        loss > 2 * step,
        ".weighings",
        "a loss of " + Checks.shown(rounded(loss)) + " g from first to last",
        "one of more than two steps of the scale: either the piece is dry, or it was weighed"
            + " wrong");
    double heaviest = weighings.stream().mapToDouble(Weighing::grams).max().orElseThrow();
    double most = Math.max(2 * step, MOST_RISE * Math.max(0, loss));
    for (int i = 1; i < weighings.size(); i++) {
      double rise = weighings.get(i).grams() - weighings.get(i - 1).grams();
      checks.that(
          rise <= most,
          ".weighings[" + i + "].grams",
          Checks.shown(weighings.get(i).grams())
              + ", heavier by "
              + Checks.shown(rounded(rise))
              + " g than before",
          "a weight that does not contradict the one before, as a drying piece gets no heavier");
    }
    for (int i = 0; i < weighings.size(); i++) {
      double grams = weighings.get(i).grams();
      checks.that(
          grams >= LEAST_LEFT * heaviest,
          ".weighings[" + i + "].grams",
          Checks.shown(rounded(grams)) + " beside " + Checks.shown(rounded(heaviest)) + " g",
          "a weight of the same piece in the same unit: no piece holds that much water");
    }
  }

  private static double rounded(double grams) {
    return Math.rint(grams * 1e6) / 1e6;
  }

  /** Days of the last weighing. */
  public double lastDays() {
    return weighings.get(weighings.size() - 1).days();
  }

  /** Days of the first weighing. */
  public double firstDays() {
    return weighings.get(0).days();
  }

  /** Grams lost from the first weighing to the last. */
  public double lostGrams() {
    return weighings.get(0).grams() - weighings.get(weighings.size() - 1).grams();
  }

  /**
   * What was lost between the last two weighings, for a day, in percent of the lesser mass; below 0
   * when the last is heavier.
   */
  public double lastDailyPercent() {
    Weighing before = weighings.get(weighings.size() - 2);
    Weighing last = weighings.get(weighings.size() - 1);
    double size = ConstantMass.percent(before.grams(), last.grams());
    return Math.copySign(size, before.grams() - last.grams()) / (last.days() - before.days());
  }

  /** The days of all weighings, counted from the first. */
  double[] days() {
    return weighings.stream().mapToDouble(one -> one.days() - firstDays()).toArray();
  }

  /** The shortest time between two weighings, in days. */
  double shortestDays() {
    return IntStream.range(1, weighings.size())
        .mapToDouble(i -> weighings.get(i).days() - weighings.get(i - 1).days())
        .min()
        .orElseThrow();
  }

  /** The grams of all weighings. */
  double[] grams() {
    return weighings.stream().mapToDouble(Weighing::grams).toArray();
  }
}
