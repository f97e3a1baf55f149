package strickle.bench;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Projects with least and most lags (RCPSP/max), measured against critical path and best known;
 * some have no schedule.
 */
final class LaggedProjects implements Benchmark {

  static final String ENDING = ".sch";

  private final Map<Path, Optima> optima = new HashMap<>();
  private final Map<Instance, Integer> criticalPaths = new HashMap<>();
  private final List<Instance> instances;

  /** Reads them; what is proved stands beside them, in optimum/optimum.csv. */
  LaggedProjects(List<Path> files) {
    instances = Folder.read(files, this::instance);
  }

  private Instance instance(Path file) {
    LagFile project = LagFile.read(Lines.of(file));
    Path folder = file.resolveSibling("optimum");
    Optima known =
        optima.computeIfAbsent(
            folder, there -> Optima.read(Lines.of(there.resolve("optimum.csv"))));
    String name = file.getFileName().toString();
    Optima.Optimum optimum = known.of(name);
    Instance instance = new Instance(name, project.shop(), optimum.bound(), optimum.best());
    criticalPaths.put(instance, project.criticalPath());
    return instance;
  }

  @Override
  public List<Instance> instances() {
    return instances;
  }

  @Override
  public String summary(List<Result> results) {
    List<Result> feasible =
        results.stream().filter(one -> one.instance().best() != Result.NONE).toList();
    List<Result> others =
        results.stream().filter(one -> one.instance().best() == Result.NONE).toList();
    long proved =
        feasible.stream().filter(one -> one.instance().bound() == one.instance().best()).count();
    return "avgOverCpm="
        + Benchmark.average(feasible, one -> criticalPaths.get(one.instance()))
        + " avgOverBest="
        + Benchmark.average(feasible, one -> one.instance().best())
        + " atBest="
        + Benchmark.atBest(feasible)
        + " solved="
        + feasible.stream().filter(Result::solved).count()
        + "/"
        + feasible.size()
        + " proved="
        + proved
        + " infeasible="
        + others.size()
        + " claimed="
        + others.stream().filter(Result::solved).count();
  }
}
