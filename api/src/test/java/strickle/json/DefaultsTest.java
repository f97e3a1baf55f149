package strickle.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import strickle.book.Core;
import strickle.book.Mould;
import strickle.book.Order;

class DefaultsTest {

  @Test
  void everyDefaultIsOfAComponentAndOfItsKind() {
    Defaults.BY_FIELD.forEach(
        (type, defaults) ->
            defaults.forEach((name, value) -> assertKind(component(type, name), value)));
  }

  @Test
  void optionalsAndListsAreEmptyAndOtherFieldsRequired() {
    assertEquals(Optional.of(0.0), Defaults.of(component(Mould.class, "wastePercent")));
    assertEquals(Optional.of(Optional.empty()), Defaults.of(component(Mould.class, "core")));
    assertEquals(Optional.empty(), Defaults.of(component(Mould.class, "pourMinutes")));
    assertEquals(Optional.empty(), Defaults.of(component(Core.class, "safetyFactor")));
    assertEquals(Optional.empty(), Defaults.of(component(Order.class, "due")));
  }

  private static RecordComponent component(Class<? extends Record> type, String name) {
    return Arrays.stream(type.getRecordComponents())
        .filter(component -> component.getName().equals(name))
        .findFirst()
        .orElseThrow(() -> new AssertionError(type + " has no " + name));
  }

  private static void assertKind(RecordComponent component, Object value) {
    Map<Class<?>, Class<?>> boxes =
        Map.of(int.class, Integer.class, double.class, Double.class, boolean.class, Boolean.class);
    Class<?> kind = boxes.getOrDefault(component.getType(), component.getType());
    assertTrue(kind.isInstance(value), component + " is not " + value);
  }
}
