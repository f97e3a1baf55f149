package strickle.book;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RegisterTest {

  private static final Station FIRST = new Station("rack", "the first rack", 1);
  private static final Station SECOND = new Station("rack", "the second rack", 2);

  @Test
  void ofTwoWithTheSameIdTheFirstIsFound() {
    Register<Station> register = new Register<>("station", List.of(FIRST, SECOND), Station::id);

    assertEquals(FIRST, register.item("rack"));
    assertEquals(0, register.placeOf("rack"));
    assertEquals(List.of(FIRST, SECOND), register);
  }

  @Test
  void whatIsNotThereIsNotFound() {
    Register<Station> empty = new Register<>("station", List.of(), Station::id);

    assertEquals(Optional.empty(), empty.find("rack"));
    assertEquals(List.of(), empty);
  }
}
