package strickle.bench;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import strickle.book.Fault;
import strickle.book.Faulty;

/**
 * The words of a command line: options with a value each, and places. What is wrong is gathered and
 * told at once by {@link #done}; a value that is wrong is some value that will not be used.
 */
final class Arguments {

  private final List<String> places = new ArrayList<>();
  private final Map<String, String> options = new HashMap<>();
  private final List<Fault> faults = new ArrayList<>();

  /** Parts the words into options, of which there may be only those known, and places. */
  Arguments(List<String> words, Set<String> known) {
    for (int i = 0; i < words.size(); i++) {
      String word = words.get(i);
      if (word.startsWith("--")) {
        boolean valued = i + 1 < words.size() && !words.get(i + 1).startsWith("--");
        option(word, valued ? Optional.of(words.get(++i)) : Optional.empty(), known);
      } else {
        places.add(word);
      }
    }
  }

  private void option(String name, Optional<String> value, Set<String> known) {
    if (!known.contains(name)) {
      String right = String.join(", ", known.stream().sorted().toList());
      fault(name, "an option that is not known", right);
    } else if (value.isEmpty()) {
      fault(name, "nothing after it", "its value");
    } else if (options.put(name, value.get()) != null) {
      fault(name, "it more than once", "each option once");
    }
  }

  /** The one place there has to be. */
  String place(String name) {
    if (places.size() != 1) {
      fault(name, places.isEmpty() ? "nothing" : String.join(" ", places), "just one");
    }
    return places.isEmpty() ? "" : places.get(0);
  }

  /** Refuses any place. */
  void noPlace() {
    places.forEach(place -> fault("command line", '"' + place + '"', "options only"));
  }

  /** An option that may be left out. */
  Optional<String> text(String option) {
    return Optional.ofNullable(options.get(option));
  }

  /** An option that has to be given. */
  String needed(String option) {
    if (text(option).isEmpty() && faults.stream().noneMatch(fault -> fault.path().equals(option))) {
      fault(option, "nothing", "a value");
    }
    return text(option).orElse("");
  }

  /** A whole number between two, both allowed; another when the option is left out. */
  long whole(String option, long least, long most, long otherwise) {
    return text(option).map(text -> whole(option, text, least, most)).orElse(otherwise);
  }

  /** One or more whole numbers with commas between, each between two, both allowed. */
  List<Long> wholes(String option, long least, long most) {
    return Stream.of(Lines.cells(needed(option), ","))
        .filter(text -> options.containsKey(option))
        .map(text -> whole(option, text, least, most))
        .toList();
  }

  private long whole(String option, String text, long least, long most) {
    try {
      long number = Long.parseLong(text);
      if (number >= least && number <= most) {
        return number;
      }
    } catch (NumberFormatException none) {
      // Told below, like a number out of range.
    }
    fault(option, '"' + text + '"', "a whole number from " + least + " to " + most);
    return least;
  }

  private void fault(String path, String found, String right) {
    faults.add(new Fault(path, found, right));
  }

  /**
   * Ends the reading.
   *
   * @throws Faulty when anything is wrong
   */
  void done() {
    if (!faults.isEmpty()) {
      throw new Faulty(faults);
    }
  }
}
