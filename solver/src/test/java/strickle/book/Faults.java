package strickle.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.function.Executable;

/** Catches the faults that something refuses its input with. */
public final class Faults {

  private Faults() {}

  /** Every fault told; fails when nothing is refused. */
  public static List<Fault> of(Executable action) {
    return assertThrows(Faulty.class, action).faults();
  }

  /** The only fault told; fails when there are others. */
  public static Fault only(Executable action) {
    List<Fault> faults = of(action);
    assertEquals(1, faults.size(), faults::toString);
    return faults.get(0);
  }

  /** Where the faults are. */
  public static List<String> paths(Executable action) {
    return of(action).stream().map(Fault::path).toList();
  }
}
