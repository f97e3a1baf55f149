package strickle.book;

import java.util.List;
import java.util.stream.Collectors;

/** Thrown when something given by a person cannot be used; carries every fault, not the first. */
public final class Faulty extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  private final transient List<Fault> faults;

  /**
   * Carries the faults found.
   *
   * @param faults at least one
   */
  public Faulty(List<Fault> faults) {
    super(faults.stream().map(Fault::toString).collect(Collectors.joining("\n")));
    this.faults = List.copyOf(faults);
  }

  /** Every fault found, in the order of the input. */
  public List<Fault> faults() {
    return faults;
  }
}
