package strickle.book;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;

/** Rebuilds a record with some of its components exchanged, so that a test names only those. */
public final class Altered {

  private Altered() {}

  /**
   * The record with one component exchanged; whatever its constructor throws comes through.
   *
   * @param component the component's name; an unknown one is refused
   */
  public static <R extends Record> R of(R record, String component, Object value) {
    RecordComponent[] components = record.getClass().getRecordComponents();
    Object[] values = Arrays.stream(components).map(c -> read(record, c)).toArray();
    values[placeOf(component, components)] = value;
    return build(record, components, values);
  }

  private static int placeOf(String component, RecordComponent[] components) {
    int place = Arrays.stream(components).map(RecordComponent::getName).toList().indexOf(component);
    if (place < 0) {
      throw new IllegalArgumentException("no component " + component);
    }
    return place;
  }

  /** What a component of a record holds. */
  static Object read(Record record, RecordComponent component) {
    try {
      return component.getAccessor().invoke(record);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }

  @SuppressWarnings("unchecked")
  private static <R extends Record> R build(
      R record, RecordComponent[] components, Object[] values) {
    try {
      return (R) record.getClass().getDeclaredConstructor(types(components)).newInstance(values);
    } catch (InvocationTargetException e) {
      if (e.getCause() instanceof RuntimeException thrown) {
        throw thrown;
      }
      throw new IllegalStateException(e);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Class<?>[] types(RecordComponent[] components) {
    return Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
  }
}
