package strickle.plan.replan;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import strickle.book.Fault;
import strickle.book.Faulty;

/**
 * One thing that has happened. Times are local to the studio, to the minute. Which parts belong to
 * it depends on its kind; the others are empty.
 *
 * @param kind what has happened
 * @param lot poured: which lot of the plan
 * @param run demoulded, step, scrapped: which run of the plan
 * @param step step: which step of the route, counted from 1
 * @param person poured, demoulded, step: id of who did it; away, back: of who is away
 * @param start poured, demoulded, step: when they began
 * @param end poured, demoulded, step: when they were done; empty while they are at it
 * @param pieces scrapped: how many pieces of the run are lost in all, 1 or more
 * @param form broken, mended: id of the form
 * @param count broken, mended: how many units of it, 1 or more
 * @param from away: the first minute away; broken: since when; back, mended: from when on
 * @param to away: the first minute back; broken: from when on it is mended or replaced, if that is
 *     known
 */
public record Happening(
    HappeningKind kind,
    Optional<String> lot,
    Optional<String> run,
    OptionalInt step,
    Optional<String> person,
    Optional<LocalDateTime> start,
    Optional<LocalDateTime> end,
    OptionalInt pieces,
    Optional<String> form,
    OptionalInt count,
    Optional<LocalDateTime> from,
    Optional<LocalDateTime> to) {

  private static final Set<HappeningKind> TASKS =
      Set.of(HappeningKind.POURED, HappeningKind.DEMOULDED, HappeningKind.STEP);

  /**
   * Refuses parts that are missing or do not belong to the kind, and times in the wrong order.
   *
   * @throws Faulty with every fault, paths relative to the record
   */
  public Happening {
    Parts parts = new Parts(kind);
    parts.of(".lot", lot.isPresent(), kind == HappeningKind.POURED);
    boolean ofRun = isTask(kind) && kind != HappeningKind.POURED;
    parts.of(".run", run.isPresent(), ofRun || kind == HappeningKind.SCRAPPED);
    parts.of(".step", step.isPresent(), kind == HappeningKind.STEP);
    boolean absence = kind == HappeningKind.AWAY || kind == HappeningKind.BACK;
    parts.of(".person", person.isPresent(), isTask(kind) || absence);
    parts.of(".start", start.isPresent(), isTask(kind));
    parts.of(".end", end.isPresent(), end.isPresent() && isTask(kind));
    parts.of(".pieces", pieces.isPresent(), kind == HappeningKind.SCRAPPED);
    boolean breakage = kind == HappeningKind.BROKEN || kind == HappeningKind.MENDED;
    parts.of(".form", form.isPresent(), breakage);
    parts.of(".count", count.isPresent(), breakage);
    parts.of(".from", from.isPresent(), absence || breakage);
    boolean untilKnown = to.isPresent() && kind == HappeningKind.BROKEN;
    parts.of(".to", to.isPresent(), untilKnown || kind == HappeningKind.AWAY);
    parts.atLeastOne(".step", step);
    parts.atLeastOne(".pieces", pieces);
    parts.atLeastOne(".count", count);
    parts.inOrder(".end", start, end);
    parts.inOrder(".to", from, to);
    parts.done();
  }

  /** Whether it is about a task of the plan. */
  public boolean isTask() {
    return isTask(kind);
  }

  private static boolean isTask(HappeningKind kind) {
    return kind != null && TASKS.contains(kind);
  }

  /** Id of the task of the plan it is about; of a task only. */
  public String task() {
    return switch (kind) {
      case POURED -> lot.orElseThrow() + "/pour";
      case DEMOULDED -> run.orElseThrow() + "/demould";
      case STEP -> run.orElseThrow() + "/step-" + step.orElseThrow();
      case SCRAPPED, AWAY, BROKEN, BACK, MENDED ->
          throw new IllegalStateException("no task: " + this);
    };
  }

  /** What is wrong with the parts of one happening. */
  private static final class Parts {

    private final List<Fault> faults = new ArrayList<>();
    private final String kind;

    Parts(HappeningKind kind) {
      this.kind = kind == null ? "" : kind.name().toLowerCase(Locale.ROOT);
      if (kind == null) {
        faults.add(new Fault(".kind", "nothing", "a kind such as \"poured\""));
      }
    }

    void of(String path, boolean given, boolean wanted) {
      if (given != wanted && !kind.isEmpty()) {
        String found = given ? "one" : "nothing";
        String right = (wanted ? "one, as it is " : "nothing, as it is ") + "\"" + kind + "\"";
        faults.add(new Fault(path, found, right));
      }
    }

    void atLeastOne(String path, OptionalInt number) {
      if (number.orElse(1) < 1) {
        faults.add(new Fault(path, "" + number.getAsInt(), "a whole number, 1 or more"));
      }
    }

    void inOrder(String path, Optional<LocalDateTime> first, Optional<LocalDateTime> second) {
      if (first.isPresent() && second.isPresent() && !first.get().isBefore(second.get())) {
        String right = "a time after " + first.get();
        faults.add(new Fault(path, second.get().toString(), right));
      }
    }

    void done() {
      if (!faults.isEmpty()) {
        throw new Faulty(faults);
      }
    }
  }
}
