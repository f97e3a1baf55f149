package strickle.cli;

import java.time.LocalDateTime;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Supplier;
import picocli.CommandLine.Option;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.plan.promise.PromiseRequest;

/** The options that say what a buyer asks for. */
final class PromiseOptions {

  private static final String PIECE = "--piece";
  private static final String QUANTITY = "--quantity";
  private static final String LATEST = "--latest";
  private static final String ORDER = "--order";
  private static final String FOR = "--for";
  private static final long MOST_PIECES = 100_000;
  private static final long MOST_SCHEDULES = 1_000_000_000;

  /** What a promise calls what it is asked, and the command line does. */
  private static final Map<String, String> OPTIONS =
      Map.of(
          ".plan", "--plan",
          ".piece", PIECE,
          ".quantity", QUANTITY,
          ".latest", LATEST,
          ".order", ORDER,
          ".id", ORDER,
          ".for", FOR);

  @Option(
      names = PIECE,
      paramLabel = "ID",
      required = true,
      description = "what is asked for: the id of a piece in the book")
  private String piece;

  @Option(
      names = QUANTITY,
      paramLabel = "N",
      required = true,
      description = "how many pieces, 1 to 100000")
  private String quantity;

  @Option(
      names = LATEST,
      paramLabel = "DATE",
      description = {
        "until when the buyer wants it, in the studio's time zone: a date such as 2027-04-20, which"
            + " means the end of that day, or a date with a time such as 2027-04-20T17:00"
      })
  private String latest;

  @Option(
      names = ORDER,
      paramLabel = "ID",
      description = "the id the new order gets; \"promise\" when left out")
  private String order;

  @Option(names = FOR, paramLabel = "NAME", description = "whom the new order is for")
  private String buyer;

  @Option(
      names = "--schedules",
      paramLabel = "N",
      description = {
        "how many schedules each search looks at, 1 to 1000000000; by the size of the plan when"
            + " left out"
      })
  private String schedules;

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "where the searches' chance begins, any whole number; 0 when left out")
  private String seed;

  /**
   * Reads the options.
   *
   * @throws Faulty with everything that is wrong with them alone
   */
  PromiseRequest read() {
    Given values = new Given();
    Optional<Long> pieces = values.whole(QUANTITY, quantity, 1, MOST_PIECES);
    Optional<LocalDateTime> by = values.moment(LATEST, latest).map(this::endOfDay);
    Optional<Long> most = values.whole("--schedules", schedules, 1, MOST_SCHEDULES);
    Optional<Long> chance = values.whole("--seed", seed, Long.MIN_VALUE, Long.MAX_VALUE);
    values.done();
    return new PromiseRequest(
        piece,
        Math.toIntExact(pieces.orElseThrow()),
        by,
        Optional.ofNullable(order),
        Optional.ofNullable(buyer).orElse(""),
        most.map(OptionalLong::of).orElse(OptionalLong.empty()),
        chance.orElse(0L));
  }

  private LocalDateTime endOfDay(LocalDateTime at) {
    return latest.contains("T") ? at : at.plusDays(1).minusMinutes(1);
  }

  /** Gives what the work throws the names of the options. */
  static <T> T named(Supplier<T> work) {
    try {
      return work.get();
    } catch (Faulty faulty) {
      throw new Faulty(faulty.faults().stream().map(PromiseOptions::named).toList());
    }
  }

  private static Fault named(Fault fault) {
    String path = fault.path();
    for (Map.Entry<String, String> one : OPTIONS.entrySet()) {
      boolean begins = path.equals(one.getKey()) || path.startsWith(one.getKey() + ",");
      path = begins ? one.getValue() + path.substring(one.getKey().length()) : path;
    }
    return new Fault(path, fault.found(), fault.right());
  }
}
