package strickle.web;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A module taken apart, so that it can be the body of a function.
 *
 * @param name of its file
 * @param needed the files of the modules that it names, in its order
 * @param asked what it imports
 * @param given what it exports of its own
 * @param passed what it exports of others
 * @param body the rest of its text: no import and no export is left in it
 */
record ModuleText(
    String name,
    Set<String> needed,
    List<Asked> asked,
    List<Given> given,
    List<Passed> passed,
    String body) {

  /** What stands for all that a module exports. */
  static final String ALL = "*";

  /**
   * Something imported.
   *
   * @param from the file of the module that gives it
   * @param name how it is called there, or {@link #ALL} for everything as one object
   * @param here how it is called in the module that imports it
   */
  record Asked(String from, String name, String here) {}

  /**
   * Something exported.
   *
   * @param name how it is called by others
   * @param here how it is called in the module itself
   */
  record Given(String name, String here) {}

  /**
   * Something of another module that is exported again.
   *
   * @param from the file of the module that gives it
   * @param taken how it is called there, or {@link #ALL}
   * @param name how it is called by others; of {@link #ALL} nothing is called otherwise
   */
  record Passed(String from, String taken, String name) {}

  /** A module. */
  ModuleText {
    needed = Collections.unmodifiableSet(new LinkedHashSet<>(needed));
    asked = List.copyOf(asked);
    given = List.copyOf(given);
    passed = List.copyOf(passed);
  }
}
