package strickle.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A refusal of the service tells its times as the reader writes them. */
@FunctionTest
class RefusedTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "a time after 2027-03-01T18:30 | a time after Mon, Mar 1, 6:30 p.m.",
        "2027-03-01T18:30-04:00 | Mon, Mar 1, 6:30 p.m.",
        "none before 2027-03-01, and 2 | none before Mon, Mar 1, and 2",
        "1999-03-01T18:30 | 1999-03-01T18:30",
        "2027-45-45T99:99 | 2027-45-45T99:99",
        "G-12027-03-011 | G-12027-03-011",
        "3 of 2 pieces | 3 of 2 pieces"
      })
  void timesNotFarFromNowAreWrittenForTheReader(String told, String shown) {
    assertEquals(shown, show(told).replace('\u202f', ' ').replace('\u00a0', ' '));
  }

  private static String show(String told) {
    return (String)
        Functions.call(
            """
            async ({load, wear}, {told}) => {
              await wear({locale: 'en-CA', zone: 'America/Halifax'});
              const {inWords} = await load('app/refused.js');
              return inWords(told, new Date('2027-03-02T12:00Z'));
            }
            """,
            Map.of("told", told));
  }
}
