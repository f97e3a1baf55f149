package strickle.cli;

import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Option;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.json.PlanFile;
import strickle.plan.Plan;
import strickle.plan.audit.Audit;
import strickle.plan.audit.Finding;

/** The option {@code --plan}: the present plan of the book, from a file. */
final class PlanOption {

  private static final String NAME = "--plan";

  /** More of what is wrong with a plan helps nobody: it is of another book, or of an older one. */
  private static final int MOST_TOLD = 10;

  @Option(
      names = NAME,
      paramLabel = "PLAN",
      required = true,
      description = "the present plan of this book, a file that plan --out has written")
  private String given = "";

  /** The file it is read from. */
  Path file() {
    return Paths.of(NAME, given, "the path of a plan");
  }

  /**
   * Reads the plan.
   *
   * @throws Faulty with what is wrong with it, also when it is not a plan of this book as it is now
   */
  Plan read(Book book) {
    try {
      Plan plan = PlanFile.read(file());
      mustBeOf(book, plan);
      return plan;
    } catch (Faulty faulty) {
      throw new Faulty(faulty.faults().stream().map(PlanOption::named).toList());
    }
  }

  private static void mustBeOf(Book book, Plan plan) {
    List<Finding> findings = Audit.of(book, plan);
    if (!findings.isEmpty()) {
      throw new Faulty(findings.stream().limit(MOST_TOLD).map(PlanOption::fault).toList());
    }
  }

  private static Fault fault(Finding finding) {
    return new Fault(
        "", "what is no plan of this book (" + finding + ")", "one laid out for the book as it is");
  }

  // A path such as $.lots[0] alone could be one of the book.
  private static Fault named(Fault fault) {
    return fault.under(fault.path().isEmpty() ? NAME : NAME + " ");
  }
}
