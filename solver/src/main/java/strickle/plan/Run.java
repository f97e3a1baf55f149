package strickle.plan;

import java.util.List;
import java.util.OptionalLong;

/**
 * The castings of one piece poured from one lot; they go through the route together.
 *
 * @param id the run's own name, such as {@code L1-1}
 * @param piece the piece's id
 * @param castings fillings of the piece's mould, 1 or more
 * @param forms the units of forms held, an entry for each form
 * @param ballastGramsEach whole grams to lay on the core of each casting; empty without a core
 * @param scrapped pieces known to be lost, 0 or more
 */
public record Run(
    String id,
    String piece,
    int castings,
    List<FormHold> forms,
    OptionalLong ballastGramsEach,
    int scrapped) {

  /**
   * Refuses a run of nothing.
   *
   * @throws strickle.book.Faulty when a name is blank, there is no casting or the ballast is below
   *     0
   */
  public Run {
    Flaws flaws = new Flaws().id(".id", id).id(".piece", piece);
    forms = flaws.list(".forms", forms);
    flaws.atLeast(1, ".castings", castings);
    if (flaws.given(".ballastGramsEach", ballastGramsEach, "whole grams or none")) {
      flaws.atLeast(0, ".ballastGramsEach", ballastGramsEach.orElse(0));
    }
    flaws.atLeast(0, ".scrapped", scrapped);
    flaws.raise();
  }

  /** A run of which nothing is lost. */
  public Run(
      String id, String piece, int castings, List<FormHold> forms, OptionalLong ballastGramsEach) {
    this(id, piece, castings, forms, ballastGramsEach, 0);
  }
}
