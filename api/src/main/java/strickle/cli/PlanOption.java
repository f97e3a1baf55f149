package strickle.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
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

  /**
   * With more faults than this, a plan is of another book or of an older one, and they are noise.
   */
  private static final int MOST_TOLD = 3;

  private static final String RIGHT = "one laid out for the book as it is";

  /** The rules that follow from a book's orders and pins. */
  private static final Set<Integer> OF_ORDERS = Set.of(8, 9, 10);

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
    Plan plan = read(book, finding -> true);
    if (plan.history().isPresent()) {
      String found = "a plan laid out anew while it was under way";
      String right = "one from before anything had happened, which is all this command can read";
      throw new Faulty(List.of(new Fault(NAME, found, right)));
    }
    return plan;
  }

  /**
   * Reads a plan that is under way: the orders and pins of the book may have changed since.
   *
   * @throws Faulty with what is wrong with it, also when its tasks are not of this book
   */
  Plan readUnderWay(Book book) {
    return read(
        book, finding -> !OF_ORDERS.contains(finding.rule()) && !finding.where().equals("totals"));
  }

  private Plan read(Book book, Predicate<Finding> matters) {
    try {
      Plan plan = PlanFile.read(file());
      mustBeOf(book, plan, matters);
      return plan;
    } catch (Faulty faulty) {
      throw new Faulty(faulty.faults().stream().map(PlanOption::named).toList());
    }
  }

  private static void mustBeOf(Book book, Plan plan, Predicate<Finding> matters) {
    List<Finding> findings = Audit.of(book, plan).stream().filter(matters).toList();
    String name = book.studio().name();
    if (!findings.isEmpty() && !plan.book().equals(name)) {
      String found = "a plan made for another book, that of \"" + plan.book() + "\"";
      throw new Faulty(List.of(new Fault("", found, "one of this book, that of \"" + name + "\"")));
    }
    if (findings.size() > MOST_TOLD) {
      String found =
          "what is no plan of this book: it differs in " + findings.size() + " places, first ";
      throw new Faulty(List.of(new Fault("", found + findings.get(0), RIGHT)));
    }
    if (!findings.isEmpty()) {
      throw new Faulty(findings.stream().map(PlanOption::fault).toList());
    }
  }

  private static Fault fault(Finding finding) {
    return new Fault("", "what is no plan of this book (" + finding + ")", RIGHT);
  }

  // A path such as $.lots[0] alone could be one of the book.
  private static Fault named(Fault fault) {
    return fault.under(fault.path().isEmpty() ? NAME : NAME + " ");
  }
}
