package strickle.plan;

import java.time.OffsetDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * One attended task.
 *
 * @param id the task's own name, such as {@code L1/pour} or {@code L1-1/step-2}
 * @param kind pour, demould or step
 * @param lot the lot poured; for a demould or a step the lot its run was poured from
 * @param run the run taken out or worked on; empty for a pour, which is of a whole lot
 * @param step which step of the route, counted from 1; empty for a pour and a demould
 * @param person id of who does it
 * @param spells when, in order of time; at least one
 * @param begun whether somebody is at it as the plan is laid out; its end is then still to come
 * @param done whether it is over, so that person and spells are what really was
 */
public record Task(
    String id,
    TaskKind kind,
    String lot,
    Optional<String> run,
    OptionalInt step,
    String person,
    List<Spell> spells,
    boolean begun,
    boolean done) {

  /**
   * Refuses what no task can be.
   *
   * @throws strickle.book.Faulty when a name is blank, a run or a step number is given to a kind of
   *     task that has none or missing from one that has, or there is no spell
   */
  public Task {
    Flaws flaws = new Flaws().id(".id", id).id(".lot", lot).id(".person", person);
    Optional<String> ofRun = flaws.optional(".run", run);
    ofRun.ifPresent(name -> flaws.id(".run", name));
    flaws.given(".step", step, "a number or none");
    OptionalInt ofStep = step == null ? OptionalInt.empty() : step;
    ofStep.ifPresent(number -> flaws.atLeast(1, ".step", number));
    if (flaws.given(".kind", kind, "pour, demould or step")) {
      belongs(flaws, ".run", ofRun.isPresent(), kind != TaskKind.POUR);
      belongs(flaws, ".step", ofStep.isPresent(), kind == TaskKind.STEP);
    }
    boolean none = spells != null && spells.isEmpty();
    flaws.when(none, ".spells", "an empty list", "at least one spell");
    spells = flaws.list(".spells", spells);
    flaws.when(begun && done, ".begun", "true, and done as well", "one of the two, or neither");
    flaws.raise();
  }

  /** A task that is still to come. */
  public Task(
      String id,
      TaskKind kind,
      String lot,
      Optional<String> run,
      OptionalInt step,
      String person,
      List<Spell> spells) {
    this(id, kind, lot, run, step, person, spells, false, false);
  }

  /** Whether it has at least begun, so that it can be moved no more. */
  public boolean isHistory() {
    return begun || done;
  }

  /** When the first spell begins. */
  public OffsetDateTime start() {
    return spells.stream().map(Spell::start).min(Comparator.naturalOrder()).orElseThrow();
  }

  /** When the last spell ends, exclusive. */
  public OffsetDateTime end() {
    return spells.stream().map(Spell::end).max(Comparator.naturalOrder()).orElseThrow();
  }

  /** Minutes worked: the spells without what lies between them. */
  public long minutes() {
    return spells.stream().mapToLong(Spell::minutes).sum();
  }

  private static void belongs(Flaws flaws, String path, boolean given, boolean wanted) {
    String found = given ? "one" : "nothing";
    String right = (wanted ? "one" : "nothing") + ", for this kind of task";
    flaws.when(given != wanted, path, found, right);
  }
}
