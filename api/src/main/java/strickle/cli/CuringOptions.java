package strickle.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Option;
import strickle.book.Fault;
import strickle.cure.AgeRule;
import strickle.cure.CementClass;
import strickle.cure.Stretch;
import strickle.json.CuringQuestion;

/** What {@code strickle curing} is asked, on the command line. */
final class CuringOptions {

  private static final String HOURS = "--hours";

  /** The option whose castings are calibrated by. */
  static final String RECORDS = "--records";

  private static final String AT = "--at";
  private static final String SPENT = "--spent";
  private static final String LOG = "--log";
  private static final String AGE = "--age-days";
  private static final String CEMENT = "--cement";
  private static final String CHARACTERISTIC = "--fck-mpa";

  @Option(
      names = HOURS,
      paramLabel = "HOURS",
      description = "hours at 20 °C after which castings are ready, such as a mould's setHours")
  private String hours;

  @Option(
      names = RECORDS,
      paramLabel = "FILE",
      description = "or castings that were found ready, to fit those hours to")
  private String records;

  @Option(
      names = AT,
      paramLabel = "TEMPERATURE",
      description = "a room to tell the time for; may be given several times")
  private List<String> rooms = new ArrayList<>();

  @Option(
      names = SPENT,
      paramLabel = "HOURS@TEMPERATURE",
      description = "hours a casting has had at a temperature; may be given several times")
  private List<String> spent = new ArrayList<>();

  @Option(names = LOG, paramLabel = "FILE", description = "the same, from a file")
  private String log;

  @Option(
      names = AGE,
      paramLabel = "DAYS",
      description = "an age at 20 °C to tell the strength for")
  private String age;

  @Option(
      names = CEMENT,
      paramLabel = "CLASS",
      description = "how fast the cement gains strength: R, N or S; when left out, all of them")
  private String cement;

  @Option(
      names = CHARACTERISTIC,
      paramLabel = "MPA",
      description = "characteristic strength at 28 days, to tell it for an age above 3 days")
  private String characteristic;

  /**
   * Reads the options.
   *
   * @throws strickle.book.Faulty with all that is wrong with them
   */
  CuringQuestion read(Given values, AgeRule rule) {
    Optional<Double> reference = within(values, HOURS, hours, 87_600, "hours above 0");
    List<Double> temperatures = rooms.stream().flatMap(one -> room(values, one).stream()).toList();
    List<Stretch> past = new ArrayList<>();
    spent.forEach(one -> stretch(values, one).ifPresent(past::add));
    Optional<Double> days = within(values, AGE, age, 36_500, "days above 0");
    Optional<CementClass> known = cement(values);
    Optional<Double> strength = within(values, CHARACTERISTIC, characteristic, 300, "MPa above 0");
    mustBeAQuestion(values);
    values.done();
    if (log != null) {
      past.addAll(CuringSheets.log(LOG, log));
    }
    return new CuringQuestion(
        rule,
        reference,
        records == null ? List.of() : CuringSheets.records(RECORDS, records),
        temperatures,
        past,
        days,
        known,
        strength);
  }

  private void mustBeAQuestion(Given values) {
    boolean any = Stream.of(hours, records, log, age).anyMatch(one -> one != null);
    if (!any && spent.isEmpty() && rooms.isEmpty()) {
      String right = HOURS + ", " + RECORDS + ", " + SPENT + ", " + LOG + " or " + AGE;
      values.fault(new Fault("curing", "nothing to work out", right));
    }
    values.must(
        hours == null || records == null, HOURS, hours, "either " + HOURS + " or " + RECORDS);
    values.must(
        rooms.isEmpty() || hours != null || records != null,
        AT,
        String.join(", ", rooms),
        HOURS + " or " + RECORDS + " beside it, to say what is waited for");
    values.must(
        characteristic == null || age != null || log != null || !spent.isEmpty(),
        CHARACTERISTIC,
        characteristic,
        AGE + ", " + SPENT + " or " + LOG + " beside it, to say for which age");
  }

  private static Optional<Double> within(
      Given values, String option, String text, double most, String what) {
    String right = what + ", at most " + (long) most;
    return values
        .decimal(option, text)
        .map(Number::doubleValue)
        .filter(given -> values.must(0 < given && given <= most, option, text, right));
  }

  private static Optional<Double> room(Given values, String text) {
    return CuringSheets.temperature(values, AT, text);
  }

  private static Optional<Stretch> stretch(Given values, String text) {
    String[] parts = text.split("@", -1);
    if (!values.must(
        parts.length == 2, SPENT, text, "hours and a temperature such as 6@15 or \"6@59 F\"")) {
      return Optional.empty();
    }
    return CuringSheets.stretch(values, SPENT, parts[0].strip(), SPENT, parts[1]);
  }

  private Optional<CementClass> cement(Given values) {
    Optional<CementClass> found =
        Stream.of(CementClass.values()).filter(one -> one.name().equals(cement)).findFirst();
    values.must(cement == null || found.isPresent(), CEMENT, cement, "R, N or S");
    return found;
  }
}
