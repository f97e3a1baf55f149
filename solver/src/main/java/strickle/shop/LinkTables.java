package strickle.shop;

import java.util.List;

/**
 * The links of a shop as arrays: for each kind those that wait for it, one after the other, and
 * those that it waits for.
 */
final class LinkTables {

  final int[] first;
  final int[] after;
  final int[] minutes;

  /** How many links each kind waits for. */
  final int[] waitsFor;

  final int[] beforeFirst;
  final int[] before;
  final int[] beforeMinutes;

  LinkTables(Shop shop) {
    List<Link> links = shop.links();
    int kinds = shop.kinds().size();
    int[] counts = new int[kinds];
    waitsFor = new int[kinds];
    for (Link link : links) {
      counts[link.before()]++;
      waitsFor[link.after()]++;
    }
    first = Tables.sums(counts);
    after = new int[links.size()];
    minutes = new int[links.size()];
    beforeFirst = Tables.sums(waitsFor);
    before = new int[links.size()];
    beforeMinutes = new int[links.size()];
    int[] next = first.clone();
    int[] nextBefore = beforeFirst.clone();
    for (Link link : links) {
      int index = next[link.before()]++;
      after[index] = link.after();
      minutes[index] = link.minutes();
      int back = nextBefore[link.after()]++;
      before[back] = link.before();
      beforeMinutes[back] = link.minutes();
    }
  }
}
