package strickle.cli;

import java.util.Map;
import java.util.function.Supplier;
import strickle.book.Fault;
import strickle.book.Faulty;

/** Tells the faults of a request by the options of the command line. */
final class OptionNames {

  private OptionNames() {}

  /**
   * What something gives; its faults are told under the names of options.
   *
   * @param options the option of each path of a request; other paths, such as those of a book, stay
   */
  static <T> T told(Map<String, String> options, Supplier<T> asked) {
    try {
      return asked.get();
    } catch (Faulty faulty) {
      throw new Faulty(faulty.faults().stream().map(fault -> named(options, fault)).toList());
    }
  }

  private static Fault named(Map<String, String> options, Fault fault) {
    String path = options.getOrDefault(fault.path(), fault.path());
    return new Fault(path, fault.found(), fault.right());
  }
}
