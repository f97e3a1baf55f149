package strickle.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import strickle.book.Fault;
import strickle.book.Faulty;

/**
 * A thing described on the command line: its name, and values behind it, as in {@code
 * cylinder:radius=50,height=4in}.
 *
 * @param name what stands before the colon; empty when there is none
 * @param values what stands behind it, in order
 */
record Spec(String name, Map<String, String> values) {

  private static final int LONGEST = 1000;

  /**
   * Reads a name and values; the values may be left out.
   *
   * @param keys the keys it may have
   * @param right what would be right, as a clause
   * @throws Faulty with paths relative to the option
   */
  static Spec named(String text, Set<String> keys, String right) {
    int colon = text.indexOf(':');
    String name = (colon < 0 ? text : text.substring(0, colon)).strip();
    if (name.isEmpty() || name.contains("=") || text.length() > LONGEST) {
      throw new Faulty(List.of(new Fault("", shown(text), right)));
    }
    return new Spec(name, values(colon < 0 ? "" : text.substring(colon + 1), keys, right));
  }

  /** The same without a name before the values. */
  static Spec unnamed(String text, Set<String> keys, String right) {
    if (text.isBlank() || text.length() > LONGEST) {
      throw new Faulty(List.of(new Fault("", shown(text), right)));
    }
    return new Spec("", values(text, keys, right));
  }

  private static Map<String, String> values(String text, Set<String> keys, String right) {
    Map<String, String> values = new LinkedHashMap<>();
    List<Fault> faults = new ArrayList<>();
    for (String pair : text.isBlank() ? new String[0] : text.split(",", -1)) {
      int equals = pair.indexOf('=');
      String key = (equals < 0 ? pair : pair.substring(0, equals)).strip();
      if (equals < 0) {
        faults.add(new Fault("", shown(pair), right));
      } else if (!keys.contains(key)) {
        faults.add(new Fault("", shown(key), "one of " + String.join(", ", keys)));
      } else if (values.putIfAbsent(key, pair.substring(equals + 1).strip()) != null) {
        faults.add(new Fault("." + key, "two values", "one"));
      }
    }
    if (!faults.isEmpty()) {
      throw new Faulty(faults);
    }
    return values;
  }

  /** A value by its key; empty when it was not given. */
  Optional<String> value(String key) {
    return Optional.ofNullable(values.get(key));
  }

  private static String shown(String text) {
    return '"' + (text.length() > 80 ? text.substring(0, 80) + "…" : text) + '"';
  }
}
