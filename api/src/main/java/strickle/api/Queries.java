package strickle.api;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.json.contract.Operation;
import strickle.json.contract.Parameter;

/** What stands after the question mark of a request. */
final class Queries {

  /** Whoever sends more faults than that gets no answer many times as long as the request. */
  private static final int MOST_TOLD = 20;

  private Queries() {}

  /**
   * Refuses what an operation does not know: who has mistyped a name would take the answer for
   * another.
   *
   * @param given the values by their names, as they were written
   * @throws Refusal with the names that are unknown or stand there twice, the first twenty of them
   */
  static void check(Map<String, List<String>> given, Operation operation) {
    List<String> known =
        operation.parameters().stream()
            .filter(parameter -> parameter.in() == Parameter.In.QUERY)
            .map(Parameter::name)
            .toList();
    List<Fault> faults = new ArrayList<>();
    given.forEach(
        (name, values) -> {
          if (!known.contains(name)) {
            faults.add(new Fault(Call.cut(name), "an unknown parameter", right(known)));
          } else if (values.size() > 1) {
            faults.add(new Fault(name, values.size() + " values", "one value"));
          }
        });
    if (!faults.isEmpty()) {
      List<Fault> told = faults.subList(0, Math.min(faults.size(), MOST_TOLD));
      throw new Refusal(Problem.of(Status.MALFORMED, "Wrong parameter", told));
    }
  }

  private static String right(List<String> known) {
    return known.isEmpty() ? "no parameters here" : "one of " + String.join(", ", known);
  }

  /**
   * Tells faults of what was made of parameters by the names that stand in the request.
   *
   * @param names of the parameters, by the paths under which their values are told otherwise
   */
  static <T> T told(Map<String, String> names, Supplier<T> work) {
    try {
      return work.get();
    } catch (Faulty faulty) {
      throw new Faulty(
          faulty.faults().stream()
              .map(
                  one ->
                      new Fault(
                          names.getOrDefault(one.path(), one.path()), one.found(), one.right()))
              .toList());
    }
  }
}
