package strickle.bench;

import java.util.ArrayList;
import java.util.List;

/** One machine with weights and due dates, measured against the best known weighted tardiness. */
final class OneMachines implements Benchmark {

  private final List<Instance> instances = new ArrayList<>();

  /** Reads them; the best known are whole numbers, one for each, in the same order. */
  OneMachines(Lines problems, Lines bestKnown) {
    int[] best = bestKnown.allNumbers();
    var shops = TardinessFile.read(problems, best.length);
    for (int i = 0; i < best.length; i++) {
      instances.add(new Instance("number " + (i + 1), shops.get(i), 0, best[i]));
    }
  }

  @Override
  public List<Instance> instances() {
    return instances;
  }

  @Override
  public String summary(List<Result> results) {
    List<Result> zero = results.stream().filter(one -> one.instance().best() == 0).toList();
    return "optimal="
        + Benchmark.atBest(results)
        + "/"
        + results.size()
        + " avgOverBest="
        + Benchmark.average(results, one -> one.instance().best())
        + " avgOf="
        + (results.size() - zero.size())
        + " zeroMissed="
        + (zero.size() - Benchmark.atBest(zero));
  }
}
