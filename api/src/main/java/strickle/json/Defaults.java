package strickle.json;

import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import strickle.book.After;
import strickle.book.Channel;
import strickle.book.FormUse;
import strickle.book.LengthUnit;
import strickle.book.Material;
import strickle.book.Mould;
import strickle.book.Order;
import strickle.book.Person;
import strickle.book.Piece;
import strickle.book.ShapePart;
import strickle.book.Step;
import strickle.book.WaitKind;
import strickle.plan.Run;
import strickle.plan.Task;

/** What holds when a field is missing or null. A field that is in neither table is required. */
final class Defaults {

  private static final Map<Class<?>, Object> BY_KIND =
      Map.of(
          List.class, List.of(),
          Optional.class, Optional.empty(),
          OptionalInt.class, OptionalInt.empty(),
          OptionalLong.class, OptionalLong.empty(),
          OptionalDouble.class, OptionalDouble.empty());

  private static final After AT_ONCE = new After(WaitKind.REST, 0, OptionalDouble.empty());

  private static final BigDecimal ZERO = BigDecimal.ZERO;

  /** By record and component; a test holds the names and types against the records. */
  static final Map<Class<? extends Record>, Map<String, Object>> BY_FIELD =
      Map.ofEntries(
          Map.entry(Person.class, Map.of("hours", Map.of())),
          Map.entry(FormUse.class, Map.of("count", 1)),
          Map.entry(Mould.class, Map.of("wastePercent", 0.0, "prepMinutes", 0)),
          Map.entry(MeshField.class, Map.of("unit", LengthUnit.MM)),
          Map.entry(ShapePart.class, Map.of("subtract", false)),
          Map.entry(Material.class, Map.of("onHand", ZERO, "leadDays", 0)),
          Map.entry(
              Piece.class,
              Map.of("goodPercent", 100.0, "onHand", 0, "typicalRun", 1, "finalDryHours", 0.0)),
          Map.entry(Step.class, Map.of("setupMinutes", 0, "minutesEach", 0, "after", AT_ONCE)),
          Map.entry(Run.class, Map.of("scrapped", 0)),
          Map.entry(Task.class, Map.of("begun", false, "done", false)),
          Map.entry(Order.class, Map.of("buyer", "", "kind", "custom", "weight", BigDecimal.ONE)),
          Map.entry(
              Channel.class,
              Map.of("percentFee", ZERO, "fixedFee", ZERO, "discountPercent", ZERO)));

  private Defaults() {}

  /** What a component is when its field is missing; nothing when the field is required. */
  static Optional<Object> of(RecordComponent component) {
    Map<String, Object> own =
        BY_FIELD.getOrDefault(component.getDeclaringRecord(), Map.<String, Object>of());
    Object value = own.getOrDefault(component.getName(), BY_KIND.get(component.getType()));
    return Optional.ofNullable(value);
  }
}
