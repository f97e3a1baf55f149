/**
 * How much later a task could begin with nothing else moving and nothing becoming late: bound by its
 * person's hours and next work, by what its run does next, by the next run in its forms, by the most that a
 * wait may take, by what is due.
 */

import {demouldOf, holdersOf, spellsOf} from './holds.js';
import {windowAt} from './hours.js';

/** @typedef {{kind: string, minutes: number}} Limit kind: closes, next, goes, form, most, due, late, pin */

function personLimits(week, task) {
  const spells = spellsOf(week, task.person);
  const next = spells[spells.findIndex((spell) => spell.task === task) + 1];
  const window = windowAt(week.windows.get(task.person) ?? [], task.from);
  const closes = window && window.from <= task.from ? [{kind: 'closes', minutes: window.to - task.to, person: task.person}] : [];
  return next ? [...closes, {kind: 'next', minutes: next.from - task.to, person: task.person, task: next.task}] : closes;
}

/** What the run does next, once the wait between has passed as it does now. */
function runLimits(run, task) {
  const next = run.tasks[run.tasks.indexOf(task) + 1];
  if (!next) return dueLimits(run);
  const waits = run.waits.filter((wait) => wait.from >= task.from && wait.from <= task.to && wait.to <= next.from);
  return [{kind: 'goes', minutes: next.from - Math.max(task.to, ...waits.map((wait) => wait.to)), run, task: next}];
}

function dueLimits(run) {
  return run.orders.map((order) => {
    const spare = order.due - run.ready;
    return spare >= 0 ? {kind: 'due', minutes: spare, order} : {kind: 'late', minutes: 0, order};
  });
}

/** The most that the wait before a task may take, from when it began. */
function mostLimits(run, task) {
  const last = run.tasks[run.tasks.indexOf(task) - 1];
  if (task.kind === 'demould') {
    const set = run.waits.find((wait) => wait.kind === 'set');
    const most = run.mould?.setAtMostHours;
    return set && most ? [{kind: 'most', minutes: set.from + most * 60 - task.from, run}] : [];
  }
  const most = task.kind === 'step' ? run.piece.route?.[task.step - 1]?.after?.atMostHours : undefined;
  return most && last ? [{kind: 'most', minutes: last.to + most * 60 - task.from, run}] : [];
}

function formLimits(week, run) {
  return run.forms.flatMap(({form, units}) => units.flatMap((unit) => {
    const holders = holdersOf(week, form, unit);
    const next = holders[holders.indexOf(run) + 1];
    return next ? [{kind: 'form', minutes: next.tasks[0].from - demouldOf(run).to, form, run: next}] : [];
  }));
}

/**
 * How much later a task could begin.
 * @param {object} week
 * @param {object} task in one spell; of one that hours part nothing is said
 * @returns {Limit|null} the tightest limit, 0 minutes or more
 */
export function slackOf(week, task) {
  if (task.spells.length > 1 || task.done || task.begun) return null;
  if (week.pins.some((pin) => pin.lot && pin.lot === task.lot)) return {kind: 'pin', minutes: 0};
  const ofRuns = task.runs.flatMap((run) => [
    ...runLimits(run, task), ...mostLimits(run, task), ...(task.kind === 'demould' ? formLimits(week, run) : []),
  ]);
  const limits = [...personLimits(week, task), ...ofRuns].sort((a, b) => a.minutes - b.minutes);
  return limits.length > 0 ? {...limits[0], minutes: Math.max(0, Math.floor(limits[0].minutes))} : null;
}
