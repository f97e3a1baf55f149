package strickle.json;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import org.joda.money.CurrencyUnit;
import strickle.book.MeshFile;
import strickle.book.ShapePart;
import strickle.book.Window;

/** Finds the reader for every kind of value, records by reflection over their components. */
final class Readers {

  private final Map<Type, ValueReader<?>> readers = new HashMap<>();

  /** Readers of everything but meshes, which need a folder to lie in. */
  Readers() {
    numbers();
    texts();
  }

  /**
   * Readers of everything.
   *
   * @param meshes where mesh files lie
   */
  Readers(Meshes meshes) {
    this();
    readers.put(MeshFile.class, new MeshReader(meshes, record(MeshField.class)));
  }

  /** The reader of a record. */
  <R extends Record> RecordReader<R> record(Class<R> type) {
    return record(type, List.of());
  }

  /** The reader of a record; {@code others} are names in the same object that others read. */
  <R extends Record> RecordReader<R> record(Class<R> type, List<String> others) {
    List<Field> fields = Arrays.stream(type.getRecordComponents()).map(this::field).toList();
    return new RecordReader<>(type, fields, others);
  }

  /** The field that holds a component. */
  Field field(Class<? extends Record> type, String component) {
    return Arrays.stream(type.getRecordComponents())
        .filter(candidate -> candidate.getName().equals(component))
        .map(this::field)
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException(type + " has no " + component));
  }

  private Field field(RecordComponent component) {
    return new Field(
        component.getName(),
        Names.field(component.getDeclaringRecord(), component.getName()),
        of(component.getGenericType()),
        Defaults.of(component));
  }

  private ValueReader<?> of(Type type) {
    ValueReader<?> known = readers.get(type);
    if (known == null) {
      known = type instanceof ParameterizedType generic ? container(generic) : single(type);
      readers.put(type, known);
    }
    return known;
  }

  private ValueReader<?> single(Type type) {
    if (type instanceof Class<?> kind && kind.isRecord()) {
      return record(kind.asSubclass(Record.class));
    }
    if (type instanceof Class<?> kind && kind.isEnum()) {
      Enum<?>[] constants = (Enum<?>[]) kind.getEnumConstants();
      return new ChoiceReader<>(Names.byName(constants, Names::word));
    }
    throw new IllegalArgumentException("no reader for " + type);
  }

  private ValueReader<?> container(ParameterizedType type) {
    Type[] parts = type.getActualTypeArguments();
    if (type.getRawType() == Optional.class) {
      return of(parts[0]).then(Optional::of);
    }
    if (parts[0] == ShapePart.class) {
      return new ShapeReader(this).orList();
    }
    if (type.getRawType() == List.class) {
      return new ListReader<>(of(parts[0]));
    }
    if (type.getRawType() == Map.class && parts[0] == DayOfWeek.class) {
      return new WeekReader(new ListReader<>(windows()));
    }
    throw new IllegalArgumentException("no reader for " + type);
  }

  private void numbers() {
    readers.put(int.class, NumberReader.ofInt());
    readers.put(Integer.class, NumberReader.ofInt());
    readers.put(long.class, NumberReader.ofLong());
    readers.put(double.class, NumberReader.ofDouble());
    readers.put(Double.class, NumberReader.ofDouble());
    readers.put(BigDecimal.class, NumberReader.ofDecimal());
    readers.put(OptionalInt.class, NumberReader.ofInt().then(OptionalInt::of));
    readers.put(OptionalLong.class, NumberReader.ofLong().then(OptionalLong::of));
    readers.put(OptionalDouble.class, NumberReader.ofDouble().then(OptionalDouble::of));
  }

  private void texts() {
    readers.put(boolean.class, new FlagReader());
    readers.put(Boolean.class, new FlagReader());
    readers.put(String.class, new TextReader<>("a text in double quotes", text -> text));
    readers.put(LocalDate.class, Times.dates());
    readers.put(LocalDateTime.class, Times.localTimes());
    readers.put(OffsetDateTime.class, Times.offsetTimes());
    readers.put(CurrencyUnit.class, Standards.currencies());
    readers.put(ZoneId.class, Standards.timeZones());
    readers.put(Window.class, windows());
  }

  private static ValueReader<Window> windows() {
    return new TextReader<>("hours such as \"09:00-12:00\"", Window::parse);
  }
}
