package strickle.price.fair;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import strickle.book.Book;
import strickle.book.Fair;
import strickle.book.Form;
import strickle.book.Mould;

/** What one more hour, form or unit of money would earn, each tried by itself. */
final class Earning {

  private static final double HOUR = 60;
  private static final double NOTHING = 1e-6;
  private static final int DECIMALS = 4;

  private final Book book;
  private final Fair fair;
  private final FairRequest request;
  private final List<Ware> wares;
  private final Means means;
  private final Programme now;
  private final double relaxed;
  private final double best;

  Earning(Book book, Fair fair, FairRequest request, List<Ware> wares, Programme.Chosen best) {
    this.book = book;
    this.fair = fair;
    this.request = request;
    this.wares = wares;
    this.means = new Means(book, fair, request, wares, Map.of());
    this.now = means.programme();
    this.relaxed = now.relaxed();
    this.best = best.worth();
  }

  /** An hour, each form that is needed, and money when there is a budget. */
  List<Worth> worths() {
    List<Worth> worths = new ArrayList<>();
    double hours = now.limits().get(0).most() / HOUR;
    worths.add(worth(Worth.Kind.HOUR, "", hours, now.withMore(0, HOUR)));
    for (String form : means.forms()) {
      Programme more = withMore(Map.of(form, 1));
      worths.add(worth(Worth.Kind.FORM, form, book.form(form).count(), more));
    }
    moulds().forEach(mould -> worths.add(worth(mould)));
    OptionalInt money = means.moneyLimit();
    if (money.isPresent()) {
      double has = request.budget().orElseThrow().doubleValue();
      worths.add(worth(Worth.Kind.MONEY, "", has, now.withMore(money.getAsInt(), 1)));
    }
    return worths;
  }

  private Worth worth(Worth.Kind kind, String of, double has, Programme more) {
    double rate = Math.max(0, more.relaxed() - relaxed);
    double gain = rate > NOTHING ? Math.max(0, more.best().worth() - best) : 0;
    return new Worth(kind, of, rounded(has), rounded(rate), rounded(gain));
  }

  /** Moulds of the fair's pieces that need forms of several kinds. */
  private List<Mould> moulds() {
    return wares.stream()
        .map(ware -> book.mould(book.piece(ware.piece()).mould()))
        .distinct()
        .filter(mould -> units(mould).size() > 1)
        .toList();
  }

  private Worth worth(Mould mould) {
    Map<String, Integer> units = units(mould);
    int atATime =
        units.entrySet().stream()
            .mapToInt(one -> book.form(one.getKey()).count() / one.getValue())
            .min()
            .orElse(0);
    return worth(Worth.Kind.MOULD, mould.id(), atATime, withMore(units));
  }

  private static Map<String, Integer> units(Mould mould) {
    Map<String, Integer> units = new LinkedHashMap<>();
    mould.forms().forEach(use -> units.merge(use.form(), use.count(), Integer::sum));
    return units;
  }

  private Programme withMore(Map<String, Integer> units) {
    List<Form> forms =
        book.forms().stream().map(one -> more(one, units.getOrDefault(one.id(), 0))).toList();
    return new Means(book.withForms(forms), fair, request, wares, Map.of()).programme();
  }

  private static Form more(Form form, int units) {
    return new Form(
        form.id(), form.name(), form.count() + units, form.costEach(), form.lifeCastings());
  }

  /** An amount as it leaves the package: four decimals, halves away from zero. */
  static BigDecimal rounded(double amount) {
    return BigDecimal.valueOf(amount).setScale(DECIMALS, RoundingMode.HALF_UP);
  }
}
