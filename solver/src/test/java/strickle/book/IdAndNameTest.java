package strickle.book;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class IdAndNameTest {

  static Stream<String> badIds() {
    return Stream.of(
        "",
        " ",
        " a",
        "a ",
        "\u00a0a",
        "a/b",
        "a\nb",
        "a\u0000",
        "\ud800",
        "a\u2028b",
        "a".repeat(65));
  }

  static Stream<Arguments> ids() {
    return AllRecords.records()
        .flatMap(
            record ->
                Stream.of(
                        "id",
                        "piece",
                        "mould",
                        "mix",
                        "material",
                        "form",
                        "station",
                        "channel",
                        "person")
                    .filter(name -> hasText(record, name))
                    .map(name -> Arguments.of(record, name)));
  }

  static Stream<Arguments> names() {
    return AllRecords.records()
        .flatMap(
            record ->
                Stream.of("name", "step", "unit")
                    .filter(name -> hasText(record, name))
                    .map(name -> Arguments.of(record, name)));
  }

  private static boolean hasText(Record record, String component) {
    return Stream.of(record.getClass().getRecordComponents())
        .anyMatch(c -> c.getName().equals(component) && c.getType() == String.class);
  }

  @ParameterizedTest
  @MethodSource("ids")
  void anIdIsShortAndFitForAPath(Record record, String component) {
    badIds()
        .forEach(
            id ->
                assertEquals(
                    "." + component, Faults.only(() -> Altered.of(record, component, id)).path()));
    Stream.of("a", "O-104", "Gießform 3", "日本", "a".repeat(64), "😀".repeat(64))
        .forEach(id -> assertEquals(record.getClass(), altered(record, component, id).getClass()));
  }

  private static Record altered(Record record, String component, Object value) {
    return assertDoesNotThrow(() -> Altered.of(record, component, value));
  }

  @ParameterizedTest
  @MethodSource("names")
  void aNameHasAtMost200CharactersAndNotOnlySpaces(Record record, String component) {
    Stream.of("", "  ", "a\tb", "n".repeat(201))
        .forEach(
            name ->
                assertEquals(
                    "." + component,
                    Faults.only(() -> Altered.of(record, component, name)).path()));
    altered(record, component, "n".repeat(200));
  }
}
