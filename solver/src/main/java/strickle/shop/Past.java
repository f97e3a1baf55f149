package strickle.shop;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What another schedule did, step by step: the first claims of a lot, or a later claim of all jobs
 * of a run, each with the places it had.
 */
final class Past {

  /**
   * Claims that were placed in one go.
   *
   * @param claims their indices, of all jobs
   * @param parts the places they had, run by run
   */
  record Step(List<Integer> claims, List<Part> parts) {

    int start() {
      return parts.get(0).places().get(0).start();
    }
  }

  /**
   * The places that the jobs of a run had.
   *
   * @param job one of the jobs
   * @param local the first activity, counted from 0 within the kind's chain
   * @param places of that activity and those after it
   */
  record Part(int job, int local, List<Schedule.Placed> places) {}

  private final Tables tables;
  private final Claims claims;
  private final int[] nextJob;
  private final List<Step> steps = new ArrayList<>();

  private Past(Tables tables, Claims claims) {
    this.tables = tables;
    this.claims = claims;
    this.nextJob = tables.jobFirst.clone();
  }

  /** The steps of another schedule's lots in the order of their starts. */
  static List<Step> of(Tables tables, Claims claims, List<Schedule.Lot> lots) {
    Past past = new Past(tables, claims);
    // Settled lots take the first jobs of their kinds, so they have to be read first.
    Comparator<Schedule.Lot> settledFirst = Comparator.comparing(lot -> !past.isSettled(lot));
    lots.stream()
        .sorted(settledFirst.thenComparingInt(lot -> lot.first().start()))
        .forEach(past::read);
    return past.steps.stream()
        .filter(step -> !step.claims().isEmpty())
        .sorted(Comparator.comparingInt(Step::start))
        .toList();
  }

  private boolean isSettled(Schedule.Lot lot) {
    return tables.shop.fixed().stream()
        .anyMatch(
            fixed ->
                fixed.start() == lot.first().start() && fixed.worker() == lot.first().worker());
  }

  private void read(Schedule.Lot lot) {
    List<Integer> firsts = new ArrayList<>();
    List<Part> parts = new ArrayList<>();
    for (Schedule.Run run : lot.runs()) {
      int job = nextJob[run.kind()];
      int end = Math.min(job + run.jobs(), tables.jobFirst[run.kind() + 1]);
      nextJob[run.kind()] = end;
      if (job < end) {
        firsts.addAll(claimsOf(job, end, 0));
        parts.add(new Part(job, 0, places(lot, run, 0)));
        addLater(lot, run, job, end);
      }
    }
    if (!parts.isEmpty()) {
      steps.add(new Step(firsts, parts));
    }
  }

  private void addLater(Schedule.Lot lot, Schedule.Run run, int job, int end) {
    for (int part = 1; part < tables.segments[run.kind()]; part++) {
      int local = tables.firstOfSegment(run.kind(), part);
      Part only = new Part(job, local, places(lot, run, part));
      steps.add(new Step(claimsOf(job, end, part), List.of(only)));
    }
  }

  private List<Integer> claimsOf(int job, int end, int part) {
    return IntStream.range(job, end)
        .map(one -> claims.of(one, part))
        .filter(claim -> claim >= 0)
        .boxed()
        .toList();
  }

  private List<Schedule.Placed> places(Schedule.Lot lot, Schedule.Run run, int part) {
    int kind = run.kind();
    boolean last = part + 1 == tables.segments[kind];
    int from = tables.firstOfSegment(kind, part);
    int to = last ? tables.size[kind] : tables.firstOfSegment(kind, part + 1);
    return Stream.concat(Stream.of(lot.first()), run.rest().stream()).toList().subList(from, to);
  }
}
