/**
 * The board's rows in three bands: forms (one row for each unit), hands (one for each person), drying (what
 * stands around, packed), and by order what each order waits for. Rows hold bars in order of time; nothing
 * here knows of pixels.
 */

/** @typedef {'form'|'attended'|'cure'|'dry'|'rest'} Look how a part of a bar is drawn */

/** What a run goes through after its mould, and in it, as parts of a bar. */
function partsOf(run, from, to) {
  const pour = run.tasks[0];
  const demould = run.tasks.find((task) => task.kind === 'demould');
  const parts = [{look: 'form', from: pour.from, to: demould.to}];
  for (const wait of run.waits) if (wait.kind !== 'set') parts.push({look: wait.kind, from: wait.from, to: wait.to});
  for (const task of run.tasks) for (const spell of task.spells) parts.push({look: 'attended', from: spell.from, to: spell.to});
  const cut = parts.map((part) => ({...part, from: Math.max(from, part.from), to: Math.min(to, part.to)}));
  return cut.filter((part) => part.to > part.from);
}

function runBar(kind, run, from, to, row) {
  return {id: `${row}/${run.id}`, kind, run, lot: run.lot, from, to, parts: partsOf(run, from, to)};
}

const demouldEnd = (run) => run.tasks.find((task) => task.kind === 'demould').to;

/** Rows of all units of all forms; a run of several units or forms has a bar in each of them. */
function formRows(week) {
  const held = new Map();
  for (const run of week.runs.values()) {
    for (const {form, units} of run.forms) for (const unit of units) (held.get(`${form}:${unit}`) ?? held.set(`${form}:${unit}`, []).get(`${form}:${unit}`)).push(run);
 }
  return week.forms.flatMap((form) => Array.from({length: form.count}, (_, at) => {
    const id = `form:${form.id}:${at + 1}`;
    const runs = held.get(`${form.id}:${at + 1}`) ?? [];
    return {id, band: 'forms', form, unit: at + 1, bars: inTime(runs.map((run) => runBar('form', run, run.tasks[0].from, demouldEnd(run), id)))};
 }));
}

function inTime(bars) {
  return bars.sort((a, b) => a.from - b.from || a.to - b.to || (a.id < b.id ? -1 : 1));
}

function taskBars(task, row) {
  return task.spells.map((spell, at) => ({
    id: `${row}/${task.id}/${at}`, kind: 'task', task, run: task.run, lot: task.lot ?? task.run.lot,
    from: spell.from, to: spell.to, parts: [{look: 'attended', from: spell.from, to: spell.to}],
 }));
}

/** A pin that no lot of the plan keeps yet is shown where it wants to be. */
function pinBar(pin, row) {
  return {id: `${row}/pin-${pin.id}`, kind: 'pin', pin, from: pin.start, to: pin.start + 30, parts: []};
}

function handRows(week) {
  return week.people.map((person) => {
    const id = `hand:${person.id}`;
    const mine = week.tasks.filter((task) => task.person === person.id).flatMap((task) => taskBars(task, id));
    const pins = week.pins.filter((pin) => !pin.lot && pin.pin.person === person.id).map((pin) => pinBar(pin, id));
    return {id, band: 'hands', person, bars: inTime([...mine, ...pins])};
 });
}

/** Bars laid on as few lines as they need, each on the first that is free. */
function packed(bars) {
  const lines = [];
  for (const bar of inTime(bars)) {
    const line = lines.find((each) => each.at(-1).to <= bar.from);
    if (line) line.push(bar);
    else lines.push([bar]);
 }
  return lines;
}

function dryingRows(week) {
  const bars = [...week.runs.values()].filter((run) => run.ready > demouldEnd(run)).map((run) => runBar('stay', run, demouldEnd(run), run.ready, 'stand'));
  return packed(bars).map((line, at) => ({id: `stand:${at + 1}`, band: 'drying', line: at + 1, bars: line}));
}

/** The life of a run from its pour to its ready moment. */
const lifeBar = (run, row) => runBar('life', run, run.tasks[0].from, run.ready, row);

function orderRows(week) {
  const orders = week.orders.filter((order) => order.planned).sort((a, b) => a.due - b.due || (a.id < b.id ? -1 : 1));
  const rows = orders.flatMap((order) => linesOf(order.runs, `order:${order.id}`, {order}));
  const spare = [...week.runs.values()].filter((run) => run.orders.length === 0);
  return spare.length > 0 ? [...rows, ...linesOf(spare, 'order:', {spare: true})] : rows;
}

function linesOf(runs, id, more) {
  const lines = packed(runs.map((run) => lifeBar(run, id)));
  if (lines.length === 0) lines.push([]);
  return lines.map((bars, at) => ({id: `${id}:${at + 1}`, band: 'orders', line: at + 1, ...more, bars}));
}

/** What is due and when, as bars of no length: the flags. */
export function flagRow(week) {
  const orders = week.orders.filter((order) => order.planned && order.due > week.from && order.due < week.to);
  return {id: 'flags', band: 'flags', bars: inTime(orders.map((order) => ({id: `flags/${order.id}`, kind: 'flag', order, from: order.due, to: order.due, parts: []})))};
}

const BANDS = {
  form: [['forms', formRows], ['hands', handRows], ['drying', dryingRows]],
  person: [['hands', handRows], ['drying', dryingRows], ['forms', formRows]],
  order: [['orders', orderRows], ['hands', handRows]],
};

/** The ways the rows can be ordered. */
export const WAYS = Object.keys(BANDS);

/**
 * All rows of the board, each band with its heading before it; bands without rows are left out.
 * @param {object} week as readWeek gives it
 * @param {'form'|'person'|'order'} by
 * @returns {object[]} rows with id, band and bars; headings have no bars and `heading` true
 */
export function rowsOf(week, by) {
  return (BANDS[by] ?? BANDS.form).flatMap(([band, make]) => {
    const rows = make(week);
    return rows.length > 0 ? [{id: `band:${band}`, band, heading: true, bars: []}, ...rows] : [];
 });
}
