package strickle.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.function.BiFunction;
import picocli.CommandLine.Option;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.json.PlanFile;
import strickle.plan.Plan;
import strickle.plan.PlanFit;

/** The option {@code --plan}: the present plan of the book, from a file. */
final class PlanOption {

  private static final String NAME = "--plan";

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
    return read(book, PlanFit::faults);
  }

  /**
   * Reads a plan that is under way: the orders and pins of the book may have changed since.
   *
   * @throws Faulty with what is wrong with it, also when its tasks are not of this book
   */
  Plan readUnderWay(Book book) {
    return read(book, PlanFit::faultsUnderWay);
  }

  private Plan read(Book book, BiFunction<Book, Plan, List<Fault>> fit) {
    try {
      Plan plan = PlanFile.read(file());
      List<Fault> faults = fit.apply(book, plan);
      if (!faults.isEmpty()) {
        throw new Faulty(faults);
      }
      return plan;
    } catch (Faulty faulty) {
      throw new Faulty(faulty.faults().stream().map(PlanOption::named).toList());
    }
  }

  // A path such as $.lots[0] alone could be one of the book.
  private static Fault named(Fault fault) {
    return fault.under(fault.path().isEmpty() ? NAME : NAME + " ");
  }
}
