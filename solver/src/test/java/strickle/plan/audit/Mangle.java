package strickle.plan.audit;

import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Random;
import strickle.book.Altered;
import strickle.book.Faulty;
import strickle.plan.Plan;

/** Spoils one thing somewhere in a plan, at random: a figure, a time, a name, a list. */
final class Mangle {

  private static final List<String> NAMES =
      List.of("L1", "L2", "L1-1", "L3-1", "ana", "planter-slate", "slate", "O-104", "tub-a", "x");
  private static final List<Number> NUMBERS =
      List.of(0, 1, 2, 3, 17, 1000, 2_000_000, Integer.MAX_VALUE);

  private final Random random;

  Mangle(long number) {
    random = new Random(number);
  }

  /** The plan with so many things spoilt; what the records themselves refuse is left as it was. */
  Plan of(Plan plan, int things) {
    Plan spoilt = plan;
    for (int i = 0; i < things; i++) {
      spoilt = (Plan) spoil(spoilt);
    }
    return spoilt;
  }

  private Object spoil(Object thing) {
    return switch (thing) {
      case Record r -> spoilRecord(r);
      case List<?> list -> spoilList(list);
      case String s -> NAMES.get(random.nextInt(NAMES.size()));
      case OffsetDateTime at -> spoilTime(at);
      case Optional<?> o -> random.nextBoolean() ? Optional.empty() : o.map(this::spoil);
      case OptionalInt o -> OptionalInt.of(number().intValue());
      case OptionalLong o -> random.nextBoolean() ? o : OptionalLong.of(number().longValue());
      case OptionalDouble o -> OptionalDouble.of(random.nextInt(120));
      case Integer n -> number().intValue();
      case Long n -> number().longValue() * number().longValue();
      case Double n -> number().doubleValue() * (random.nextBoolean() ? 0.37 : 1e300);
      case BigDecimal n -> BigDecimal.valueOf(number().longValue(), 1);
      case Boolean flag -> !flag;
      case Enum<?> e -> other(e);
      default -> throw new IllegalArgumentException("a plan holds no " + thing.getClass());
    };
  }

  private Object spoilRecord(Record thing) {
    RecordComponent[] components = thing.getClass().getRecordComponents();
    RecordComponent one = components[random.nextInt(components.length)];
    try {
      return Altered.of(thing, one.getName(), spoil(one.getAccessor().invoke(thing)));
    } catch (Faulty refused) {
      return thing;
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }

  private Object spoilList(List<?> list) {
    List<Object> spoilt = new ArrayList<>(list);
    if (spoilt.isEmpty()) {
      return spoilt;
    }
    int place = random.nextInt(spoilt.size());
    switch (random.nextInt(8)) {
      case 0 -> spoilt.remove(place);
      case 1 -> spoilt.add(spoilt.get(place));
      case 2 -> Collections.shuffle(spoilt, random);
      case 3 -> spoilt.clear();
      default -> spoilt.set(place, spoil(spoilt.get(place)));
    }
    return spoilt;
  }

  private OffsetDateTime spoilTime(OffsetDateTime at) {
    return switch (random.nextInt(6)) {
      case 0 -> at.plusSeconds(random.nextInt(100_000));
      case 1 -> at.minusMinutes(random.nextInt(10_000));
      case 2 -> at.withOffsetSameInstant(ZoneOffset.ofHours(random.nextInt(30) - 15));
      case 3 -> at.withYear(1970 + random.nextInt(1030));
      case 4 -> at.plusNanos(1);
      default -> at.plusDays(random.nextInt(30));
    };
  }

  private Object other(Enum<?> constant) {
    Object[] all = constant.getDeclaringClass().getEnumConstants();
    return Arrays.asList(all).get(random.nextInt(all.length));
  }

  private Number number() {
    return NUMBERS.get(random.nextInt(NUMBERS.size()));
  }
}
