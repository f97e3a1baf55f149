package strickle.shop;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** The due dates of a shop as arrays; the needs of each kind stand together, fewest jobs first. */
final class DueTables {

  final int lateUnitMinutes;
  final int[] at;
  final long[] weight;
  final int[] needFirst;
  final int[] needCount;
  final double[] needWorth;
  final int[] needDue;

  DueTables(Shop shop) {
    List<Due> dues = shop.dues();
    lateUnitMinutes = shop.lateUnitMinutes();
    at = dues.stream().mapToInt(Due::at).toArray();
    weight = dues.stream().mapToLong(Due::weight).toArray();
    record Asked(int due, Due.Need need) {}
    List<Asked> asked =
        IntStream.range(0, dues.size())
            .boxed()
            .flatMap(due -> dues.get(due).needs().stream().map(need -> new Asked(due, need)))
            .sorted(Comparator.comparingDouble(one -> one.need().worth()))
            .sorted(Comparator.comparingInt(one -> one.need().count()))
            .sorted(Comparator.comparingInt(one -> one.need().kind()))
            .toList();
    needCount = asked.stream().mapToInt(one -> one.need().count()).toArray();
    needWorth = asked.stream().mapToDouble(one -> one.need().worth()).toArray();
    needDue = asked.stream().mapToInt(Asked::due).toArray();
    int[] counts = new int[shop.kinds().size()];
    asked.forEach(one -> counts[one.need().kind()]++);
    needFirst = Tables.sums(counts);
  }
}
