package strickle.json;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.Map;

/**
 * Makes a record through its canonical constructor, so that whatever the constructor refuses stays
 * refused.
 *
 * @param <R> the record
 */
final class RecordMaker<R extends Record> {

  private final Class<R> type;
  private final RecordComponent[] components;
  private final Constructor<R> constructor;

  /**
   * A maker of one record.
   *
   * @param type the record
   */
  RecordMaker(Class<R> type) {
    this.type = type;
    this.components = type.getRecordComponents();
    Class<?>[] types =
        Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
    try {
      this.constructor = type.getDeclaredConstructor(types);
      // A message need not be public to everybody only to be read.
      constructor.setAccessible(true);
    } catch (NoSuchMethodException impossible) {
      throw new IllegalArgumentException(type + " is not a record", impossible);
    }
  }

  /**
   * Makes the record of its parts, by component.
   *
   * @throws strickle.book.Faulty when the constructor refuses them
   */
  R make(Map<String, Object> parts) {
    Object[] arguments =
        Arrays.stream(components).map(component -> parts.get(component.getName())).toArray();
    try {
      return constructor.newInstance(arguments);
    } catch (InvocationTargetException refused) {
      throw cause(refused);
    } catch (ReflectiveOperationException impossible) {
      throw new IllegalStateException("cannot make " + type, impossible);
    }
  }

  private RuntimeException cause(InvocationTargetException refused) {
    return refused.getCause() instanceof RuntimeException told
        ? told
        : new IllegalStateException("cannot make " + type, refused);
  }
}
