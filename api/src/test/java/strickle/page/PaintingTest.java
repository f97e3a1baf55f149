package strickle.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Which days of the board are seen. */
@FunctionTest
class PaintingTest {

  @Test
  void aBoardWithoutWidthOrBetweenTwoDaysStillSeesTheDayBefore() {
    assertEquals(
        List.of(List.of(1), List.of(1), List.of(1, 2), List.of(2)),
        Functions.list(
            """
            async ({load}) => {
              const {Painting} = await load('board/painting.js');
              const {get} = Object.getOwnPropertyDescriptor(Painting.prototype, 'seen');
              const days = [{number: 1, from: 100, to: 200}, {number: 2, from: 300, to: 400}];
              const board = {axis: {xOf: minute => minute}, week: {days}};
              return [[0, 0], [220, 60], [100, 300], [500, 0]].map(([left, seenWidth]) =>
                get.call({board, left, seenWidth}).days.map(day => day.number));
            }
            """,
            null));
  }
}
