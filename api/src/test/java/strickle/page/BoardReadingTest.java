package strickle.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * How the Week's board reads a plan: which run serves which order, what a task waited for, how much
 * later it could begin. Held against the demo's plan as the service laid it out, and against small
 * weeks whose answer can be reckoned by hand.
 */
@FunctionTest
class BoardReadingTest {

  private static final String DEMO =
      """
      const [book, plan] = await Promise.all(['book', 'plan-in-use'].map(async name => (await fetch(`/api/${name}`)).json()));
      const {readWeek} = await load('board/week.js');
      const week = readWeek(book, plan);
      """;

  private static List<?> ofDemo(String body) {
    Functions.planned();
    return Functions.list(
        "async ({load, wear}) => { await wear({zone: 'America/Halifax'});" + DEMO + body + "}",
        null);
  }

  @Test
  void anOrderIsReadyWhenTheLastRunIsThatTheBoardSaysServesIt() {
    assertEquals(
        List.of(),
        ofDemo(
            """
            const planned = week.orders.filter(({planned, runs}) => planned && runs.length > 0);
            if (planned.length < 5) return ['too few orders'];
            return planned.filter(({ready, runs}) => Math.max(...runs.map(run => run.ready)) !== ready).map(({id}) => id);
            """));
  }

  @Test
  void whatATaskWaitedForWasOverWhenItBegan() {
    assertEquals(
        List.of(),
        ofDemo(
            """
            const {holdsOf} = await load('board/holds.js');
            return week.tasks.flatMap(task => {
              const {holds, since, idle} = holdsOf(week, task);
              const late = holds.some(({until}) => until > task.from) || since > task.from;
              return late || holds.length === 0 || idle !== (since < task.from) ? [task.id] : [];
            });
            """));
  }

  @Test
  void aTaskThatBeginsAsMuchLaterAsIsToldStaysWithinHoursAndBeforeWhatComesNext() {
    assertEquals(
        List.of(),
        ofDemo(
            """
            const {slackOf} = await load('board/slack.js');
            return week.tasks.flatMap(task => {
              const limit = slackOf(week, task);
              if (!limit) return [];
              const [from, to] = [task.from + limit.minutes, task.to + limit.minutes];
              const open = week.windows.get(task.person).some(window => window.from <= from && to <= window.to);
              const others = week.tasks.filter(each => each !== task && each.person === task.person).flatMap(({spells}) => spells);
              const free = others.every(spell => spell.to <= from || spell.from >= to);
              const next = task.runs.every(run => run.tasks.every(each => each.from <= task.from || each.from >= to));
              return limit.minutes >= 0 && open && free && next ? [] : [`${task.id} by ${limit.minutes}, ${limit.kind}`];
            });
            """));
  }

  /**
   * One person, open from 9 to 17, and one drum for two runs of one piece that sets for an hour.
   */
  private static final String SMALL =
      """
      const hours = Object.fromEntries(['MON', 'TUE', 'WED'].map(day => [day, ['09:00-17:00']]));
      const book = {
        studio: {timeZone: 'UTC'}, people: [{id: 'ana', name: 'Ana', hours}], forms: [{id: 'drum', name: 'drum', count: 1}],
        moulds: [{id: 'm', cavities: 1, setAtMostHours: 3}], mixes: [{id: 'x', name: 'grey'}], materials: [],
        pieces: [{id: 'p', name: 'pot', mould: 'm', mix: 'x', goodPercent: 100, route: []}],
        orders: [{id: 'O-1', due: '2027-04-05T12:00', lines: [{piece: 'p', quantity: 1}]},
          {id: 'O-2', due: '2027-04-05T13:00', lines: [{piece: 'p', quantity: 1}]}], pins: [],
      };
      const at = time => `2027-04-05T${time}Z`;
      const task = (id, kind, of, start, end) => ({id, kind, person: 'ana', ...of, spells: [{start: at(start), end: at(end)}]});
      const lot = number => ({id: `L${number}`, mix: 'x', runs: [{id: `L${number}-1`, piece: 'p', castings: 1, forms: [{form: 'drum', units: [1]}]}]});
      const plan = {
        from: at('00:00'), lots: [lot(1), lot(2)],
        tasks: [task('L1/pour', 'pour', {lot: 'L1'}, '09:00', '09:30'), task('L1-1/demould', 'demould', {run: 'L1-1'}, '10:30', '10:40'),
          task('L2/pour', 'pour', {lot: 'L2'}, '10:40', '11:10'), task('L2-1/demould', 'demould', {run: 'L2-1'}, '12:40', '12:50')],
        waits: [{run: 'L1-1', kind: 'set', from: at('09:30'), to: at('10:30')}, {run: 'L2-1', kind: 'set', from: at('11:10'), to: at('12:10')}],
        ready: [{run: 'L1-1', at: at('10:40')}, {run: 'L2-1', at: at('12:50')}],
        orders: [{order: 'O-1', ready: at('10:40'), lateMinutes: 0}, {order: 'O-2', ready: at('12:50'), lateMinutes: 0}],
      };
      const {readWeek} = await load('board/week.js');
      const week = readWeek(book, plan);
      const find = id => week.tasks.find(each => each.id === id);
      """;

  private static List<?> ofSmall(String body) {
    return Functions.list(
        "async ({load, wear}) => { await wear({zone: 'UTC'});" + SMALL + body + "}", null);
  }

  @Test
  void aTaskWaitedForTheFormTheSettingOrTheOpeningHours() {
    assertEquals(
        List.of("opens", "wait", "form", "wait idle"),
        ofSmall(
            """
            const {holdsOf} = await load('board/holds.js');
            const told = id => {
              const {holds, idle} = holdsOf(week, find(id));
              return `${holds.map(({kind}) => kind)}${idle ? ' idle' : ''}`;
            };
            return ['L1/pour', 'L1-1/demould', 'L2/pour', 'L2-1/demould'].map(told);
            """));
  }

  @Test
  void aTaskCouldBeginLaterUntilWhatComesNextOrTheMostThatAWaitMayTake() {
    assertEquals(
        List.of("goes 0", "next 0", "goes 30", "due 10"),
        ofSmall(
            """
            const {slackOf} = await load('board/slack.js');
            return ['L1/pour', 'L1-1/demould', 'L2/pour', 'L2-1/demould'].map(id => {
              const {kind, minutes} = slackOf(week, find(id));
              return `${kind} ${minutes}`;
            });
            """));
  }

  @Test
  void ordersAreServedByDueThenWeightThenIdFirstFromStockThenAsRunsBecomeReady() {
    assertEquals(
        List.of("B: r1", "C: r1,r2", "A: r2", "D: "),
        Functions.list(
            """
            async ({load}) => {
              const {serve} = await load('board/serving.js');
              const pot = {id: 'pot', onHand: 2, goodPercent: 90};
              const run = (id, pieces, ready) => ({id, piece: pot, pieces, ready, orders: []});
              const order = (id, due, weight, quantity) => ({id, due, weight, lines: [{of: pot, quantity}], runs: []});
              const runs = [run('r2', 10, 200), run('r1', 10, 100)];
              const orders = [order('A', 50, 1, 5), order('B', 40, 1, 4), order('C', 50, 2, 8), order('D', 10, 1, 1)];
              serve(orders, runs);
              return ['B', 'C', 'A', 'D'].map(id => `${id}: ${orders.find(each => each.id === id).runs.map(({id: name}) => name)}`);
            }
            """,
            null));
  }

  @Test
  void aComparisonTellsPoursThatAreElsewhereNewOrGoneAndNoOthers() {
    assertEquals(
        List.of("pot 2 60>90", "pot 1 120>", "cup 1 >130"),
        Functions.list(
            """
            async ({load}) => {
              const {poursMoved} = await load('board/compare.js');
              const week = pours => ({runs: new Map(pours.map(([piece, from, castings = 1], at) => [at,
                {piece: {id: piece}, castings, mould: {cavities: 1}, lot: {pour: {from, person: 'ana'}}}]))});
              const before = week([['pot', 30], ['pot', 60, 2], ['pot', 120], ['cup', 50]]);
              const after = week([['cup', 50], ['pot', 90, 2], ['pot', 30], ['cup', 130]]);
              return poursMoved(before, after).map(({piece, pieces, before: was, after: is}) =>
                `${piece.id} ${pieces} ${was?.from ?? ''}>${is?.from ?? ''}`);
            }
            """,
            null));
  }
}
