package strickle.json;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import strickle.book.Fault;
import strickle.book.Faulty;

/**
 * Makes a record through its canonical constructor; faults that the constructor finds come out with
 * the names that the file has for the fields.
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

  /** Makes the record of its parts, by component. */
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
    return switch (refused.getCause()) {
      case Faulty faulty -> inFileNames(faulty);
      case RuntimeException other -> other;
      case null, default -> new IllegalStateException("cannot make " + type, refused);
    };
  }

  private Faulty inFileNames(Faulty faulty) {
    List<Fault> faults =
        faulty.faults().stream()
            .map(fault -> new Fault(Names.path(type, fault.path()), fault.found(), fault.right()))
            .toList();
    return new Faulty(faults);
  }
}
