package strickle.plan.whatif;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Form;

/**
 * More units of a form.
 *
 * @param form the form's id
 * @param units how many more, 1 to 999
 */
public record MoreForms(String form, int units) implements Change {

  private static final int MOST = 1000;
  private static final int DECIMALS = 4;

  /**
   * Refuses no units.
   *
   * @throws strickle.book.Faulty when there are fewer than 1 or more than 999
   */
  public MoreForms {
    Say.must(
        Say.unless(1 <= units && units < MOST, units + " more", "1 to " + (MOST - 1) + " more"));
  }

  @Override
  public String text() {
    return "form:" + form + "+" + units;
  }

  @Override
  public String words(Book book) {
    return Say.more(units, book.form(form).name());
  }

  @Override
  public List<Fault> faults(Book book) {
    List<Fault> missing = Say.missing("form", form, book.forms().stream().map(Form::id).toList());
    if (!missing.isEmpty()) {
      return missing;
    }
    int count = book.form(form).count();
    return Say.unless(
        count + units <= MOST,
        units + " more beside the " + count + " there are",
        "at most " + MOST + " in all");
  }

  @Override
  public Book on(Book book) {
    Say.must(faults(book));
    Form old = book.form(form);
    int count = old.count() + units;
    return Rebuilt.with(
        book, new Form(old.id(), old.name(), count, old.costEach(), old.lifeCastings()));
  }

  /** What the units cost to buy, and what falls on each casting that one of them lasts for. */
  @Override
  public Cost cost(Book book) {
    Form bought = book.form(form);
    BigDecimal life = BigDecimal.valueOf(bought.lifeCastings());
    BigDecimal each = bought.costEach().divide(life, DECIMALS, RoundingMode.HALF_UP);
    BigDecimal all = bought.costEach().multiply(BigDecimal.valueOf(units));
    return new Cost(Optional.of(all), Optional.of(each), "bought once");
  }
}
