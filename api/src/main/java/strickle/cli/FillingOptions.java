package strickle.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Option;
import strickle.book.Amount;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Mould;
import strickle.json.BatchFilling;
import strickle.mix.Volume;

/** The options that say what a batch has to fill. */
final class FillingOptions {

  private static final int MOST_CASTINGS = 1000;
  private static final double MOST_ML = 10_000_000;

  @Option(
      names = "--mould",
      paramLabel = "ID[=N]",
      description = "a mould of the book, and how many castings; may be given several times")
  private List<String> moulds = new ArrayList<>();

  @Option(
      names = "--volume-ml",
      paramLabel = "VOLUME",
      description = "a volume to fill, in ml or with its unit")
  private String volume;

  @Option(
      names = "--castings",
      paramLabel = "N",
      description = "how often to fill that volume; 1 when left out")
  private String castings;

  @Option(
      names = "--waste",
      paramLabel = "PERCENT",
      description = "what is lost beside the moulds; the moulds' own when left out, 0 for a volume")
  private String waste;

  /** What is to be filled; faults are noted. */
  List<BatchFilling> read(Given values, Optional<Book> book) {
    Optional<Double> percent =
        values
            .decimal("--waste", waste)
            .map(Number::doubleValue)
            .filter(
                p ->
                    values.must(
                        p >= 0 && p <= 100, "--waste", waste, "a percentage from 0 to 100"));
    List<BatchFilling> fillings = new ArrayList<>(mouldsOf(values, book, percent));
    Optional<Long> times = values.whole("--castings", castings, 1, MOST_CASTINGS);
    String right = "--volume-ml beside it; castings of a mould stand behind it, as in dish=3";
    values.must(castings == null || volume != null, "--castings", castings, right);
    values
        .amount("--volume-ml", volume, Amount::volume)
        .filter(
            ml ->
                values.must(
                    ml > 0 && ml <= MOST_ML,
                    "--volume-ml",
                    volume,
                    "a volume above 0, at most 10000 l"))
        .ifPresent(
            ml -> {
              int count = times.orElse(1L).intValue();
              fillings.add(BatchFilling.of(Optional.empty(), count, ml, percent.orElse(0.0)));
            });
    if (moulds.isEmpty() && volume == null) {
      values.fault(
          new Fault(
              "batch", "nothing to fill", "--volume-ml, or --mould of a book with its castings"));
    }
    return fillings;
  }

  private List<BatchFilling> mouldsOf(Given values, Optional<Book> book, Optional<Double> percent) {
    if (!moulds.isEmpty() && book.isEmpty()) {
      values.fault(new Fault("--mould", "no book", "the book that has the mould, as BOOK"));
      return List.of();
    }
    Map<String, Integer> counts = new LinkedHashMap<>();
    for (String text : moulds) {
      int equals = text.lastIndexOf('=');
      String id = equals < 0 ? text : text.substring(0, equals);
      String number = equals < 0 ? "1" : text.substring(equals + 1);
      List<String> ids = book.orElseThrow().moulds().stream().map(Mould::id).toList();
      String right = "the id of a mould of the book: " + String.join(", ", ids);
      Optional<Long> count = values.whole("--mould " + id, number, 1, MOST_CASTINGS);
      if (values.must(ids.contains(id), "--mould", id, right) && count.isPresent()) {
        counts.merge(id, count.get().intValue(), Integer::sum);
      }
    }
    List<BatchFilling> fillings = new ArrayList<>();
    counts.forEach(
        (id, count) -> {
          Mould mould = book.orElseThrow().mould(id);
          double wasted = percent.orElse(mould.wastePercent());
          fillings.add(BatchFilling.of(Optional.of(id), count, Volume.ml(mould), wasted));
        });
    return fillings;
  }
}
