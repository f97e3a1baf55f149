package strickle.shop;

import java.util.ArrayList;
import java.util.List;

/**
 * A second reading of the rules of a shop, minute by minute and slow; it shares no code with the
 * decoder. What it finds broken it puts in words.
 */
final class Rules {

  /**
   * A run with its chain whole again.
   *
   * @param settled whether its lot is one of the settled ones
   * @param first whether it is the first run of its lot
   */
  record Chain(
      Kind kind, Schedule.Run run, List<Schedule.Placed> places, boolean settled, boolean first) {

    Schedule.Placed place(int index) {
      return places.get(index);
    }
  }

  private final Shop shop;
  private final List<Pace> paces;
  private final Schedule schedule;
  private final List<Chain> chains = new ArrayList<>();
  private final List<String> broken = new ArrayList<>();

  private Rules(Shop shop, List<Pace> paces, Schedule schedule) {
    this.shop = shop;
    this.paces = paces;
    this.schedule = schedule;
    for (int lot = 0; lot < schedule.lots().size(); lot++) {
      boolean first = true;
      for (Schedule.Run run : schedule.lots().get(lot).runs()) {
        List<Schedule.Placed> places = new ArrayList<>();
        places.add(schedule.lots().get(lot).first());
        places.addAll(run.rest());
        Kind kind = shop.kinds().get(run.kind());
        chains.add(new Chain(kind, run, places, lot < shop.fixed().size(), first));
        first = false;
      }
    }
  }

  /** Every rule that the schedule breaks, in words; empty when it keeps them all. */
  static List<String> broken(Shop shop, List<Pace> paces, Schedule schedule) {
    Rules rules = new Rules(shop, paces, schedule);
    rules.everyJobIsDone();
    rules.settledLotsStay();
    schedule.lots().forEach(rules::lotIsWithinLimits);
    rules.linksAreKept();
    for (Chain chain : rules.chains) {
      rules.waitsAreKept(chain);
    }
    rules.broken.addAll(HourRules.broken(shop, schedule, rules.chains));
    rules.broken.addAll(HoldRules.broken(shop, rules.chains));
    rules.broken.addAll(ValueRules.broken(shop, schedule, rules.chains));
    return rules.broken;
  }

  private void must(boolean holds, String otherwise) {
    if (!holds) {
      broken.add(otherwise);
    }
  }

  private void everyJobIsDone() {
    for (int kind = 0; kind < shop.kinds().size(); kind++) {
      int done = 0;
      for (Chain chain : chains) {
        done += chain.run().kind() == kind ? chain.run().jobs() : 0;
      }
      must(done == shop.kinds().get(kind).jobs(), done + " jobs done of kind " + kind);
    }
  }

  private void settledLotsStay() {
    for (int i = 0; i < shop.fixed().size(); i++) {
      FixedLot asked = shop.fixed().get(i);
      Schedule.Lot lot = schedule.lots().get(i);
      must(lot.first().worker() == asked.worker(), "settled lot " + i + " by another");
      must(lot.first().start() == asked.start(), "settled lot " + i + " at another time");
      List<FixedLot.Part> parts =
          lot.runs().stream().map(run -> new FixedLot.Part(run.kind(), run.jobs())).toList();
      List<FixedLot.Part> due =
          asked.parts().stream().map(part -> new FixedLot.Part(part.kind(), part.jobs())).toList();
      must(parts.equals(due), "settled lot " + i + " holds " + parts);
    }
  }

  private void lotIsWithinLimits(Schedule.Lot lot) {
    int jobs = 0;
    Family family = shop.families().get(shop.kinds().get(lot.runs().get(0).kind()).family());
    long[] sums = new long[family.limits().size()];
    for (Schedule.Run run : lot.runs()) {
      Kind kind = shop.kinds().get(run.kind());
      jobs += run.jobs();
      must(kind.family() == shop.kinds().get(lot.runs().get(0).kind()).family(), "two families");
      for (int i = 0; i < sums.length; i++) {
        sums[i] += kind.amounts().get(i) * run.jobs();
      }
    }
    long kinds = lot.runs().stream().map(Schedule.Run::kind).distinct().count();
    must(kinds == lot.runs().size(), "two runs of a kind in a lot");
    if (jobs > 1 && schedule.lots().indexOf(lot) >= shop.fixed().size()) {
      for (int i = 0; i < sums.length; i++) {
        must(sums[i] <= family.limits().get(i), "a lot over its limit " + i);
      }
      must(lot.first().minutes() <= family.longestMinutes(), "a lot that takes too long");
    }
  }

  private void waitsAreKept(Chain chain) {
    for (int i = 1; i < chain.places().size(); i++) {
      Family family = shop.families().get(chain.kind().family());
      Wait wait = chain.kind().chain().get(i).before();
      int from = chain.place(i - 1).end() - (i == 1 ? family.tailMinutes() : 0);
      int to = chain.place(i).start();
      String what = chain.kind().name() + " from " + from + " to " + to + ": " + wait;
      must(from <= to, "before the one before it: " + what);
      must(paces.get(wait.clock()).shown(from, to) >= wait.hours() * 60 - 1e-6, "early: " + what);
      must(to - from <= wait.atMostMinutes().orElse(Integer.MAX_VALUE), "late: " + what);
    }
  }

  private void linksAreKept() {
    for (Link link : shop.links()) {
      Chain before = only(link.before());
      Chain after = only(link.after());
      int end = before.place(before.places().size() - 1).end();
      must(after.place(0).start() >= end + link.minutes(), "too early for " + link);
    }
  }

  private Chain only(int kind) {
    return chains.stream().filter(chain -> chain.run().kind() == kind).findFirst().orElseThrow();
  }
}
