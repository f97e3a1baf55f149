package strickle.plan.learn;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strickle.book.Book;
import strickle.book.Faulty;
import strickle.book.Mix;
import strickle.book.Mould;
import strickle.book.Piece;
import strickle.book.Step;

/** Reads lessons for a book out of recorded weeks. */
public final class Learning {

  private static final double HUNDRED = 100;

  /**
   * Beginning and end are noted to the minute, so each is off by up to half of one: the deviation
   * of their difference, √(2/12) minutes.
   */
  private static final double NOTED_TO = Math.sqrt(2.0 / 12);

  /** Fewer runs, lots or pieces than this are told but not offered. */
  private static final int ENOUGH = 3;

  private static final String MINUTES = "minutes";
  private static final String PERCENT = "percent";

  private final Book book;
  private final Records records;
  private final List<Lesson> lessons = new ArrayList<>();

  private Learning(Book book, Records records) {
    this.book = book;
    this.records = records;
  }

  /**
   * The lessons of logs.
   *
   * @param logs plans of this book with what was recorded of each
   * @throws Faulty with every record that is of no lot, run, step, person or material there is, is
   *     told twice or of a plan of another book, paths as in a file of records; of several logs
   *     they say which it is
   */
  public static Lessons of(Book book, List<Log> logs) {
    RecordFaults faults = new RecordFaults(book, logs.size() > 1);
    for (int i = 0; i < logs.size(); i++) {
      faults.look(logs.get(i), i + 1);
    }
    if (!faults.found().isEmpty()) {
      throw new Faulty(faults.found());
    }
    Records records = new Records(book);
    logs.forEach(records::add);
    Learning learning = new Learning(book, records);
    book.mixes().forEach(learning::mix);
    book.moulds().forEach(learning::mould);
    book.pieces().forEach(learning::piece);
    return new Lessons(learning.lessons);
  }

  /** What a pour takes longer than planned is put on the mixing. */
  private void mix(Mix mix) {
    String path = Paths.mix(book, mix.id());
    ratio(path)
        .ifPresent(
            ratio -> {
              double pour =
                  records.planned.get(path).stream().mapToDouble(one -> one).average().orElse(0);
              double shift = mix.mixMinutes() - pour;
              Estimate minutes = ratio.times(pour);
              Estimate mixing =
                  new Estimate(
                      minutes.mean() + shift, minutes.low() + shift, minutes.high() + shift);
              minutes(path + ".mixMinutes", "mixing " + mix.name(), path, mix.mixMinutes(), mixing);
            });
  }

  private void mould(Mould mould) {
    String path = Paths.mould(book, mould.id());
    int demould = mould.demouldMinutes();
    ratio(path)
        .ifPresent(
            ratio ->
                minutes(
                    path + ".demouldMinutes",
                    "demould, " + mould.name(),
                    path,
                    demould,
                    ratio.times(demould)));
    List<Double> grams = records.grams.getOrDefault(path, List.of());
    if (grams.size() > 1) {
      Estimate whole = RobustMean.of(grams).times(HUNDRED + mould.wastePercent());
      Estimate waste =
          new Estimate(whole.mean() - HUNDRED, whole.low() - HUNDRED, whole.high() - HUNDRED);
      boolean enough = grams.size() >= ENOUGH;
      add(
          path + ".wastePercent",
          "waste, " + mould.name(),
          grams.size(),
          mould.wastePercent(),
          waste,
          percent(Math.max(0, Math.min(HUNDRED, waste.mean()))).filter(number -> enough));
    }
  }

  private void piece(Piece piece) {
    String path = Paths.piece(book, piece.id());
    for (int step = 1; step <= piece.route().size(); step++) {
      step(piece, piece.route().get(step - 1), Paths.step(book, piece.id(), step));
    }
    long[] counts = records.pieces.get(path);
    if (counts != null) {
      double before = piece.goodPercent() / HUNDRED;
      Estimate share = GoodShare.of(before, counts[0], counts[1]).times(HUNDRED);
      add(
          path + ".goodPercent",
          "turns out, " + piece.name(),
          counts[0] + counts[1],
          piece.goodPercent(),
          share,
          percent(share.mean()).filter(number -> counts[0] + counts[1] >= ENOUGH));
    }
  }

  private void step(Piece piece, Step step, String path) {
    boolean each = step.minutesEach() > 0;
    int now = each ? step.minutesEach() : step.setupMinutes();
    String field = each ? ".minutesEach" : ".setupMinutes";
    ratio(path)
        .ifPresent(
            ratio ->
                minutes(
                    path + field, step.step() + ", " + piece.name(), path, now, ratio.times(now)));
  }

  private Optional<Estimate> ratio(String path) {
    return Optional.ofNullable(records.minutes.get(path))
        .filter(ratios -> ratios.size() > 1)
        .map(ratios -> RobustMean.of(ratios, leastDeviation(path)));
  }

  private double leastDeviation(String path) {
    return records.planned.get(path).stream()
        .mapToDouble(minutes -> NOTED_TO / minutes)
        .average()
        .orElse(0);
  }

  private void minutes(String path, String what, String of, int now, Estimate estimate) {
    int count = records.minutes.get(of).size();
    int least = path.endsWith(".mixMinutes") || path.endsWith(".setupMinutes") ? 0 : 1;
    long whole = Math.max(least, Math.round(estimate.mean()));
    Optional<BigDecimal> offer =
        Optional.of(BigDecimal.valueOf(whole)).filter(one -> count >= ENOUGH && whole != now);
    add(path, what, count, now, estimate, offer);
  }

  private void add(
      String path,
      String what,
      long count,
      double now,
      Estimate estimate,
      Optional<BigDecimal> offer) {
    boolean differs = estimate.excludes(now);
    BigDecimal present = BigDecimal.valueOf(now).stripTrailingZeros();
    lessons.add(
        new Lesson(
            path,
            what,
            path.endsWith("Percent") ? PERCENT : MINUTES,
            count,
            present,
            hundredths(estimate.mean()),
            hundredths(estimate.low()),
            hundredths(estimate.high()),
            differs,
            offer.filter(one -> differs && one.compareTo(present) != 0)));
  }

  private static Optional<BigDecimal> percent(double number) {
    return Optional.of(BigDecimal.valueOf(number).setScale(1, RoundingMode.HALF_UP));
  }

  private static BigDecimal hundredths(double number) {
    return BigDecimal.valueOf(number).setScale(2, RoundingMode.HALF_UP);
  }
}
