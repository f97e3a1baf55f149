package strickle.plan.why;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import strickle.book.Climate;
import strickle.book.Studio;
import strickle.cure.RoomPace;
import strickle.shop.Calendar;

/** Something that may free a run: a change of the studio that leaves all other runs as they are. */
sealed interface Relief {

  /** The floor with the change made; nothing when other runs could not stay as they are. */
  Optional<Floor> on(Floor floor);

  /** Whether another is the same, but for how much. */
  default boolean isLike(Relief other) {
    return equals(other);
  }

  /** This and another as one change, if they are of one sort. */
  default Optional<Relief> join(Relief other) {
    return equals(other) ? Optional.of(this) : Optional.empty();
  }

  /** The order's pours are no longer settled by pins. */
  record Unpinned() implements Relief {

    @Override
    public Optional<Floor> on(Floor floor) {
      return Optional.of(floor.with(floor.courses().stream().map(Course::unsettled).toList()));
    }
  }

  /**
   * More forms or places.
   *
   * @param units how many more of each, 1 or more
   */
  record More(Map<Thing, Integer> units) implements Relief {

    static More of(List<Thing> things, List<Integer> units) {
      Map<Thing, Integer> more = new TreeMap<>(Thing.IN_ORDER);
      for (int i = 0; i < things.size(); i++) {
        more.put(things.get(i), Math.max(1, units.get(i)));
      }
      return new More(more);
    }

    @Override
    public boolean isLike(Relief other) {
      return other instanceof More more
          && !Collections.disjoint(units.keySet(), more.units.keySet());
    }

    @Override
    public Optional<Relief> join(Relief other) {
      if (!(other instanceof More more)
          || Collections.disjoint(units.keySet(), more.units.keySet())) {
        return Optional.empty();
      }
      Map<Thing, Integer> sum = new TreeMap<>(Thing.IN_ORDER);
      sum.putAll(units);
      more.units.forEach((thing, count) -> sum.merge(thing, count, Integer::sum));
      return Optional.of(new More(sum));
    }

    @Override
    public Optional<Floor> on(Floor floor) {
      Floor grown = floor;
      for (Map.Entry<Thing, Integer> one : units.entrySet()) {
        grown = grown.withMore(one.getKey(), one.getValue());
      }
      return Optional.of(grown);
    }
  }

  /** Hours for somebody, from one closed minute to another. */
  record Hours(String person, int from, int to) implements Relief {

    @Override
    public boolean isLike(Relief other) {
      return other instanceof Hours hours && hours.person.equals(person) && hours.from == from;
    }

    @Override
    public Optional<Floor> on(Floor floor) {
      Hands hands = floor.hands(person);
      boolean inTheWay = hands.open(from, to) > 0 || hands.breaksOff(from);
      return inTheWay
          ? Optional.empty()
          : Optional.of(floor.withHours(person, longer(floor.hours().get(person))));
    }

    private Calendar longer(Calendar hours) {
      List<int[]> windows = new ArrayList<>(List.of(new int[] {from, to}));
      for (int i = 0; i < hours.windows(); i++) {
        windows.add(new int[] {hours.opens(i), hours.closes(i)});
      }
      windows.sort((one, other) -> Integer.compare(one[0], other[0]));
      return Calendar.of(
          windows.stream().mapToInt(window -> window[0]).toArray(),
          windows.stream().mapToInt(window -> window[1]).toArray());
    }
  }

  /**
   * Somebody more, who may do anything, from one minute to another.
   *
   * @param task what they are wanted for, in words
   */
  record Helper(String task, int from, int to) implements Relief {

    @Override
    public boolean isLike(Relief other) {
      return other instanceof Helper helper && helper.from == from;
    }

    @Override
    public Optional<Floor> on(Floor floor) {
      Calendar hours = Calendar.of(new int[] {from}, new int[] {to});
      return Optional.of(floor.withHelper("helper-" + from, hours));
    }
  }

  /** A room that is never cooler than {@value #DEGREES_C} °C. */
  record Warmth() implements Relief {

    static final double DEGREES_C = 20;

    static boolean isCool(Climate climate) {
      return climate.temperatureC() < DEGREES_C;
    }

    /** The climate with its cooler times warmed. */
    static List<Climate> of(List<Climate> climate) {
      return climate.stream()
          .map(
              c ->
                  new Climate(c.from(), Math.max(c.temperatureC(), DEGREES_C), c.humidityPercent()))
          .toList();
    }

    @Override
    public Optional<Floor> on(Floor floor) {
      Studio studio = floor.book().studio();
      return Optional.of(floor.withRoom(RoomPace.of(of(studio.climate()), studio.timeZone())));
    }
  }
}
