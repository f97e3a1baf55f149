package strickle.plan.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.Window;

class ChangeTextTest {

  private static final LocalDate SATURDAY = LocalDate.parse("2027-04-10");

  private static Fault refusal(String text) {
    List<Fault> faults = assertThrows(Faulty.class, () -> ChangeText.read(text)).faults();
    assertEquals(1, faults.size());
    assertEquals("\"" + text + "\"", faults.get(0).found());
    return faults.get(0);
  }

  @Test
  void everyKindOfChangeIsRead() {
    Window morning = Window.parse("09:00-12:00");
    assertEquals(new MoreForms("tub-a", 2), ChangeText.read("form:tub-a+2"));
    assertEquals(new MorePlaces("rack", 4), ChangeText.read("places:rack+4"));
    assertEquals(
        new MoreHours("ana", SATURDAY, morning),
        ChangeText.read("hours:ana:2027-04-10T09:00-12:00"));
    assertEquals(new Helper(SATURDAY, Optional.empty()), ChangeText.read("helper:2027-04-10"));
    assertEquals(
        new Helper(SATURDAY, Optional.of(morning)),
        ChangeText.read("helper:2027-04-10T09:00-12:00"));
    assertEquals(new WarmerRoom(2), ChangeText.read("room:+2"));
    assertEquals(new RoomAtLeast(20.5), ChangeText.read("room:20.5"));
    assertEquals(new RoomAtLeast(-3), ChangeText.read("room:-3"));
    assertEquals(new BatchLimit(12000), ChangeText.read("batch:12000"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "form:a+b+1",
        "form:x:y+1",
        "hours:a:b:2027-04-10T00:00-24:00",
        "helper:2028-02-29",
        "helper:2027-04-10T22:30-24:00",
        "room:+0.5",
        "room:20",
        "batch:12000.5",
        "places:curing box+12"
      })
  void aChangeIsWrittenAsItIsRead(String text) {
    assertEquals(text, ChangeText.read(text).text());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "from:tub-a+1 | form:ID+1",
        "forms:tub-a+1 | form:ID+1",
        "hour:ana | hours:ID:2027-04-10T09:00-12:00",
        "anything | one of form:ID+1",
        "form | form:ID+1",
        "form:tub-a | form:ID+1",
        "form:+1 | form:ID+1",
        "form:tub-a+0 | 1 to 999 more",
        "form:tub-a+1000 | 1 to 999 more",
        "form:tub-a+99999999999 | form:ID+1",
        "places:rack+0 | 1 to 99999 more",
        "hours:ana:2027-04-10 | hours:ID:2027-04-10T09:00-12:00",
        "hours:ana:2027-04-10T12:00-09:00 | end after they start",
        "hours:ana:2027-04-31T09:00-12:00 | a date that is in the calendar",
        "helper:tomorrow | helper:2027-04-10 or",
        "helper:3027-04-10 | from 1970 to 2199",
        "room:warm | room:+2",
        "room:+0 | more than 0 °C",
        "room:61 | from -30 to 60 °C",
        "batch:0 | above 0 and at most 10000000 g",
        "batch:12kg | batch:12000, in grams",
      })
  void whatIsNoChangeIsRefusedWithWhatWouldBeOne(String text, String right) {
    assertTrue(refusal(text).right().contains(right), refusal(text).toString());
  }
}
