package strickle.web;

import java.util.regex.Pattern;

/** The forms of import and export that the files of this page use (ECMA-262, 16.2.2 and 16.2.3). */
final class ModuleForms {

  private static final String FROM = "([\"'])([^\"'\\n]+)\\2[ \\t]*;?";
  private static final String NAME = "[\\w$]+";

  /** An import that holds at once: what is imported, the quote, from where. */
  static final Pattern IMPORT =
      Pattern.compile("import\\b\\s*([^\"'`;()]*?)\\s*(?:\\bfrom\\s*)?" + FROM);

  /** What stands between the words import and from: a default, a list, a name for all. */
  static final Pattern IMPORTED =
      Pattern.compile(
          "(?:(" + NAME + ")\\s*,?\\s*)?(?:\\{([^}]*)\\}|\\*\\s*as\\s+(" + NAME + "))?");

  /** What is exported of another module: a list or a star, the quote, from where. */
  static final Pattern PASSED = Pattern.compile("export\\s*(\\{[^}]*\\}|\\*)\\s*from\\s*" + FROM);

  /** A list of what is exported. */
  static final Pattern LISTED = Pattern.compile("export\\s*\\{([^}]*)\\}[ \\t]*;?");

  /** What is declared where it is exported, up to the declaration, with its name. */
  static final Pattern DECLARED =
      Pattern.compile(
          "export\\s+(?=(?:async\\s+function|function|class|const)\\b[\\s*]*(" + NAME + "))");

  /** The beginning of a default that is a value. */
  static final Pattern DEFAULT =
      Pattern.compile("export\\s+default\\b\\s*+(?!class\\b|function\\b|async\\b)");

  /** A name of a list, perhaps with another. */
  static final Pattern LISTED_NAME = Pattern.compile("(" + NAME + ")(?:\\s+as\\s+(" + NAME + "))?");

  /** An import for later, by a name that is worked out, with the folder it begins in. */
  static final Pattern LATER = Pattern.compile("import\\(\\s*`((?:\\.\\.?/)+)");

  /** The name of a property that begins like an import. */
  static final Pattern KEY = Pattern.compile("import\\s*[^\\s(.]");

  private ModuleForms() {}
}
