package strickle.bench;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Job shops, measured against their best known makespan. */
final class JobShops implements Benchmark {

  static final String ENDING = ".jss";

  private static final String BOUND = "lb";
  private static final String BEST = "ub";

  private final Table known;
  private final List<Instance> instances;

  /** Reads them; the table has columns instance, lb and ub. */
  JobShops(List<Path> files, Lines bestKnown) {
    known = Table.read(bestKnown, List.of(BOUND, BEST));
    instances = Folder.read(files, this::instance);
  }

  private Instance instance(Path file) {
    String fileName = file.getFileName().toString();
    String name = fileName.substring(0, fileName.length() - ENDING.length());
    return new Instance(
        name, JobShopFile.read(Lines.of(file)), known.value(name, BOUND), known.value(name, BEST));
  }

  @Override
  public List<Instance> instances() {
    return instances;
  }

  @Override
  public Optional<String> line(Result result) {
    long best = result.instance().best();
    return Optional.of(
        "instance="
            + result.instance().name()
            + " found="
            + result.found()
            + " best="
            + best
            + " overBest="
            + Benchmark.decimals(result.percentOver(best)));
  }

  @Override
  public String summary(List<Result> results) {
    return "avgOverBest="
        + Benchmark.average(results, one -> one.instance().best())
        + " atBest="
        + Benchmark.atBest(results);
  }
}
