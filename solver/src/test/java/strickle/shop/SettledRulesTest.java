package strickle.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Schedules of made-up shops of which any beginnings are settled as they are. */
class SettledRulesTest {

  static LongStream seeds() {
    return LongStream.range(0, 300);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void aScheduleSettledAsAWholeStaysAsItIs(long seed) {
    RandomShop made = RandomShop.of(seed);
    Optional<Schedule> found = Scheduler.first(made.shop());
    if (found.isPresent() && made.shop().links().isEmpty()) {
      Schedule schedule = found.get();
      Shop settled = settled(made.shop(), schedule, new Random(seed), 1);
      Schedule again = Scheduler.first(settled).orElseThrow();
      assertEquals(schedule.lots(), again.lots());
      assertEquals(schedule.value(), again.value());
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void whateverIsSettledTheRestKeepsAllRules(long seed) {
    RandomShop made = RandomShop.of(seed);
    Optional<Schedule> found = Scheduler.first(made.shop());
    if (found.isEmpty() || !made.shop().links().isEmpty()) {
      return;
    }
    Random random = new Random(seed);
    for (int round = 0; round < 10; round++) {
      Shop settled = settled(made.shop(), found.get(), random, 0.5);
      Decodes decodes = Decodes.of(settled);
      decodes
          .decode(decodes.shuffled(random))
          .ifPresent(
              schedule -> assertEquals(List.of(), Rules.broken(settled, made.paces(), schedule)));
    }
  }

  @Test
  void mostOfThemFindRoom() {
    int room = 0;
    int all = 0;
    for (long seed = 0; seed < 300; seed++) {
      RandomShop made = RandomShop.of(seed);
      Optional<Schedule> found = Scheduler.first(made.shop());
      if (found.isPresent() && made.shop().links().isEmpty()) {
        all++;
        Shop settled = settled(made.shop(), found.get(), new Random(seed), 0.5);
        room += Scheduler.first(settled).isPresent() ? 1 : 0;
      }
    }
    assertTrue(all > 100 && room > all / 2, room + " of " + all);
  }

  /** The shop with some lots of a schedule settled, each of their runs up to some activity. */
  private static Shop settled(Shop shop, Schedule schedule, Random random, double share) {
    List<FixedLot> fixed = new ArrayList<>();
    for (Schedule.Lot lot : schedule.lots()) {
      if (fixed.size() < shop.fixed().size() || random.nextDouble() < share) {
        fixed.add(settled(lot, random, share));
      }
    }
    return new Shop(
        shop.horizonMinutes(),
        shop.lateUnitMinutes(),
        shop.workers(),
        shop.clocks(),
        shop.resources(),
        shop.families(),
        shop.kinds(),
        shop.links(),
        shop.dues(),
        fixed);
  }

  private static FixedLot settled(Schedule.Lot lot, Random random, double share) {
    List<FixedLot.Part> parts = new ArrayList<>();
    for (Schedule.Run run : lot.runs()) {
      int all = run.rest().size();
      int count = share < 1 ? random.nextInt(all + 1) : all;
      List<FixedLot.Place> rest =
          run.rest().subList(0, count).stream()
              .map(one -> new FixedLot.Place(one.worker(), one.start(), one.end()))
              .toList();
      parts.add(new FixedLot.Part(run.kind(), run.jobs(), rest, List.of(), run.jobs()));
    }
    Schedule.Placed first = lot.first();
    return new FixedLot(first.worker(), first.start(), OptionalInt.of(first.end()), parts, false);
  }
}
