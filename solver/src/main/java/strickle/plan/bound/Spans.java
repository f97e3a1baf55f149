package strickle.plan.bound;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;

/**
 * Minutes at which something can be, as stretches that neither touch nor overlap.
 *
 * @param list first minute first
 */
record Spans(List<Span> list) {

  /** The minutes from one to another, both of them in it. */
  record Span(int from, int to) {}

  /** Puts stretches in order and joins what touches. */
  Spans {
    List<Span> sorted = new ArrayList<>(list);
    sorted.sort(Comparator.comparingInt(Span::from));
    List<Span> joined = new ArrayList<>();
    for (Span one : sorted) {
      Span last = joined.isEmpty() ? null : joined.get(joined.size() - 1);
      if (last != null && one.from() <= last.to() + 1) {
        joined.set(joined.size() - 1, new Span(last.from(), Math.max(last.to(), one.to())));
      } else {
        joined.add(one);
      }
    }
    list = List.copyOf(joined);
  }

  /** One stretch, or none when it ends before it begins. */
  static Spans of(int from, int to) {
    return new Spans(from <= to ? List.of(new Span(from, to)) : List.of());
  }

  /** The same so much earlier. */
  Spans earlier(int minutes) {
    return new Spans(
        list.stream().map(one -> new Span(one.from() - minutes, one.to() - minutes)).toList());
  }

  /** The first minute of all. */
  OptionalInt first() {
    return list.isEmpty() ? OptionalInt.empty() : OptionalInt.of(list.get(0).from());
  }
}
