package strickle.cli;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import strickle.book.Amount;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.Solid;

/**
 * Reads a solid as it is written on the command line: {@code box:length=200,width=150,height=1in},
 * a bare number being millimetres. In place of a radius a diameter may be given. The measures are
 * those a book knows, so that both speak of the same solids.
 */
final class SolidText {

  private static final String MM = "Mm";
  private static final String RADIUS = "radius";
  private static final String DIAMETER = "diameter";

  private final Class<?> kind;
  private final Spec spec;
  private final List<Fault> faults = new ArrayList<>();

  private SolidText(Class<?> kind, Spec spec) {
    this.kind = kind;
    this.spec = spec;
  }

  /** Where a solid of an option that may be given several times is: "--add box". */
  static String place(String option, String text) {
    String name = MaterialSpec.nameIn(text).strip();
    return kinds().containsKey(name) ? option + " " + name : option;
  }

  /** What solids there are and how their measures are called, for help. */
  static String help() {
    return String.join(
        "; ",
        kinds().entrySet().stream()
            .map(kind -> kind.getKey() + ":" + String.join(",", measures(kind.getValue())))
            .toList());
  }

  /**
   * Reads a solid.
   *
   * @throws Faulty with every fault, paths relative to the option
   */
  static Solid read(String text) {
    Map<String, Class<?>> kinds = kinds();
    String name = text.contains(":") ? text.substring(0, text.indexOf(':')).strip() : text;
    Class<?> kind = kinds.get(name);
    if (kind == null) {
      String right = "a solid such as box:length=200,width=150,height=25; there are ";
      throw new Faulty(
          List.of(new Fault("", '"' + text + '"', right + String.join(", ", kinds.keySet()))));
    }
    String right = "a solid such as " + name + ":" + String.join("=50,", measures(kind)) + "=50";
    return new SolidText(kind, Spec.named(text, keys(kind), right)).solid();
  }

  private Solid solid() {
    RecordComponent[] components = kind.getRecordComponents();
    Object[] values = new Object[components.length];
    for (int i = 0; i < components.length; i++) {
      values[i] = millimetres(measure(components[i]));
    }
    if (!faults.isEmpty()) {
      throw new Faulty(faults);
    }
    return made(values);
  }

  private double millimetres(String measure) {
    Optional<String> given = spec.value(measure);
    String other = measure.replace(RADIUS, DIAMETER);
    Optional<String> across = other.equals(measure) ? Optional.empty() : spec.value(other);
    if (given.isPresent() == across.isPresent()) {
      String found = given.isPresent() ? "a radius and a diameter" : "nothing";
      faults.add(new Fault("." + measure, found, "a length such as 50, 5 cm or 2 in"));
      return 0;
    }
    return given.isPresent() ? length(measure, given.get()) : length(other, across.get()) / 2;
  }

  private double length(String measure, String text) {
    try {
      return Amount.length(text);
    } catch (Faulty faulty) {
      faulty.faults().forEach(fault -> faults.add(fault.under("." + measure)));
      return 0;
    }
  }

  private Solid made(Object[] values) {
    Constructor<?> maker = kind.getDeclaredConstructors()[0];
    try {
      return (Solid) maker.newInstance(values);
    } catch (InvocationTargetException refused) {
      if (refused.getCause() instanceof Faulty faulty) {
        throw named(faulty);
      }
      throw new IllegalStateException(refused);
    } catch (ReflectiveOperationException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  // The record speaks of radiusMm in numbers, the command line of a radius or diameter as written.
  private Faulty named(Faulty faulty) {
    return new Faulty(faulty.faults().stream().map(this::named).toList());
  }

  private Fault named(Fault fault) {
    String measure = measure(fault.path().substring(1));
    String across = measure.replace(RADIUS, DIAMETER);
    String written = spec.value(measure).isPresent() ? measure : across;
    boolean number = fault.found().matches("[-0-9.E]+");
    String found = number ? '"' + spec.value(written).orElseThrow() + '"' : fault.found();
    String what = written.equals(measure) ? "a length" : "a radius";
    String right = fault.right().replaceFirst("^a number", what).replaceFirst(";.*", "");
    return new Fault("." + written, found, right.matches(".*[0-9]") ? right + " mm" : right);
  }

  private static Map<String, Class<?>> kinds() {
    Map<String, Class<?>> kinds = new LinkedHashMap<>();
    for (Class<?> kind : Solid.class.getPermittedSubclasses()) {
      kinds.put(kebab(kind.getSimpleName()), kind);
    }
    return kinds;
  }

  private static Set<String> keys(Class<?> kind) {
    Set<String> keys = new LinkedHashSet<>(measures(kind));
    measures(kind).forEach(measure -> keys.add(measure.replace(RADIUS, DIAMETER)));
    return keys;
  }

  private static List<String> measures(Class<?> kind) {
    return Arrays.stream(kind.getRecordComponents()).map(SolidText::measure).toList();
  }

  private static String measure(RecordComponent component) {
    return measure(component.getName());
  }

  private static String measure(String component) {
    return kebab(
        component.endsWith(MM)
            ? component.substring(0, component.length() - MM.length())
            : component);
  }

  private static String kebab(String camel) {
    return camel.replaceAll("(?<=[a-z])(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
  }
}
