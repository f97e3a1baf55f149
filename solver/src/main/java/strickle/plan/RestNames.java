package strickle.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import strickle.shop.Schedule;

/**
 * What the lots and runs of a schedule are called: as in the present plan where they are the same,
 * or at least of the same castings; others get new numbers.
 */
final class RestNames {

  private static final Pattern NUMBERED = Pattern.compile("L([0-9]{1,9})");

  private final Standing standing;
  private final StudioShop studio;
  private final IdentityHashMap<Schedule.Lot, String> lots = new IdentityHashMap<>();
  private final IdentityHashMap<Schedule.Run, String> runs = new IdentityHashMap<>();
  private final Set<String> used = new HashSet<>();
  private int next;

  private RestNames(Standing standing, StudioShop studio, List<KeptLot> kept) {
    this.standing = standing;
    this.studio = studio;
    int present = firstFree(standing.present().lots());
    this.next = Math.max(present, firstFree(kept.stream().map(KeptLot::lot).toList()));
  }

  /** The first number that no lot has had so far. */
  static int firstFree(List<Lot> lots) {
    int free = 1;
    for (Lot lot : lots) {
      Matcher number = NUMBERED.matcher(lot.id());
      free = number.matches() ? Math.max(free, Integer.parseInt(number.group(1)) + 1) : free;
    }
    return free;
  }

  /** Names for a schedule of which these lots, in that order, were settled. */
  static RestNames of(Standing standing, StudioShop studio, List<KeptLot> kept, Schedule schedule) {
    RestNames names = new RestNames(standing, studio, kept);
    for (int i = 0; i < kept.size(); i++) {
      Lot lot = kept.get(i).lot();
      Schedule.Lot placed = schedule.lots().get(i);
      names.name(placed, lot);
      for (int run = 0; run < placed.runs().size(); run++) {
        names.runs.put(placed.runs().get(run), lot.runs().get(run).id());
      }
    }
    List<Schedule.Lot> others =
        new ArrayList<>(schedule.lots().subList(kept.size(), schedule.lots().size()));
    others.sort(Comparator.comparingInt(lot -> lot.first().start()));
    for (Schedule.Lot lot : others) {
      names.nearest(lot).ifPresent(same -> names.name(lot, same));
    }
    others.stream().filter(lot -> !names.lots.containsKey(lot)).forEach(names::newName);
    return names;
  }

  String of(Schedule.Lot lot) {
    return lots.get(lot);
  }

  String of(Schedule.Run run) {
    return runs.get(run);
  }

  private void name(Schedule.Lot lot, Lot same) {
    lots.put(lot, same.id());
    used.add(same.id());
    for (Schedule.Run run : lot.runs()) {
      String piece = studio.pieces().get(run.kind()).id();
      same.runs().stream()
          .filter(one -> one.piece().equals(piece))
          .findFirst()
          .ifPresent(one -> runs.put(run, one.id()));
    }
  }

  private void newName(Schedule.Lot lot) {
    String id = "L" + next++;
    lots.put(lot, id);
    int number = 1;
    for (Schedule.Run run : lot.runs()) {
      runs.put(run, id + "-" + number++);
    }
  }

  /** The lot of the present plan of the same castings that was to be poured nearest to this one. */
  private Optional<Lot> nearest(Schedule.Lot lot) {
    Map<String, Integer> castings = new HashMap<>();
    for (Schedule.Run run : lot.runs()) {
      castings.merge(studio.pieces().get(run.kind()).id(), run.jobs(), Integer::sum);
    }
    return standing.present().lots().stream()
        .filter(one -> !used.contains(one.id()) && !standing.isBegun(one))
        .filter(one -> castings(one).equals(castings))
        .min(Comparator.comparingInt(one -> Math.abs(start(one) - lot.first().start())));
  }

  private int start(Lot lot) {
    return new Tasks(standing.present())
        .get(Tasks.pour(lot.id()))
        .map(standing::start)
        .orElseThrow();
  }

  private static Map<String, Integer> castings(Lot lot) {
    Map<String, Integer> castings = new HashMap<>();
    lot.runs().forEach(run -> castings.merge(run.piece(), run.castings(), Integer::sum));
    return castings;
  }
}
