package strickle.json;

import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeMap;
import org.joda.money.CurrencyUnit;
import strickle.book.LengthUnit;
import strickle.book.MeshFile;
import strickle.book.Mix;
import strickle.book.Mould;
import strickle.book.Person;
import strickle.book.Piece;
import strickle.book.ShapePart;
import strickle.book.Step;
import strickle.book.Studio;
import strickle.book.Window;
import strickle.plan.Run;
import strickle.plan.Task;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Makes a tree of any record: its fields in the order of its components, what is not there left
 * out. Amounts keep the decimals they have; measures are written without needless ones.
 */
final class RecordWriter {

  /** Lists that say the same when they are missing, and less to the eye. */
  private static final Map<Class<?>, Set<String>> LEFT_OUT_WHEN_EMPTY =
      Map.of(
          Studio.class, Set.of("climate"),
          Person.class, Set.of("exceptions"),
          Mould.class, Set.of("shape", "consumes"),
          Mix.class, Set.of("pigment"),
          Piece.class, Set.of("packing"),
          Step.class, Set.of("by", "consumes"));

  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private RecordWriter() {}

  /** The tree of a record. */
  static ObjectNode object(Record record) {
    ObjectNode object = NODES.objectNode();
    for (RecordComponent component : record.getClass().getRecordComponents()) {
      Object part = part(record, component);
      if (!isLeftOut(component, part)) {
        String name = Names.field(record.getClass(), component.getName());
        value(part).ifPresent(value -> object.set(name, value));
      }
    }
    return object;
  }

  private static Object part(Record record, RecordComponent component) {
    try {
      Method accessor = component.getAccessor();
      accessor.setAccessible(true);
      return accessor.invoke(record);
    } catch (ReflectiveOperationException impossible) {
      throw new IllegalStateException("cannot read " + component, impossible);
    }
  }

  private static boolean isLeftOut(RecordComponent component, Object part) {
    Class<?> record = component.getDeclaringRecord();
    if (record == Task.class || record == Run.class) {
      // A plan in which nothing has happened yet says nothing of it.
      return part.equals(Defaults.BY_FIELD.get(record).get(component.getName()));
    }
    return part instanceof Collection<?> list
        && list.isEmpty()
        && LEFT_OUT_WHEN_EMPTY
            .getOrDefault(component.getDeclaringRecord(), Set.of())
            .contains(component.getName());
  }

  private static Optional<JsonNode> value(Object part) {
    return switch (part) {
      case Optional<?> optional -> optional.flatMap(RecordWriter::value);
      case OptionalInt optional ->
          optional.isPresent() ? value(optional.getAsInt()) : Optional.empty();
      case OptionalLong optional ->
          optional.isPresent() ? value(optional.getAsLong()) : Optional.empty();
      case OptionalDouble optional ->
          optional.isPresent() ? value(optional.getAsDouble()) : Optional.empty();
      default -> Optional.of(present(part));
    };
  }

  private static JsonNode present(Object part) {
    return switch (part) {
      case List<?> list -> list(list);
      case Map<?, ?> week -> week(week);
      case MeshFile mesh -> mesh(mesh);
      case ShapePart shape -> shape(shape);
      case Window window -> NODES.stringNode(window.toString());
      case RawJson raw -> Tree.of(raw.text(), new Findings());
      case Record record -> object(record);
      case Number number -> NODES.numberNode(decimal(number));
      case Boolean flag -> NODES.booleanNode(flag);
      default -> NODES.stringNode(text(part));
    };
  }

  private static BigDecimal decimal(Number number) {
    return switch (number) {
      case BigDecimal amount -> amount;
      case Double measure -> plain(BigDecimal.valueOf(measure));
      default -> BigDecimal.valueOf(number.longValue());
    };
  }

  /** The same number without needless decimals. */
  static BigDecimal plain(BigDecimal number) {
    BigDecimal stripped = number.stripTrailingZeros();
    return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
  }

  private static String text(Object part) {
    return switch (part) {
      case String text -> text;
      case Enum<?> constant -> Names.word(constant);
      case LocalDate date -> Times.written(date);
      case LocalDateTime time -> Times.written(time);
      case OffsetDateTime time -> Times.written(time);
      case Instant moment -> moment.toString();
      case CurrencyUnit currency -> currency.getCode();
      case ZoneId zone -> zone.getId();
      default -> throw new IllegalArgumentException("no way to write " + part.getClass());
    };
  }

  private static JsonNode list(List<?> list) {
    if (list.size() == 1 && list.get(0) instanceof ShapePart only) {
      return shape(only);
    }
    ArrayNode array = NODES.arrayNode();
    list.forEach(part -> array.add(present(part)));
    return array;
  }

  private static ObjectNode week(Map<?, ?> hours) {
    Map<DayOfWeek, JsonNode> sorted = new TreeMap<>();
    hours.forEach((day, windows) -> sorted.put((DayOfWeek) day, present(windows)));
    ObjectNode week = NODES.objectNode();
    sorted.forEach((day, windows) -> week.set(Names.weekday(day), windows));
    return week;
  }

  // The volume measured from the mesh is not written: it is measured again from the file.
  private static JsonNode mesh(MeshFile mesh) {
    return mesh.unit() == LengthUnit.MM
        ? NODES.stringNode(mesh.file())
        : object(new MeshField(mesh.file(), mesh.unit()));
  }

  private static ObjectNode shape(ShapePart shape) {
    ObjectNode object = NODES.objectNode();
    object.put(ShapeReader.KIND, Names.solid(shape.solid().getClass()));
    object.setAll(object((Record) shape.solid()));
    if (shape.subtract()) {
      object.put(ShapeReader.SUBTRACT, true);
    }
    return object;
  }
}
