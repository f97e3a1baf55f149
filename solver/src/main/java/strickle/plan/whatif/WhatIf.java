package strickle.plan.whatif;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.plan.Effort;
import strickle.plan.Plan;
import strickle.plan.Planning;
import strickle.plan.Run;
import strickle.plan.audit.Audit;
import strickle.plan.whatif.Searches.Search;

/**
 * Tries changes of a book on its present plan, in three rounds. First the unchanged book and each
 * changed one are planned with the same effort from the present plan. Then the unchanged book is
 * planned from what was found with each change: what it can reach itself, no change is credited
 * with. Last each changed book is planned from the best of the unchanged one. Whatever plan comes
 * out is held against every book it is valid in, so no change looks worse than doing nothing,
 * unless it makes that impossible.
 */
public final class WhatIf {

  /** Castings x schedules that take about a second on one processor. */
  private static final long SECOND = 600_000;

  private static final long FEWEST = 500;
  private static final long MOST = 12_000;

  /** The first round gets two of four parts of the effort, each other one. */
  private static final int PARTS = 4;

  private final Book book;
  private final Plan present;
  private final List<Change> changes;
  private final List<Book> changed;
  private final Searches searches;

  /** All plans there are so far. */
  private final List<Plan> found = new ArrayList<>();

  private WhatIf(Book book, Plan present, List<Change> changes, Searches searches) {
    this.book = book;
    this.present = present;
    this.changes = List.copyOf(changes);
    this.changed =
        changes.stream().map(change -> Hereafter.of(book, change.on(book), present)).toList();
    this.searches = searches;
    found.add(present);
  }

  /**
   * Makes ready to try changes.
   *
   * @param present a plan of this book that the audit finds nothing in
   * @param changes what to try, each by itself
   * @param effort for everything together: with schedules, which go on two at a time, the answer is
   *     the same every time; with a time the searches come one after the other. When empty, so many
   *     schedules that a dozen changes take some ten seconds on two processors
   * @param seed where the chance of each search begins
   * @param listener told how many {@link #searches} are over, one call at a time
   * @throws Faulty when a change cannot be made in this book or is for a day that is over or before
   *     the plan begins; paths are {@code .changes[0]} and the like
   */
  public static WhatIf of(
      Book book,
      Plan present,
      List<Change> changes,
      Optional<Effort> effort,
      long seed,
      IntConsumer listener) {
    Say.must(faults(book, present, changes));
    Effort all = effort.orElseGet(() -> usual(present, changes.size() + 1));
    return new WhatIf(book, present, changes, new Searches(present, all, seed, listener));
  }

  private static List<Fault> faults(Book book, Plan present, List<Change> changes) {
    List<Fault> faults = new ArrayList<>();
    LocalDate first = new PlanReading(book, present).firstDay();
    for (int i = 0; i < changes.size(); i++) {
      String path = ".changes[" + i + "]";
      Change change = changes.get(i);
      change.faults(book).forEach(fault -> faults.add(fault.under(path)));
      change
          .date()
          .filter(day -> day.isBefore(first))
          .map(day -> new Fault(path, day.toString(), first + since(present) + ", or later"))
          .ifPresent(faults::add);
    }
    return faults;
  }

  private static String since(Plan present) {
    return present.history().isPresent()
        ? ", when the plan was laid out anew"
        : ", when the plan begins";
  }

  private static Effort usual(Plan plan, int searches) {
    long castings =
        plan.lots().stream().flatMap(lot -> lot.runs().stream()).mapToLong(Run::castings).sum();
    long each = Math.clamp(SECOND / Math.max(1, castings), FEWEST, MOST);
    return Effort.ofSchedules(each * searches);
  }

  /** How many searches these changes take in all three rounds. */
  public static int searches(List<Change> changes) {
    return 1 + 3 * changes.size();
  }

  /**
   * Tries all changes.
   *
   * @return every change with its best plan, which has passed the audit or is the search's own
   * @throws Faulty when a changed book cannot be planned
   */
  public Answer run() {
    int parts = PARTS * (changes.size() + 1);
    List<Search> first = new ArrayList<>(List.of(new Search(book, present)));
    changed.forEach(one -> first.add(new Search(one, present)));
    List<Plan> own = new ArrayList<>(search(first, parts / 2));
    List<Plan> withChanges = own.subList(1, own.size());
    search(withChanges.stream().map(plan -> new Search(book, plan)).toList(), parts);
    Plan alone = best(book, own.get(0));
    search(changed.stream().map(one -> new Search(one, alone)).toList(), parts);
    return answer(withChanges, best(book, alone));
  }

  /** Ends all searches soon; the best plans found so far are kept. */
  public void stop() {
    searches.stop();
  }

  private List<Plan> search(List<Search> round, int parts) {
    List<Plan> plans = searches.run(round, parts);
    found.addAll(plans);
    return plans;
  }

  private Answer answer(List<Plan> own, Plan alone) {
    List<Tried> tried = new ArrayList<>();
    for (int i = 0; i < changes.size(); i++) {
      Change change = changes.get(i);
      Plan plan = best(changed.get(i), own.get(i));
      tried.add(new Tried(change, change.words(book), change.cost(book), changed.get(i), plan));
    }
    tried.sort(
        Comparator.comparing((Tried one) -> one.plan().totals(), Tried.BY_HELP)
            .thenComparing(one -> one.cost().amount().isEmpty())
            .thenComparing(one -> one.cost().amount().orElse(BigDecimal.ZERO)));
    return new Answer(present, alone, tried);
  }

  /**
   * The best of all plans that are valid in a book: the present one when none is better, as then
   * nothing has to move. One that its own search has found stands when nothing else does.
   */
  private Plan best(Book ofBook, Plan own) {
    List<Plan> inOrder = new ArrayList<>(found);
    inOrder.sort(Comparator.comparing(Plan::totals, Tried.BY_HELP));
    for (Plan plan : inOrder) {
      if (plan.equals(own)) {
        return own;
      }
      Plan again = Restated.of(ofBook, plan);
      if (Audit.of(ofBook, again).isEmpty()) {
        return Planning.explained(ofBook, again);
      }
    }
    return own;
  }
}
