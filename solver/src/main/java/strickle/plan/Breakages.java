package strickle.plan;

import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strickle.book.Book;
import strickle.plan.replan.Happening;
import strickle.plan.replan.HappeningKind;

/** Which units of forms are broken, since when, and until when if that is known. */
final class Breakages {

  private final Book book;
  private final Plan present;
  private final List<Happening> happened;
  private final Map<String, Task> history;
  private final StudioTime time;
  private final OffsetDateTime nowAt;
  private final HappeningFaults faults;

  /**
   * Breakages.
   *
   * @param history what has begun or is done, by task
   * @param faults told of what cannot have been mended
   */
  Breakages(
      Book book,
      Plan present,
      List<Happening> happened,
      Map<String, Task> history,
      StudioTime time,
      OffsetDateTime now,
      HappeningFaults faults) {
    this.book = book;
    this.present = present;
    this.happened = happened;
    this.history = history;
    this.time = time;
    this.nowAt = now;
    this.faults = faults;
  }

  /** All broken units; which of them break is chosen so that nobody is using them, if it can be. */
  List<History.Broken> all() {
    List<History.Broken> all =
        new ArrayList<>(present.history().map(History::broken).orElse(List.of()));
    for (Happening one : happened) {
      if (one.kind() == HappeningKind.BROKEN && !isKnown(all, one)) {
        breaks(all, one);
      }
    }
    for (int i = 0; i < happened.size(); i++) {
      if (happened.get(i).kind() == HappeningKind.MENDED) {
        faults.ofMended(i, mended(all, happened.get(i)));
      }
    }
    return all;
  }

  /** Whether the plan has a breakage already; if it is told now when it is over, that is noted. */
  private boolean isKnown(List<History.Broken> all, Happening one) {
    String form = one.form().orElseThrow();
    OffsetDateTime from = at(one.from().orElseThrow());
    List<History.Broken> same =
        present.history().map(History::broken).orElse(List.of()).stream()
            .filter(before -> before.form().equals(form) && before.from().isEqual(from))
            .toList();
    int units = same.stream().mapToInt(before -> before.units().size()).sum();
    boolean known = units == one.count().orElseThrow();
    if (known && one.to().isPresent()) {
      all.replaceAll(before -> same.contains(before) ? mended(before, one.to().get()) : before);
    }
    return known;
  }

  private History.Broken mended(History.Broken broken, LocalDateTime at) {
    return new History.Broken(
        broken.form(), broken.units(), broken.from(), Optional.of(this.at(at)));
  }

  private void breaks(List<History.Broken> all, Happening one) {
    String form = one.form().orElseThrow();
    OffsetDateTime from = at(one.from().orElseThrow());
    List<Integer> whole = new ArrayList<>();
    for (int unit = book.form(form).count(); unit >= 1; unit--) {
      int number = unit;
      if (all.stream().noneMatch(b -> b.form().equals(form) && isBroken(b, number, from))) {
        whole.add(unit);
      }
    }
    // Free units first, so that nothing lies in what is broken.
    whole.sort((a, b) -> Boolean.compare(isUsed(form, a, from), isUsed(form, b, from)));
    int some = Math.min(one.count().orElseThrow(), whole.size());
    if (some > 0) {
      List<Integer> units = whole.subList(0, some).stream().sorted().toList();
      all.add(new History.Broken(form, units, from, one.to().map(this::at)));
    }
  }

  private static boolean isBroken(History.Broken broken, int unit, OffsetDateTime at) {
    return broken.units().contains(unit) && broken.to().map(at::isBefore).orElse(true);
  }

  /**
   * Notes when units are whole again, those that broke first first.
   *
   * @return how many were broken, or are mended then as the plan has it
   */
  private int mended(List<History.Broken> all, Happening one) {
    OffsetDateTime from = at(one.from().orElseThrow());
    int left = one.count().orElseThrow();
    int found = 0;
    List<History.Broken> before = List.copyOf(all);
    for (History.Broken broken : before) {
      boolean same = broken.form().equals(one.form().orElseThrow());
      boolean then = broken.to().map(to -> !to.isBefore(from) || to.isAfter(nowAt)).orElse(true);
      if (same && then && !from.isBefore(broken.from())) {
        found += broken.units().size();
        left = mended(all, broken, left, from);
      }
    }
    return found;
  }

  private static int mended(
      List<History.Broken> all, History.Broken broken, int most, OffsetDateTime at) {
    int some = Math.min(most, broken.units().size());
    if (some > 0) {
      List<Integer> units = broken.units();
      int place = all.indexOf(broken);
      all.set(
          place,
          new History.Broken(
              broken.form(), units.subList(0, some), broken.from(), Optional.of(at)));
      if (some < units.size()) {
        List<Integer> others = units.subList(some, units.size());
        all.add(new History.Broken(broken.form(), others, broken.from(), broken.to()));
      }
    }
    return most - some;
  }

  private boolean isUsed(String form, int unit, OffsetDateTime at) {
    return present.lots().stream()
        .flatMap(lot -> lot.runs().stream().filter(run -> isHeld(lot, run, at)))
        .flatMap(run -> run.forms().stream())
        .anyMatch(hold -> hold.form().equals(form) && hold.units().contains(unit));
  }

  private boolean isHeld(Lot lot, Run run, OffsetDateTime at) {
    Task pour = history.get(Tasks.pour(lot.id()));
    Task demould = history.get(Tasks.after(run.id(), 1));
    boolean out = demould != null && demould.done() && !demould.end().isAfter(at);
    return pour != null && !pour.start().isAfter(at) && !out;
  }

  private OffsetDateTime at(LocalDateTime local) {
    return time.at(time.minute(local));
  }
}
