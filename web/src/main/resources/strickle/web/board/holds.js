/**
 * What keeps a task from beginning earlier, read from the plan: its own wait, its person's hours and other
 * work, forms still full, a rack without places, a pin, the plan's beginning. Each hold ends at a minute;
 * the one that ends last is what the task waited for.
 */

import {windowAt} from './hours.js';

/** @typedef {{kind: string, until: number}} Hold kind: begin, wait, after, busy, opens, form, station, pin */

const before = (run, task) => run.tasks[run.tasks.indexOf(task) - 1];

/** The wait that a task's run went through just before it. */
function waitBefore(run, task) {
  const last = before(run, task);
  if (!last) return null;
  return run.waits.filter((wait) => wait.from >= last.from && wait.from <= last.to && wait.to <= task.from).sort((a, b) => b.to - a.to)[0] ?? null;
}

function ownWait(run, task) {
  const wait = waitBefore(run, task);
  const last = before(run, task);
  if (wait && wait.to >= last.to) return [{kind: 'wait', wait: wait.kind, until: wait.to, run}];
  return last ? [{kind: 'after', until: last.to, run, task: last}] : [];
}

/** The person's own work before it, and the beginning of the hours it lies in. */
function personHolds(week, task) {
  const spells = spellsOf(week, task.person);
  const at = spells.findIndex((spell) => spell.task === task);
  const last = spells[at - 1];
  const window = windowAt(week.windows.get(task.person) ?? [], task.from);
  const opens = window && window.from <= task.from ? [{kind: 'opens', until: window.from, person: task.person}] : [];
  return last && last.to <= task.from ? [...opens, {kind: 'busy', until: last.to, person: task.person, task: last.task}] : opens;
}

/** The spells of a person in order, kept with the week because every task asks for them. */
export function spellsOf(week, person) {
  week.spells ??= new Map();
  if (!week.spells.has(person)) {
    const mine = week.tasks.filter((task) => task.person === person);
    const spells = mine.flatMap((task) => task.spells.map((spell) => ({...spell, task})));
    week.spells.set(person, spells.sort((a, b) => a.from - b.from || a.to - b.to));
  }
  return week.spells.get(person);
}

/** The runs that hold a unit, in order. */
export function holdersOf(week, form, unit) {
  week.holders ??= new Map();
  const key = `${form}:${unit}`;
  if (!week.holders.has(key)) {
    const runs = [...week.runs.values()].filter((run) => run.forms.some((held) => held.form === form && held.units.includes(unit)));
    week.holders.set(key, runs.sort((a, b) => a.tasks[0].from - b.tasks[0].from));
  }
  return week.holders.get(key);
}

export const demouldOf = (run) => run.tasks.find((task) => task.kind === 'demould');

function formHolds(week, task) {
  return task.runs.flatMap((run) => run.forms.flatMap(({form, units}) => units.flatMap((unit) => {
    const holders = holdersOf(week, form, unit);
    const last = holders[holders.indexOf(run) - 1];
    return last ? [{kind: 'form', until: demouldOf(last).to, form, run: last}] : [];
  })));
}

/** When the run's pieces lie on a station, from the step that lays them there to the next. */
function restsOf(run) {
  return run.tasks.filter((task) => task.kind === 'step').flatMap((task) => {
    const rests = run.piece.route?.[task.step - 1]?.restsOn;
    if (!rests) return [];
    const next = run.tasks[run.tasks.indexOf(task) + 1];
    return [{task, station: rests.station, places: run.pieces * (rests.placesEach ?? 1), from: task.from, to: next ? next.from : run.ready}];
  });
}

function stationHolds(week, task) {
  week.rests ??= [...week.runs.values()].flatMap(restsOf);
  const mine = week.rests.find((rest) => rest.task === task);
  const station = mine && week.names.stations.get(mine.station);
  if (!station) return [];
  const others = week.rests.filter((rest) => rest.station === mine.station && rest.task !== task);
  const usedAt = (minute) => others.reduce((sum, rest) => sum + (rest.from <= minute && rest.to > minute ? rest.places : 0), 0);
  const full = usedAt(task.from - 1) + mine.places > station.places;
  return full ? [{kind: 'station', until: task.from, station: station.id}] : [];
}

function pinHolds(week, task) {
  const pin = task.kind === 'pour' && week.pins.find((each) => each.lot === task.lot);
  return pin ? [{kind: 'pin', until: task.from, pin}] : [];
}

/**
 * What a task waited for, the last first.
 * @param {object} week
 * @param {object} task
 * @returns {{holds: Hold[], since: number, idle: boolean}} since: when the last hold ended; idle: the
 *   person was free from then on and still it began later
 */
export function holdsOf(week, task) {
  const own = task.kind === 'pour' ? formHolds(week, task) : ownWait(task.run, task);
  const all = [{kind: 'begin', until: week.starts}, ...own, ...personHolds(week, task), ...stationHolds(week, task), ...pinHolds(week, task)];
  const holds = all.filter((hold) => hold.until <= task.from).sort((a, b) => b.until - a.until || rank(a) - rank(b));
  return {holds: telling(holds), since: holds[0].until, idle: holds[0].until < task.from};
}

/** Of holds that end together, what a maker would name first. */
const ORDER = ['pin', 'form', 'station', 'wait', 'busy', 'opens', 'after', 'begin'];
const rank = (hold) => ORDER.indexOf(hold.kind);

/** The last hold, and what had kept it before if that was of another kind; more would tell less. */
function telling(holds) {
  const [last, ...rest] = holds;
  const own = rest.find((hold) => ['form', 'station', 'wait'].includes(hold.kind) && hold.kind !== last.kind);
  return own && ['busy', 'opens'].includes(last.kind) ? [last, own] : [last];
}
