package strickle.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import strickle.book.Fault;
import strickle.book.Faulty;

/** Collects faults, so that one does not keep the others from being told. */
final class Findings {

  private final List<Fault> faults = new ArrayList<>();

  /** A refusal with one fault at the value itself. */
  static Faulty refusal(String found, String right) {
    return new Faulty(List.of(new Fault("", found, right)));
  }

  /** Notes one fault. */
  void add(Fault fault) {
    faults.add(fault);
  }

  /** Notes one fault, unless there is one at the same place already. */
  void addUnlessTold(Fault fault) {
    if (!full() && faults.stream().noneMatch(told -> told.path().equals(fault.path()))) {
      add(fault);
    }
  }

  /**
   * Does a part of the work; its faults are noted with {@code outer} put before their paths.
   *
   * @return what came of it; nothing when it was faulty
   */
  <T> Optional<T> attempt(String outer, Supplier<? extends T> part) {
    try {
      return Optional.of(part.get());
    } catch (Faulty faulty) {
      faulty.faults().forEach(fault -> add(placed(fault, outer)));
      return Optional.empty();
    }
  }

  /** Does a part of the work; its faults come out with {@code outer} put before their paths. */
  static <T> T within(String outer, Supplier<? extends T> part) {
    Findings findings = new Findings();
    Optional<T> result = findings.attempt(outer, part);
    findings.settle();
    return result.orElseThrow();
  }

  /** Does a part of the work that has a root of its own; the paths of its faults begin there. */
  static <T> T fromItsRoot(Supplier<? extends T> part) {
    try {
      return part.get();
    } catch (Faulty faulty) {
      throw new Faulty(
          faulty.faults().stream()
              .map(one -> new Fault(inner(one.path()), one.found(), one.right()))
              .toList());
    }
  }

  private static String inner(String path) {
    return path.startsWith(JsonPath.ROOT) ? path.substring(JsonPath.ROOT.length()) : path;
  }

  /** Whether so many faults are there that looking for more helps nobody. */
  boolean full() {
    return faults.size() >= Limits.FAULTS;
  }

  /** Ends the work: throws all faults together if there are any. */
  void settle() {
    if (faults.isEmpty()) {
      return;
    }
    if (full()) {
      faults.subList(Limits.FAULTS - 1, faults.size()).clear();
      add(new Fault(JsonPath.ROOT, Limits.FAULTS + " faults or more", "these put right first"));
    }
    throw new Faulty(faults);
  }

  // A book's own faults already begin at the root.
  private static Fault placed(Fault fault, String outer) {
    return fault.path().startsWith(JsonPath.ROOT) ? fault : fault.under(outer);
  }
}
