package strickle.shop;

import java.util.ArrayList;
import java.util.List;

/** Who works when: minutes, opening hours, nobody in two places. */
final class HourRules {

  private final Shop shop;
  private final boolean[][] open;
  private final boolean[][] taken;
  private final List<String> broken = new ArrayList<>();

  private HourRules(Shop shop) {
    this.shop = shop;
    this.open = new boolean[shop.workers().size()][shop.horizonMinutes()];
    this.taken = new boolean[shop.workers().size()][shop.horizonMinutes()];
    for (int who = 0; who < open.length; who++) {
      Calendar calendar = shop.workers().get(who);
      for (int i = 0; i < calendar.windows(); i++) {
        for (int at = calendar.opens(i); at < calendar.closes(i) && at < open[who].length; at++) {
          open[who][at] = true;
        }
      }
    }
  }

  static List<String> broken(Shop shop, Schedule schedule, List<Rules.Chain> chains) {
    HourRules rules = new HourRules(shop);
    schedule.lots().forEach(rules::firstActivity);
    for (Rules.Chain chain : chains) {
      for (int i = 1; i < chain.places().size(); i++) {
        Activity activity = chain.kind().chain().get(i);
        int minutes = activity.fixedMinutes() + activity.eachMinutes() * chain.run().jobs();
        rules.activity(activity, chain.place(i), minutes);
      }
    }
    return rules.broken;
  }

  private void firstActivity(Schedule.Lot lot) {
    Kind kind = shop.kinds().get(lot.runs().get(0).kind());
    int minutes = shop.families().get(kind.family()).sharedMinutes();
    for (Schedule.Run run : lot.runs()) {
      Activity first = shop.kinds().get(run.kind()).chain().get(0);
      minutes += first.fixedMinutes() + first.eachMinutes() * run.jobs();
    }
    activity(kind.chain().get(0), lot.first(), minutes);
  }

  private void activity(Activity activity, Schedule.Placed place, int minutes) {
    String what = activity.name() + " " + place;
    must(place.minutes() == minutes, what + " should take " + minutes);
    must(place.end() <= shop.horizonMinutes(), what + " ends too late");
    must(place.start() >= 0, what + " starts before the start");
    if (activity.workers().isEmpty()) {
      must(place.worker() == -1, what + " needs nobody");
      must(place.end() - place.start() == minutes, what + " has no reason to pause");
    } else {
      must(activity.workers().contains(place.worker()), what + " by somebody else");
      attended(activity, place, what);
    }
  }

  private void attended(Activity activity, Schedule.Placed place, String what) {
    boolean[] hours = open[place.worker()];
    int worked = 0;
    for (int at = place.start(); at < place.end(); at++) {
      worked += hours[at] ? 1 : 0;
      must(!hours[at] || !taken[place.worker()][at], what + " at the same time as another");
      taken[place.worker()][at] |= hours[at];
    }
    must(worked == place.minutes(), what + " with " + worked + " minutes open");
    must(hours[place.start()] && hours[place.end() - 1], what + " starts or ends while closed");
    must(activity.pauses() || inOneWindow(place), what + " is interrupted");
    int before = 0;
    for (int at = 0; at < place.start(); at++) {
      before += hours[at] ? 1 : 0;
    }
    must(before == place.worked(), what + " begins at working minute " + before);
  }

  private boolean inOneWindow(Schedule.Placed place) {
    Calendar calendar = shop.workers().get(place.worker());
    for (int i = 0; i < calendar.windows(); i++) {
      if (calendar.opens(i) <= place.start() && place.end() <= calendar.closes(i)) {
        return true;
      }
    }
    return false;
  }

  private void must(boolean holds, String otherwise) {
    if (!holds) {
      broken.add(otherwise);
    }
  }
}
