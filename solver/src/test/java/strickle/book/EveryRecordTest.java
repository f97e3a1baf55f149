package strickle.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Rules that every record of the book holds. */
class EveryRecordTest {

  private static final Map<String, String> NAMES_IN_THE_FILE =
      Map.of("Order.buyer", ".for", "After.kind", ".wait");

  static Stream<Arguments> parts() {
    return AllRecords.records().flatMap(EveryRecordTest::parts);
  }

  private static Stream<Arguments> parts(Record record) {
    return Arrays.stream(record.getClass().getRecordComponents())
        .map(component -> Arguments.of(record, component));
  }

  static Stream<Arguments> partsThatAreObjects() {
    return parts().filter(part -> !component(part).getType().isPrimitive());
  }

  static Stream<Arguments> lists() {
    return parts().filter(part -> component(part).getType() == List.class);
  }

  private static RecordComponent component(Arguments part) {
    return (RecordComponent) part.get()[1];
  }

  @ParameterizedTest
  @MethodSource("partsThatAreObjects")
  void aPartThatIsNotGivenIsAFaultAtItsPath(Record record, RecordComponent component) {
    Fault fault = Faults.of(() -> Altered.of(record, component.getName(), null)).get(0);

    assertEquals(pathOf(record, component), fault.path());
    assertEquals("nothing", fault.found());
  }

  private static String pathOf(Record record, RecordComponent component) {
    String place = record.getClass().getSimpleName() + "." + component.getName();
    String outer = record instanceof Book ? "$" : "";
    return outer + NAMES_IN_THE_FILE.getOrDefault(place, "." + component.getName());
  }

  @ParameterizedTest
  @MethodSource("lists")
  void aListCannotBeChanged(Record record, RecordComponent component) {
    List<?> list = (List<?>) Altered.read(record, component);

    assertThrows(UnsupportedOperationException.class, () -> list.add(null));
    if (!list.isEmpty()) {
      assertThrows(UnsupportedOperationException.class, () -> list.remove(0));
      assertThrows(UnsupportedOperationException.class, list::clear);
    }
  }

  @ParameterizedTest
  @MethodSource("lists")
  void aListIsACopyOfTheOneGiven(Record record, RecordComponent component) {
    List<Object> given = new ArrayList<>((List<?>) Altered.read(record, component));
    List<Object> expected = List.copyOf(given);
    Record built = Altered.of(record, component.getName(), given);

    given.clear();

    assertEquals(expected, Altered.read(built, component));
  }

  @ParameterizedTest
  @MethodSource("lists")
  void aGapInAListIsAFaultAtItsPlace(Record record, RecordComponent component) {
    List<Object> given = new ArrayList<>(Collections.singletonList(null));

    List<String> paths = Faults.paths(() -> Altered.of(record, component.getName(), given));

    assertTrue(paths.contains(pathOf(record, component) + "[0]"), paths.toString());
  }

  @Test
  void aRecordRebuiltFromItsPartsIsEqual() {
    AllRecords.records()
        .forEach(
            record -> {
              RecordComponent first = record.getClass().getRecordComponents()[0];
              Record again = Altered.of(record, first.getName(), Altered.read(record, first));
              assertEquals(record, again);
              assertEquals(record.hashCode(), again.hashCode());
              assertNotNull(again.toString());
            });
  }

  @Test
  void thereIsAnExampleOfEveryRecordInTheBook() {
    List<String> shown =
        AllRecords.records().map(record -> record.getClass().getSimpleName()).toList();

    assertEquals(27, shown.size());
    assertFalse(shown.stream().anyMatch(name -> Collections.frequency(shown, name) > 1));
  }
}
