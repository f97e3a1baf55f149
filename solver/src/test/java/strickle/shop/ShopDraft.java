package strickle.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A shop put together part by part. Clock 0 is the wall's; family 0 never shares, and kinds are of
 * it unless said otherwise.
 */
final class ShopDraft {

  private int horizonMinutes = 100_000;
  private int lateUnitMinutes = 1;
  private final List<Calendar> workers = new ArrayList<>();
  private final List<Clock> clocks = new ArrayList<>(List.of(Clock.wall()));
  private final List<Resource> resources = new ArrayList<>();
  private final List<Family> families = new ArrayList<>(List.of(Family.alone()));
  private final List<Kind> kinds = new ArrayList<>();
  private final List<Link> links = new ArrayList<>();
  private final List<Due> dues = new ArrayList<>();
  private final List<FixedLot> fixed = new ArrayList<>();

  ShopDraft horizon(int minutes) {
    horizonMinutes = minutes;
    return this;
  }

  ShopDraft lateUnit(int minutes) {
    lateUnitMinutes = minutes;
    return this;
  }

  ShopDraft worker(Calendar calendar) {
    workers.add(calendar);
    return this;
  }

  /** A worker who never closes. */
  ShopDraft worker() {
    return worker(Calendar.always(horizonMinutes));
  }

  /** A worker who never closes from that minute on. */
  ShopDraft workerFrom(int minute) {
    return worker(Calendar.of(new int[] {minute}, new int[] {horizonMinutes}));
  }

  ShopDraft clock(Clock clock) {
    clocks.add(clock);
    return this;
  }

  ShopDraft resource(int capacity) {
    resources.add(new Resource("resource " + resources.size(), capacity));
    return this;
  }

  ShopDraft resource(Resource resource) {
    resources.add(resource);
    return this;
  }

  ShopDraft family(Family family) {
    families.add(family);
    return this;
  }

  /** Jobs that share nothing. */
  ShopDraft kind(int jobs, ActivityDraft... chain) {
    return kind(0, jobs, List.of(1L), 0, chain);
  }

  ShopDraft kind(int family, int jobs, List<Long> amounts, int tail, ActivityDraft... chain) {
    String name = "kind " + kinds.size();
    List<Activity> activities =
        IntStream.range(0, chain.length)
            .mapToObj(i -> chain[i].activity(name + " activity " + i))
            .toList();
    kinds.add(new Kind(name, family, jobs, amounts, activities, tail));
    return this;
  }

  ShopDraft link(int before, int after, int minutes) {
    links.add(new Link(before, after, minutes));
    return this;
  }

  ShopDraft due(int at, long weight, Due.Need... needs) {
    dues.add(new Due("due " + dues.size(), at, weight, List.of(needs)));
    return this;
  }

  ShopDraft fixed(int worker, int start, FixedLot.Part... parts) {
    return fixed(new FixedLot(worker, start, List.of(parts)));
  }

  ShopDraft fixed(FixedLot lot) {
    fixed.add(lot);
    return this;
  }

  int kinds() {
    return kinds.size();
  }

  Kind kind(int index) {
    return kinds.get(index);
  }

  Calendar worker(int index) {
    return workers.get(index);
  }

  Shop shop() {
    return new Shop(
        horizonMinutes,
        lateUnitMinutes,
        workers,
        clocks,
        resources,
        families,
        kinds,
        links,
        dues,
        fixed);
  }
}
