package strickle.json;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeMap;
import org.joda.money.CurrencyUnit;
import strickle.book.MeshFile;
import strickle.book.ShapePart;
import strickle.book.Window;
import strickle.json.contract.Shape;
import strickle.plan.Task;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Makes JSON schemas (draft 2020-12, as OpenAPI 3.1 uses them) of the records that are read and
 * written: what a schema says is what {@link Readers} reads and {@link RecordWriter} writes.
 */
final class Schemas {

  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
  private static final Set<Class<?>> WHOLE =
      Set.of(
          int.class, long.class, Integer.class, Long.class, OptionalInt.class, OptionalLong.class);
  private static final Set<Class<?>> NUMBERS =
      Set.of(double.class, Double.class, BigDecimal.class, OptionalDouble.class);
  private static final Map<Class<?>, String> TEXTS =
      Map.ofEntries(
          Map.entry(String.class, ""),
          Map.entry(LocalDate.class, "a date such as 2027-04-05"),
          Map.entry(LocalDateTime.class, "a local time such as 2027-04-05T09:00"),
          Map.entry(OffsetDateTime.class, "a time such as 2027-04-05T09:00-05:00"),
          Map.entry(Instant.class, "a moment such as 2027-04-05T14:00:00Z"),
          Map.entry(CurrencyUnit.class, "a currency by ISO 4217 such as USD"),
          Map.entry(ZoneId.class, "a time zone such as America/Chicago"),
          Map.entry(Window.class, "hours such as 09:00-12:00"));

  private final ObjectNode components = NODES.objectNode();
  private final Map<String, Class<?>> named = new TreeMap<>();

  /** Every record met so far, by name. */
  ObjectNode components() {
    return components;
  }

  /** The schema of a body. */
  ObjectNode of(Shape shape) {
    return switch (shape) {
      case Shape.Of record when record.format().isEmpty() -> reference(record.type());
      case Shape.Of record -> withFormat(record);
      case Shape.PageOf page -> page(page);
      case Shape.Anything object -> described(typed("object"), object.description());
      case Shape.Text text -> typed("string");
      case Shape.Bytes bytes -> typed("string").put("contentEncoding", "binary");
    };
  }

  private ObjectNode page(Shape.PageOf page) {
    ObjectNode schema = typed("object");
    ObjectNode fields = schema.putObject("properties");
    fields.set("items", array(of(page.item())));
    if (page.numbered()) {
      fields.set(
          "ids",
          described(array(typed("string")), "the id of each in its address, in their order"));
    }
    fields.set(
        "next",
        described(typed("string"), "what to give as \"after\" for the next page; not on the last"));
    ArrayNode required = schema.putArray("required").add("items");
    if (page.numbered()) {
      required.add("ids");
    }
    return schema.put("additionalProperties", false);
  }

  // The format stands beside the fields of the record, so the record's own schema cannot be used.
  private ObjectNode withFormat(Shape.Of shape) {
    String name = fileName(shape.format());
    if (!components.has(name)) {
      ObjectNode schema = record(shape.type());
      ObjectNode fields = NODES.objectNode();
      fields.set("format", NODES.objectNode().put("const", shape.format()));
      fields.setAll((ObjectNode) schema.get("properties"));
      schema.set("properties", fields);
      ArrayNode required = NODES.arrayNode().add("format");
      required.addAll((ArrayNode) schema.get("required"));
      schema.set("required", required);
      components.set(name, schema);
    }
    return NODES.objectNode().put("$ref", "#/components/schemas/" + name);
  }

  // strickle-what-if/1 is a WhatIfFile.
  private static String fileName(String format) {
    String words = format.substring(format.indexOf('-'), format.indexOf('/'));
    StringBuilder name = new StringBuilder();
    for (String word : words.substring(1).split("-", -1)) {
      name.append(Character.toUpperCase(word.charAt(0))).append(word.substring(1));
    }
    return name.append("File").toString();
  }

  private ObjectNode reference(Class<?> type) {
    String name = name(type);
    if (!components.has(name)) {
      components.set(name, NODES.objectNode()); // first a place, so that a record may hold itself
      components.set(name, record(type));
    }
    return NODES.objectNode().put("$ref", "#/components/schemas/" + name);
  }

  // Two records of one name get the name of the room or the class they live in before theirs.
  private String name(Class<?> type) {
    String simple = type.getSimpleName();
    if (isFree(simple, type)) {
      return simple;
    }
    String home =
        type.isMemberClass()
            ? type.getEnclosingClass().getSimpleName()
            : type.getPackageName().substring(type.getPackageName().lastIndexOf('.') + 1);
    String longer = Character.toUpperCase(home.charAt(0)) + home.substring(1) + simple;
    if (!isFree(longer, type)) {
      throw new IllegalArgumentException("two records would be named " + longer);
    }
    return longer;
  }

  private boolean isFree(String name, Class<?> type) {
    Class<?> first = named.putIfAbsent(name, type);
    return first == null || first == type;
  }

  private ObjectNode record(Class<?> type) {
    ObjectNode schema = typed("object");
    ObjectNode fields = schema.putObject("properties");
    ArrayNode required = schema.putArray("required");
    for (RecordComponent component : type.getRecordComponents()) {
      String name = Names.field(type, component.getName());
      boolean optional = isOptional(type, component);
      ObjectNode field = of(component.getGenericType());
      String unit = isNumber(field) ? Units.ofNumber(name) : Units.of(name);
      fields.set(name, optional ? orNull(field, unit) : described(field, unit));
      if (!optional) {
        required.add(name);
      }
    }
    return schema.put("additionalProperties", false);
  }

  private static boolean isOptional(Class<?> type, RecordComponent component) {
    boolean lotOfARun = type == Task.class && component.getName().equals("lot");
    return lotOfARun || Defaults.of(component).isPresent();
  }

  private static boolean isNumber(ObjectNode schema) {
    String type = schema.path("type").asString("");
    return type.equals("number") || type.equals("integer");
  }

  private static ObjectNode orNull(ObjectNode schema, String unit) {
    ObjectNode either = NODES.objectNode();
    either.putArray("anyOf").add(schema).add(typed("null"));
    return described(either, unit);
  }

  private ObjectNode of(Type type) {
    if (type instanceof ParameterizedType generic) {
      return container(generic);
    }
    Class<?> kind = (Class<?>) type;
    if (WHOLE.contains(kind)) {
      return typed("integer");
    }
    if (NUMBERS.contains(kind)) {
      return typed("number");
    }
    if (kind == boolean.class || kind == Boolean.class) {
      return typed("boolean");
    }
    if (TEXTS.containsKey(kind)) {
      return described(typed("string"), TEXTS.get(kind));
    }
    return kind.isEnum() ? words(kind) : single(kind);
  }

  private ObjectNode single(Class<?> kind) {
    if (kind == ShapePart.class) {
      return solid();
    }
    if (kind == MeshFile.class) {
      ObjectNode either = NODES.objectNode();
      either.putArray("anyOf").add(typed("string")).add(reference(MeshField.class));
      return either;
    }
    if (kind == RawJson.class) {
      return typed("object");
    }
    if (kind.isRecord()) {
      return reference(kind);
    }
    throw new IllegalArgumentException("no schema for " + kind);
  }

  private ObjectNode container(ParameterizedType type) {
    Type[] parts = type.getActualTypeArguments();
    if (type.getRawType() == Optional.class) {
      return of(parts[0]);
    }
    if (type.getRawType() == Map.class && parts[0] == DayOfWeek.class) {
      return week();
    }
    if (type.getRawType() == List.class) {
      ObjectNode list = array(of(parts[0]));
      return parts[0] == ShapePart.class ? orOne(list) : list;
    }
    throw new IllegalArgumentException("no schema for " + type);
  }

  private ObjectNode orOne(ObjectNode list) {
    ObjectNode either = NODES.objectNode();
    either.putArray("anyOf").add(list).add(solid());
    return either;
  }

  private ObjectNode solid() {
    ObjectNode schema = typed("object");
    ObjectNode kind = schema.putObject("properties").putObject(ShapeReader.KIND);
    ArrayNode kinds = kind.putArray("enum");
    Names.solids().keySet().forEach(kinds::add);
    schema.putArray("required").add(ShapeReader.KIND);
    return described(
        schema, "a solid with its measures in millimetres; \"subtract\" takes it away");
  }

  private static ObjectNode week() {
    ObjectNode schema = typed("object");
    ObjectNode days = schema.putObject("properties");
    Arrays.stream(DayOfWeek.values())
        .forEach(day -> days.set(Names.weekday(day), array(typed("string"))));
    return schema.put("additionalProperties", false);
  }

  private static ObjectNode words(Class<?> kind) {
    ObjectNode schema = typed("string");
    ArrayNode words = schema.putArray("enum");
    Arrays.stream(kind.getEnumConstants()).forEach(word -> words.add(Names.word((Enum<?>) word)));
    return schema;
  }

  private static ObjectNode array(ObjectNode items) {
    ObjectNode schema = typed("array");
    schema.set("items", items);
    return schema;
  }

  private static ObjectNode typed(String type) {
    return NODES.objectNode().put("type", type);
  }

  private static ObjectNode described(ObjectNode schema, String description) {
    if (!description.isEmpty()) {
      schema.put("description", description);
    }
    return schema;
  }
}
