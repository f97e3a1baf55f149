package strickle.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A long list is drawn piece by piece. */
@FunctionTest
class PiecewiseTest {

  /** A component that draws as many of 10 as it is told, and notes how many that were. */
  private static final String HOST =
      """
      const {Piecewise} = await load('parts/piecewise.js');
      const seen = [];
      let key = 'monday';
      const host = {
        all: 10,
        addController() {},
        requestUpdate() {
          seen.push(Math.min(this.all, pieces.drawn(key, this.all)));
          pieces.hostUpdated();
        },
      };
      const pieces = new Piecewise(host, {first: 3, step: 4});
      const soon = () => new Promise(done => requestAnimationFrame(() => setTimeout(() => setTimeout(done))));
      """;

  private static List<?> seen(String body) {
    return Functions.list("async ({load}) => {" + HOST + body + "return seen; }", null);
  }

  @Test
  void whatFillsAWindowComesAtOnceAndTheRestFrameByFrame() {
    assertEquals(
        List.of(3, 7, 10), seen("host.requestUpdate(); for (let n = 0; n < 5; n++) await soon();"));
  }

  @Test
  void anotherListBeginsAnewAndWhatIsAddedToAWholeOneComesAtOnce() {
    assertEquals(
        List.of(3, 7, 10, 20, 3, 7, 11, 15, 19, 20),
        seen(
            """
            host.requestUpdate();
            for (let n = 0; n < 5; n++) await soon();
            host.all = 20;
            host.requestUpdate();
            key = 'tuesday';
            host.requestUpdate();
            for (let n = 0; n < 8; n++) await soon();
            """));
  }

  @Test
  void allOfItStandsOnPaper() {
    assertEquals(
        List.of(3, 10),
        seen(
            """
            pieces.hostConnected();
            host.requestUpdate();
            dispatchEvent(new Event('beforeprint'));
            pieces.hostDisconnected();
            await soon();
            """));
  }
}
