package strickle.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Where time, rows and bars lie on the Week's board. Random weeks come from a fixed seed. */
@FunctionTest
class BoardPlacesTest {

  /**
   * A stretch of two weeks with opening hours drawn from a seed (mulberry32, a public-domain
   * generator).
   */
  private static final String DRAWN =
      """
      const draw = seed => () => {
        seed = (seed + 0x6d2b79f5) | 0;
        let mixed = Math.imul(seed ^ (seed >>> 15), 1 | seed);
        mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
        return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
      };
      const weekOf = (seed, {trueTime = false, days = 7} = {}) => {
        const next = draw(seed);
        const from = 30000000;
        const open = Array.from({length: 14}, (_, day) => {
          const start = from + day * 1440 + Math.floor(360 + next() * 400);
          return {from: start, to: start + Math.floor(60 + next() * 500)};
        }).filter(() => next() > 0.2);
        return {from, to: from + 14 * 1440, open, trueTime, days, viewWidth: 900};
      };
      """;

  private static List<?> wrong(String body) {
    return Functions.list(
        "async ({load}) => {" + DRAWN + "const wrong = [];" + body + "return wrong; }", null);
  }

  @Test
  void aPlaceOnTheAxisAndItsMinuteLeadToEachOther() {
    assertEquals(
        List.of(),
        wrong(
            """
            const {axis} = await load('board/scale.js');
            for (let seed = 1; seed <= 40; seed++) {
              const time = axis(weekOf(seed, {trueTime: seed % 2 === 0, days: [3, 7, 14][seed % 3]}));
              let before = -1;
              for (let minute = time.from; minute <= time.to; minute += 7) {
                const x = time.xOf(minute);
                if (x < before) wrong.push(`${seed}: ${minute} lies before what came before it`);
                if (Math.abs(time.minuteAt(x) - minute) > 1) wrong.push(`${seed}: ${minute} at ${x} is ${time.minuteAt(x)}`);
                before = x;
              }
              if (time.xOf(time.from) !== 0 || Math.abs(time.xOf(time.to) - time.width) > 1e-6) wrong.push(`${seed}: ends`);
            }
            """));
  }

  @Test
  void inBenchTimeClosedHoursTakeTheirShareOfTheWidthAndInTrueTimeEveryMinuteIsAsWide() {
    assertEquals(
        List.of(),
        wrong(
            """
            const {axis} = await load('board/scale.js');
            const closed = time => time.stretches.filter(({open}) => !open).reduce((sum, {width}) => sum + width, 0);
            for (let seed = 1; seed <= 20; seed++) {
              const bench = axis(weekOf(seed));
              if (Math.abs(closed(bench) / bench.width - 0.42) > 1e-9) wrong.push(`${seed}: ${closed(bench) / bench.width}`);
              const plain = axis(weekOf(seed, {trueTime: true}));
              const each = plain.stretches.map(({from, to, width}) => width / (to - from));
              if (Math.max(...each) - Math.min(...each) > 1e-9) wrong.push(`${seed}: ${each}`);
              if (Math.abs(plain.width - 1800) > 1e-9) wrong.push(`two weeks are two views of a week, not ${plain.width}`);
            }
            """));
  }

  @Test
  void barsOfARowNeverLieOverEachOtherAndEachCanBeHit() {
    assertEquals(
        List.of(),
        wrong(
            """
            const {axis} = await load('board/scale.js');
            const {itemsOf, TARGET} = await load('board/places.js');
            for (let seed = 1; seed <= 60; seed++) {
              const of = weekOf(seed, {days: [3, 7, 28][seed % 3]});
              const next = draw(seed + 1000);
              let at = of.from;
              const bars = [];
              while (at < of.to - 2000) {
                const from = at + Math.floor(next() * 300);
                const to = from + 5 + Math.floor(next() * next() * 1500);
                bars.push({id: String(bars.length), kind: 'task', from, to, parts: []});
                at = to;
              }
              const time = axis(of);
              const items = itemsOf({band: seed % 2 ? 'hands' : 'forms', bars}, time);
              const told = items.flatMap(({bar}) => bar.bars ?? [bar]);
              if (told.length !== bars.length || told.some((bar, place) => bar !== bars[place])) wrong.push(`${seed}: a bar is lost`);
              items.forEach(({x, width}, place) => {
                if (width < TARGET - 1e-9) wrong.push(`${seed}: ${width} wide`);
                if (place > 0 && x < items[place - 1].x + items[place - 1].width - 0.51) wrong.push(`${seed}: item ${place} over the one before`);
              });
            }
            """));
  }

  @Test
  void flagsStandInThreeLinesAtMostNoneOverAnotherAndNoneIsLost() {
    assertEquals(
        List.of(),
        wrong(
            """
            const {axis} = await load('board/scale.js');
            const {flagItems} = await load('board/places.js');
            for (let seed = 1; seed <= 60; seed++) {
              const of = weekOf(seed);
              const next = draw(seed + 2000);
              const bars = Array.from({length: 40}, (_, place) => {
                const from = of.from + Math.floor(next() * (of.to - of.from));
                return {id: String(place), kind: 'flag', from, to: from, parts: []};
              }).sort((a, b) => a.from - b.from);
              const {lines, items} = flagItems(bars, axis(of), bar => (bar.kind === 'group' ? 90 : 60));
              if (lines > 3) wrong.push(`${seed}: ${lines} lines`);
              const told = new Set(items.flatMap(({bar}) => bar.bars ?? [bar]));
              if (told.size !== bars.length) wrong.push(`${seed}: ${told.size} of ${bars.length}`);
              for (let line = 0; line < lines; line++) {
                const own = items.filter(item => item.line === line);
                own.slice(1).forEach((item, place) => {
                  const last = own[place];
                  if (item.x < last.x + last.width) wrong.push(`${seed}: line ${line}, ${item.x} over ${last.x + last.width}`);
                });
              }
            }
            """));
  }

  @Test
  void theRowsThatCanBeSeenAreFoundAtEveryHeight() {
    assertEquals(
        List.of(),
        wrong(
            """
            const {rowsBetween} = await load('board/places.js');
            const tops = [0];
            for (let row = 0; row < 300; row++) tops.push(tops.at(-1) + [28, 32, 46][row % 3]);
            for (let from = 0; from < tops.at(-1); from += 13) {
              const {first, end} = rowsBetween(tops, from, from + 500);
              const seen = tops.slice(0, -1).map((top, row) => row).filter(row => tops[row + 1] > from && tops[row] < from + 500);
              if (first !== seen[0] || end !== seen.at(-1) + 1) wrong.push(`at ${from}: ${first} to ${end}, not ${seen[0]} to ${seen.at(-1) + 1}`);
            }
            """));
  }

  @Test
  void windowsThatTouchBecomeOneAndTheNextIsFoundAtEveryMinute() {
    assertEquals(
        List.of(),
        wrong(
            """
            const {joined, windowAt} = await load('board/hours.js');
            for (let seed = 1; seed <= 40; seed++) {
              const next = draw(seed);
              const some = Array.from({length: 12}, () => {
                const from = Math.floor(next() * 1000);
                return {from, to: from + Math.floor(next() * 90)};
              });
              const one = joined(some);
              one.slice(1).forEach(({from}, at) => { if (from <= one[at].to) wrong.push(`${seed}: ${from} touches`); });
              for (let minute = 0; minute < 1100; minute++) {
                const open = some.some(({from, to}) => from <= minute && minute < to);
                const found = windowAt(one, minute);
                if (open !== Boolean(found && found.from <= minute)) wrong.push(`${seed}: ${minute}`);
                if (found && found.to <= minute) wrong.push(`${seed}: ${minute} is after its window`);
              }
            }
            """));
  }

  @Test
  void aLabelReadsOnEveryColourAndAnInkStandsOutFromItsGround() {
    assertEquals(
        List.of(),
        wrong(
            """
                const {contrast, inkOn, labelOn} = await load('board/colours.js');
                const part = value => value.toString(16).padStart(2, '0');
                for (let red = 0; red < 256; red += 15) for (let green = 0; green < 256; green += 15) for (let blue = 0; blue < 256; blue += 15) {
                  const colour = `#${part(red)}${part(green)}${part(blue)}`;
                  if (contrast(colour, labelOn(colour)) < 4.5) wrong.push(`label on ${colour}`);
                  for (const ground of ['#f7f5f0', '#1a1e21', '#ffffff']) if (contrast(inkOn(colour, ground), ground) < 3) wrong.push(`${colour} on ${ground}`);
                }
                """));
  }
}
