package strickle.json;

import java.time.DayOfWeek;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collector;
import java.util.stream.Collectors;
import strickle.book.After;
import strickle.book.Order;
import strickle.book.Solid;

/** What things are called in the files, where that is not simply their name in the program. */
final class Names {

  /** Components whose JSON name Java does not allow, as Type.component. */
  private static final Map<String, String> FIELDS =
      Map.of(name(Order.class, "buyer"), "for", name(After.class, "kind"), "wait");

  private static final int WEEKDAY_LENGTH = 3;

  private Names() {}

  /** The field that holds a component. */
  static String field(Class<?> type, String component) {
    return FIELDS.getOrDefault(name(type, component), component);
  }

  /** The word for a constant: lower case, "dry+pigment" for {@code DRY_AND_PIGMENT}. */
  static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace("_and_", "+");
  }

  /** The name of a weekday: MON to SUN. */
  static String weekday(DayOfWeek day) {
    return day.name().substring(0, WEEKDAY_LENGTH);
  }

  /** The name of a kind of solid: "cone-frustum" for {@code ConeFrustum}. */
  static String solid(Class<?> kind) {
    return kind.getSimpleName().replaceAll("(?<=[a-z])(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
  }

  /** Every kind of solid by its name, in the order of the program. */
  static Map<String, Class<? extends Record>> solids() {
    return Arrays.stream(Solid.class.getPermittedSubclasses())
        .<Class<? extends Record>>map(kind -> kind.asSubclass(Record.class))
        .collect(inOrder(Names::solid));
  }

  /** Things by their names, in the order given. */
  static <T> Map<String, T> byName(T[] things, Function<? super T, String> name) {
    return Arrays.stream(things).collect(inOrder(name));
  }

  private static <T> Collector<T, ?, Map<String, T>> inOrder(Function<? super T, String> name) {
    return Collectors.toMap(name, thing -> thing, (one, other) -> one, LinkedHashMap::new);
  }

  private static String name(Class<?> type, String component) {
    return type.getSimpleName() + "." + component;
  }
}
