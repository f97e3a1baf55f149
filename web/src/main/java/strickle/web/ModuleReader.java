package strickle.web;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import strickle.web.ModuleText.Asked;
import strickle.web.ModuleText.Given;
import strickle.web.ModuleText.Passed;

/**
 * Takes a module apart. It knows the forms of import and export that the files of this page use,
 * and refuses every other: a form misread would be a page that does something else.
 */
final class ModuleReader {

  /** What names begin with that packs make up; no module may use one. */
  static final String OWN = "module$";

  /** A name of a list, and what stands behind "as"; the same again when nothing does. */
  private record Listed(String first, String last) {}

  private static final String DEFAULT_HERE = OWN + "default";
  private static final String SOURCE_MAP = "//# sourceMappingURL=";

  private final String name;
  private final String text;
  private final UnaryOperator<String> resolve;
  private final Set<String> needed = new LinkedHashSet<>();
  private final List<Asked> asked = new ArrayList<>();
  private final List<Given> given = new ArrayList<>();
  private final List<Passed> passed = new ArrayList<>();
  private final StringBuilder body = new StringBuilder();
  private int copied;

  private ModuleReader(String name, String text, UnaryOperator<String> resolve) {
    this.name = name;
    this.text = text;
    this.resolve = resolve;
  }

  /**
   * Reads one.
   *
   * @param name of its file
   * @param text what the file holds
   * @param resolve from what a module names to the file it means
   * @throws IllegalStateException if it cannot be taken apart, with the file and what was found
   */
  static ModuleText read(String name, String text, UnaryOperator<String> resolve) {
    return new ModuleReader(name, withoutSourceMap(text), resolve).read();
  }

  // Its address, on the last line, would mean the pack.
  private static String withoutSourceMap(String text) {
    int line = text.stripTrailing().lastIndexOf('\n') + 1;
    return text.startsWith(SOURCE_MAP, line) ? text.substring(0, line) : text;
  }

  private ModuleText read() {
    int taken = text.indexOf(OWN);
    if (taken >= 0) {
      throw unknown(taken);
    }
    Code.words(name, text).forEach(this::take);
    body.append(text, copied, text.length());
    return new ModuleText(name, needed, asked, given, passed, body.toString());
  }

  private void take(Code.Word word) {
    int at = word.at();
    boolean isOutermost = word.depth() == 0;
    switch (word.text()) {
      case "import" -> takeImport(at, isOutermost);
      case "export" -> {
        if (isOutermost) {
          takeExport(at);
        }
      }
      default -> {
        if (isOutermost) {
          throw unknown(at);
        }
      }
    }
  }

  private void takeImport(int at, boolean isOutermost) {
    Matcher later = at(ModuleForms.LATER, at);
    Matcher now = at(ModuleForms.IMPORT, at);
    if (later.lookingAt()) {
      String folder = Imports.beside(name, later.group(1));
      replace(later.start(1), later.end(1), "../" + folder);
    } else if (isOutermost && now.lookingAt()) {
      ask(now.group(1), need(now.group(3)), at);
      replace(at, now.end(), "");
    } else if (isOutermost || !at(ModuleForms.KEY, at).lookingAt()) {
      throw unknown(at);
    }
  }

  private void ask(String names, String from, int at) {
    Matcher imported = ModuleForms.IMPORTED.matcher(names);
    if (!imported.matches()) {
      throw unknown(at);
    }
    if (imported.group(1) != null) {
      asked.add(new Asked(from, "default", imported.group(1)));
    }
    if (imported.group(2) != null) {
      listed(imported.group(2), at)
          .forEach(each -> asked.add(new Asked(from, each.first(), each.last())));
    }
    if (imported.group(3) != null) {
      asked.add(new Asked(from, ModuleText.ALL, imported.group(3)));
    }
  }

  private void takeExport(int at) {
    if (!passes(at) && !lists(at) && !declares(at) && !isDefault(at)) {
      throw unknown(at);
    }
  }

  private boolean passes(int at) {
    Matcher form = at(ModuleForms.PASSED, at);
    boolean is = form.lookingAt();
    if (is) {
      pass(form.group(1), need(form.group(3)), at);
      replace(at, form.end(), "");
    }
    return is;
  }

  private boolean lists(int at) {
    Matcher form = at(ModuleForms.LISTED, at);
    boolean is = form.lookingAt();
    if (is) {
      listed(form.group(1), at).forEach(each -> given.add(new Given(each.last(), each.first())));
      replace(at, form.end(), "");
    }
    return is;
  }

  private boolean declares(int at) {
    Matcher form = at(ModuleForms.DECLARED, at);
    boolean is = form.lookingAt();
    if (is) {
      given.add(new Given(form.group(1), form.group(1)));
      replace(at, form.end(), "");
    }
    return is;
  }

  private boolean isDefault(int at) {
    Matcher form = at(ModuleForms.DEFAULT, at);
    boolean is = form.lookingAt();
    if (is) {
      given.add(new Given("default", DEFAULT_HERE));
      replace(at, form.end(), "const " + DEFAULT_HERE + " = ");
    }
    return is;
  }

  private void pass(String names, String from, int at) {
    if (names.equals(ModuleText.ALL)) {
      passed.add(new Passed(from, ModuleText.ALL, ModuleText.ALL));
    } else {
      listed(names.substring(1, names.length() - 1), at)
          .forEach(each -> passed.add(new Passed(from, each.first(), each.last())));
    }
  }

  private List<Listed> listed(String names, int at) {
    List<Listed> listed = new ArrayList<>();
    for (String each : names.split(",", -1)) {
      Matcher found = ModuleForms.LISTED_NAME.matcher(each.strip());
      if (found.matches()) {
        String first = found.group(1);
        listed.add(new Listed(first, Optional.ofNullable(found.group(2)).orElse(first)));
      } else if (!each.isBlank()) {
        throw unknown(at);
      }
    }
    return listed;
  }

  private String need(String specifier) {
    String file = resolve.apply(specifier);
    needed.add(file);
    return file;
  }

  private Matcher at(Pattern form, int at) {
    return form.matcher(text).region(at, text.length());
  }

  private void replace(int from, int to, String with) {
    body.append(text, copied, from).append(with);
    copied = to;
  }

  private IllegalStateException unknown(int at) {
    String found = text.substring(at, Math.min(text.length(), at + 60)).lines().findFirst().get();
    return new IllegalStateException(
        name + " cannot be put into a pack: no form that is known is \"" + found + "\"");
  }
}
