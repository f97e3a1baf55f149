package strickle.cli;

import picocli.CommandLine.Option;

/** The option {@code --units}: what units the text of an answer is in. */
final class UnitsOption {

  private static final String NAME = "--units";
  private static final String METRIC = "metric";
  private static final String US = "us";

  @Option(
      names = NAME,
      paramLabel = "SYSTEM",
      description = "units of the text: metric, or us for US customary; metric when left out")
  private String given = METRIC;

  /** The measures asked for; a wrong word is noted. */
  Measures read(Given values) {
    values.must(given.equals(METRIC) || given.equals(US), NAME, given, "metric or us");
    return new Measures(given.equals(US));
  }
}
