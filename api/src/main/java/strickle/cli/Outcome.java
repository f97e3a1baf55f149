package strickle.cli;

import java.io.PrintStream;
import java.util.List;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;
import strickle.book.Fault;
import strickle.book.Faulty;

/** How a command ends: its exit code, and what is said on standard error. */
final class Outcome {

  /** All went well. */
  static final int DONE = 0;

  /** Something outside stood in the way, or Strickle itself is wrong. */
  static final int FAILED = 1;

  /** The command line or the book is wrong. */
  static final int WRONG = 2;

  private Outcome() {}

  /** Tells of a command line that cannot be understood. */
  static int ofWrongCommandLine(ParameterException wrong, PrintStream err) {
    if (wrong instanceof UnmatchedArgumentException unmatched) {
      say(err, "not understood: " + String.join(" ", unmatched.getUnmatched()));
      List<String> near = unmatched.getSuggestions();
      if (!near.isEmpty()) {
        say(err, "maybe you meant " + String.join(" or ", near));
      }
    } else {
      say(err, wrong.getMessage());
    }
    String command = wrong.getCommandLine().getCommandSpec().qualifiedName();
    say(err, "\"" + command + " --help\" shows how, with examples");
    return WRONG;
  }

  /** Tells of whatever a command threw. */
  static int of(Throwable thrown, PrintStream err) {
    return switch (thrown) {
      case Faulty faulty -> faulty(faulty, err);
      case Trouble trouble -> failed(trouble.getMessage(), err);
      case Bug bug -> bug(bug.getMessage(), err);
      case OutOfMemoryError full ->
          failed("there is not enough memory for this; allow Java more, or plan less at once", err);
      default -> bug(what(thrown), err);
    };
  }

  private static int bug(String what, PrintStream err) {
    return failed(
        "this is a bug of Strickle, not of your book: "
            + what
            + "; please report it with this line and the book",
        err);
  }

  /** Tells of a failure. */
  static int failed(String message, PrintStream err) {
    say(err, message);
    return FAILED;
  }

  private static int faulty(Faulty faulty, PrintStream err) {
    for (Fault fault : faulty.faults()) {
      err.println(oneLine(fault.toString()));
    }
    return WRONG;
  }

  private static void say(PrintStream err, String message) {
    err.println("strickle: " + oneLine(message));
  }

  private static String what(Throwable thrown) {
    Throwable cause = thrown;
    while (cause.getCause() != null) {
      cause = cause.getCause();
    }
    return cause.getMessage() == null
        ? cause.getClass().getSimpleName()
        : cause.getClass().getSimpleName() + ", " + cause.getMessage();
  }

  private static String oneLine(String text) {
    return text == null ? "" : text.strip().replaceAll("\\s*\\R\\s*", " ");
  }
}
