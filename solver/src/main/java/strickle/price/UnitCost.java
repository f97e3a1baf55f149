package strickle.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strickle.book.Book;
import strickle.book.Form;
import strickle.book.Mould;
import strickle.book.Piece;
import strickle.book.Studio;

/**
 * What one good piece costs, unrounded.
 *
 * @param minutes attended minutes for one good piece
 * @param lines one for each material, labour, one for each form, overhead, in that order
 */
record UnitCost(BigDecimal minutes, List<ExactLine> lines) {

  /** Freezes the lines. */
  UnitCost {
    lines = List.copyOf(lines);
  }

  /** The cost of a piece of the book that takes the minutes given. */
  static UnitCost of(Book book, Piece piece, BigDecimal minutes) {
    List<ExactLine> lines = new ArrayList<>(Materials.of(book, piece));
    lines.add(labour(book.studio(), minutes));
    lines.addAll(wear(book, piece));
    lines.add(overhead(book.studio(), minutes));
    return new UnitCost(minutes, lines);
  }

  /** Everything of one kind, in the book's currency. */
  BigDecimal of(CostKind kind) {
    return lines.stream()
        .filter(line -> line.kind() == kind)
        .map(ExactLine::amount)
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /** Full cost = material + labour + wear + overhead, in the book's currency. */
  BigDecimal full() {
    return lines.stream().map(ExactLine::amount).reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /** Full cost without labour: what has to be paid whoever does the work. */
  BigDecimal withoutLabour() {
    return full().subtract(of(CostKind.LABOUR));
  }

  /** Labour = minutes/60 x wage; every attended minute is paid. */
  private static ExactLine labour(Studio studio, BigDecimal minutes) {
    BigDecimal wages = minutes.multiply(studio.wagePerHour());
    return new ExactLine("labour", CostKind.LABOUR, Exact.divide(wages, Exact.MINUTES_PER_HOUR));
  }

  /**
   * Overhead = minutes/60 x overhead per month / productive hours per month. Source: the
   * predetermined overhead rate of job costing (budgeted overhead over budgeted base, OpenStax,
   * Principles of Accounting 2, m68004), with hours as the base.
   */
  private static ExactLine overhead(Studio studio, BigDecimal minutes) {
    BigDecimal base = studio.productiveHoursPerMonth().multiply(Exact.MINUTES_PER_HOUR);
    BigDecimal amount = Exact.divide(minutes.multiply(studio.overheadPerMonth()), base);
    return new ExactLine("overhead", CostKind.OVERHEAD, amount);
  }

  /**
   * Wear of a form = count x cost each / life in castings / cavities / g. Source: units of
   * production (OpenStax, Principles of Accounting 1, m67897) with pours as units and no salvage.
   */
  private static List<ExactLine> wear(Book book, Piece piece) {
    Mould mould = book.mould(piece.mould());
    BigDecimal good =
        Exact.fraction(piece.goodPercent()).multiply(BigDecimal.valueOf(mould.cavities()));
    // A form that the mould lists twice is one form with both counts.
    Map<String, Long> counts = new LinkedHashMap<>();
    mould.forms().forEach(use -> counts.merge(use.form(), (long) use.count(), Long::sum));
    return counts.entrySet().stream()
        .map(count -> wear(book.form(count.getKey()), count.getValue(), good))
        .toList();
  }

  private static ExactLine wear(Form form, long count, BigDecimal goodPerCasting) {
    BigDecimal bought = form.costEach().multiply(BigDecimal.valueOf(count));
    BigDecimal lifetime = goodPerCasting.multiply(BigDecimal.valueOf(form.lifeCastings()));
    return new ExactLine(form.name(), CostKind.WEAR, Exact.divide(bought, lifetime));
  }
}
