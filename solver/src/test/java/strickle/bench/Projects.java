package strickle.bench;

import java.nio.file.Path;
import java.util.List;

/** Projects with scarce resources (RCPSP), measured against critical path and best known. */
final class Projects implements Benchmark {

  static final String ENDING = ".sm";

  private static final String CRITICAL_PATH = "cpm_lb";
  private static final String BOUND = "lb";
  private static final String BEST = "ub";

  private final Table known;
  private final List<Instance> instances;

  /** Reads them; the table has columns instance, cpm_lb, lb and ub. */
  Projects(List<Path> files, Lines bestKnown) {
    known = Table.read(bestKnown, List.of(CRITICAL_PATH, BOUND, BEST));
    instances = Folder.read(files, this::instance);
  }

  private Instance instance(Path file) {
    String name = file.getFileName().toString();
    return new Instance(
        name, ProjectFile.read(Lines.of(file)), known.value(name, BOUND), known.value(name, BEST));
  }

  @Override
  public List<Instance> instances() {
    return instances;
  }

  @Override
  public String summary(List<Result> results) {
    return "avgOverCpm="
        + Benchmark.average(results, one -> known.value(one.instance().name(), CRITICAL_PATH))
        + " avgOverBest="
        + Benchmark.average(results, one -> one.instance().best())
        + " atBest="
        + Benchmark.atBest(results);
  }
}
