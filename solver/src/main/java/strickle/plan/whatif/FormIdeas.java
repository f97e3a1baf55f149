package strickle.plan.whatif;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import strickle.book.Book;
import strickle.book.FormUse;
import strickle.book.Mould;
import strickle.plan.Lot;
import strickle.plan.Plan;
import strickle.plan.Run;
import strickle.plan.whatif.PlanReading.Holding;

/**
 * More of the contended forms: those of which all units are taken at a time and that are taken
 * again later, first those that the reasons of late orders name, then those that late orders need,
 * then those that are all taken for longest.
 */
final class FormIdeas {

  private static final int MOST_FORMS = 4;
  private static final int MOST_SETS = 2;

  /** One contended form. */
  private record Contended(String form, boolean named, boolean pressing, long fullMinutes) {

    static final Comparator<Contended> FIRST =
        Comparator.comparing(Contended::named)
            .thenComparing(Contended::pressing)
            .thenComparingLong(Contended::fullMinutes)
            .reversed()
            .thenComparing(Contended::form);
  }

  private final Book book;
  private final Plan plan;
  private final PlanReading reading;
  private final List<Mould> moulds;

  FormIdeas(Book book, Plan plan, PlanReading reading) {
    this.book = book;
    this.plan = plan;
    this.reading = reading;
    this.moulds =
        plan.lots().stream()
            .map(Lot::runs)
            .flatMap(List::stream)
            .map(run -> book.mould(book.piece(run.piece()).mould()))
            .distinct()
            .toList();
  }

  /** Whole sets of forms that lack together first, then each form by itself. */
  List<Change> all() {
    List<String> contended =
        reading.formHoldings().entrySet().stream()
            .filter(entry -> isContended(entry.getKey(), entry.getValue()))
            .map(entry -> contended(entry.getKey(), entry.getValue()))
            .sorted(Contended.FIRST)
            .map(Contended::form)
            .toList();
    List<Change> ideas = new ArrayList<>(sets(contended));
    contended.stream()
        .limit(MOST_FORMS)
        .map(form -> new MoreForms(form, units(form)))
        .forEach(ideas::add);
    return ideas;
  }

  private boolean isContended(String form, List<Holding> holdings) {
    int count = book.form(form).count();
    int taken = holdings.stream().mapToInt(Holding::units).sum();
    return taken > count && fullMinutes(holdings, count) > 0;
  }

  private Contended contended(String form, List<Holding> holdings) {
    String name = book.form(form).name();
    boolean named =
        plan.orders().stream()
            .flatMap(order -> order.because().stream())
            .anyMatch(reason -> reason.contains(name));
    boolean pressing =
        plan.lots().stream()
            .flatMap(lot -> lot.runs().stream())
            .filter(run -> reading.isPressing(run.piece()))
            .anyMatch(run -> needs(run, form));
    return new Contended(form, named, pressing, fullMinutes(holdings, book.form(form).count()));
  }

  private static boolean needs(Run run, String form) {
    return run.forms().stream().anyMatch(hold -> hold.form().equals(form));
  }

  /** Minutes in which fewer than one unit is left. */
  static long fullMinutes(List<Holding> holdings, int count) {
    TreeMap<Long, Integer> changes = new TreeMap<>();
    for (Holding holding : holdings) {
      changes.merge(holding.from(), holding.units(), Integer::sum);
      changes.merge(holding.to(), -holding.units(), Integer::sum);
    }
    long full = 0;
    long since = 0;
    int taken = 0;
    for (Map.Entry<Long, Integer> change : changes.entrySet()) {
      full += taken >= count ? change.getKey() - since : 0;
      taken += change.getValue();
      since = change.getKey();
    }
    return full;
  }

  /** As many units as make one casting more possible. */
  private int units(String form) {
    return moulds.stream()
        .map(mould -> needed(mould).getOrDefault(form, Integer.MAX_VALUE))
        .min(Comparator.naturalOrder())
        .orElse(1);
  }

  /** What a casting needs of each form. */
  private static Map<String, Integer> needed(Mould mould) {
    Map<String, Integer> needed = new LinkedHashMap<>();
    for (FormUse use : mould.forms()) {
      needed.merge(use.form(), use.count(), Integer::sum);
    }
    return needed;
  }

  /** For moulds of several forms that all lack: one is of no use without the other. */
  private List<Change> sets(List<String> contended) {
    return moulds.stream()
        .map(FormIdeas::needed)
        .filter(forms -> forms.size() > 1 && contended.containsAll(forms.keySet()))
        .sorted(Comparator.comparingInt(forms -> first(forms, contended)))
        .limit(MOST_SETS)
        .map(FormIdeas::set)
        .toList();
  }

  private static int first(Map<String, Integer> forms, List<String> contended) {
    return forms.keySet().stream().mapToInt(contended::indexOf).min().orElseThrow();
  }

  private static Change set(Map<String, Integer> forms) {
    return new Together(
        forms.entrySet().stream()
            .map(form -> (Change) new MoreForms(form.getKey(), form.getValue()))
            .toList());
  }
}
