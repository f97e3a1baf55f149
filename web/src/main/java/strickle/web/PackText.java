package strickle.web;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import strickle.web.ModuleText.Asked;
import strickle.web.ModuleText.Passed;

/**
 * Writes packs: each module is a function that is called once, where it stands, and returns what
 * the module exports. So its names are its own, and what it needs stands before it.
 */
final class PackText {

  private final Imports imports;
  private final Map<String, String> variables = new HashMap<>();
  private final Map<String, Map<String, String>> exports = new HashMap<>();

  /**
   * A writer for all packs of a page.
   *
   * @param imports its modules
   */
  PackText(Imports imports) {
    this.imports = imports;
  }

  /**
   * The pack that others build on: it exports its modules, each as one object.
   *
   * @param modules in the order of evaluation
   */
  String core(Set<String> modules) {
    String written = written(modules);
    return written + "export {" + variables(modules) + "};\n";
  }

  /**
   * A pack that takes from the core what it does not hold itself.
   *
   * @param modules in the order of evaluation
   */
  String room(Set<String> modules) {
    Set<String> others = new LinkedHashSet<>();
    modules.forEach(name -> others.addAll(imports.module(name).needed()));
    others.removeAll(modules);
    String taken = "import {" + variables(others) + "} from './core.js';\n";
    return taken + written(modules);
  }

  private String written(Set<String> modules) {
    return modules.stream().map(this::module).collect(Collectors.joining());
  }

  private String variables(Set<String> modules) {
    return modules.stream().map(this::variable).collect(Collectors.joining(", "));
  }

  private String variable(String module) {
    return variables.computeIfAbsent(module, none -> ModuleReader.OWN + variables.size());
  }

  private String module(String name) {
    ModuleText module = imports.module(name);
    return "// "
        + name
        + "\nconst "
        + variable(name)
        + " = (() => {\n"
        + module.asked().stream().map(asked -> taken(name, asked)).collect(Collectors.joining())
        + module.body()
        + "\nreturn {"
        + exports(name).entrySet().stream()
            .map(each -> each.getKey() + ": " + each.getValue())
            .collect(Collectors.joining(", "))
        + "};\n})();\n";
  }

  private String taken(String name, Asked asked) {
    String from = variable(asked.from());
    if (asked.name().equals(ModuleText.ALL)) {
      return "const " + asked.here() + " = " + from + ";\n";
    }
    return "const "
        + asked.here()
        + " = "
        + from
        + "."
        + known(name, asked.from(), asked.name())
        + ";\n";
  }

  // What is asked for and not given would be undefined where a browser would refuse the module.
  private String known(String name, String from, String asked) {
    if (!exports(from).containsKey(asked)) {
      throw new IllegalStateException(name + " asks " + from + " for " + asked + ": not there");
    }
    return asked;
  }

  /** What a module exports, and how each is written within its function. */
  private Map<String, String> exports(String name) {
    Map<String, String> known = exports.get(name);
    if (known == null) {
      known = new LinkedHashMap<>();
      ModuleText module = imports.module(name);
      for (ModuleText.Given given : module.given()) {
        put(name, known, given.name(), given.here());
      }
      for (Passed passed : module.passed()) {
        pass(name, known, passed);
      }
      exports.put(name, known);
    }
    return known;
  }

  private void pass(String name, Map<String, String> exports, Passed passed) {
    String from = variable(passed.from()) + ".";
    if (!passed.taken().equals(ModuleText.ALL)) {
      put(name, exports, passed.name(), from + known(name, passed.from(), passed.taken()));
      return;
    }
    exports(passed.from()).keySet().stream()
        .filter(each -> !each.equals("default"))
        .forEach(each -> put(name, exports, each, from + each));
  }

  private static void put(String name, Map<String, String> exports, String given, String here) {
    if (exports.put(given, here) != null) {
      throw new IllegalStateException(name + " exports " + given + " twice");
    }
  }
}
