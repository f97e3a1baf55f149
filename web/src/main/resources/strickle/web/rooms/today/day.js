/** What a plan asks of a day, and what has been noted of it: reading only, nothing is drawn here. */

import {addDays, dayOf, moment} from '../../app/times.js';

/** The kinds under which a task is noted as happened. */
const NOTED_AS = {pour: 'poured', demould: 'demoulded', step: 'step'};

/**
 * A task as a person sees it on a day.
 *
 * @typedef {{task: object, lot: object, run: object|null, start: string, at: number, end: string, spells: object[],
 *   noted: object|null, state: "done"|"begun"|"overdue"|"to-do"}} Doing
 */

/** Whether an entry of the progress is about a task. */
function isOf(entry, task) {
  return entry.kind === NOTED_AS[task.kind] && entry.lot === task.lot && entry.run === task.run
    && (task.kind !== 'step' || entry.step === task.step);
}

/** What has to be said to note a task: all but when and by whom. */
export function noteOf(task) {
  const note = {kind: NOTED_AS[task.kind]};
  if (task.kind === 'pour') {
    return {...note, lot: task.lot};
  }
  return task.kind === 'step' ? {...note, run: task.run, step: task.step} : {...note, run: task.run};
}

function stateOf(task, noted, now) {
  if (task.done || (noted && noted.end)) {
    return 'done';
  }
  if (task.begun || noted) {
    return 'begun';
  }
  return moment(task.spells.at(-1).end) < now ? 'overdue' : 'to-do';
}

/**
 * Everything of a plan as doings, by time.
 *
 * @param {object} plan
 * @param {object[]} progress
 * @param {Date} now
 * @returns {Doing[]}
 */
export function doings(plan, progress, now) {
  const lots = new Map(plan.lots.map(lot => [lot.id, lot]));
  const runs = new Map(plan.lots.flatMap(lot => lot.runs.map(run => [run.id, {run, lot}])));
  return plan.tasks.map(task => {
    const {run = null, lot = lots.get(task.lot)} = runs.get(task.run) ?? {};
    const noted = progress.find(entry => isOf(entry, task)) ?? null;
    const {start} = task.spells[0];
    return {task, lot, run, start, at: moment(start).getTime(), end: task.spells.at(-1).end, spells: task.spells, noted, state: stateOf(task, noted, now)};
  }).sort((one, other) => one.at - other.at);
}

/** Those with a spell on a day, 2027-03-01. */
export function onDay(all, day) {
  return all.filter(doing => doing.spells.some(spell => dayOf(spell.start) === day));
}

/** Those of earlier days that should be over and are not noted. */
export function leftOver(all, day) {
  return all.filter(doing => doing.state === 'overdue' && dayOf(doing.end) < day);
}

/** The next day from a day on, that day not included, on which there is something; empty when none. */
export function nextDay(all, day, way = 1) {
  const days = [...new Set(all.flatMap(doing => doing.spells.map(spell => dayOf(spell.start))))].sort();
  return (way > 0 ? days.find(other => other > day) : days.findLast(other => other < day)) ?? '';
}

/** Minutes of work on a day. */
export function minutesOn(doing, day) {
  return doing.spells.filter(spell => dayOf(spell.start) === day)
    .reduce((sum, spell) => sum + (moment(spell.end) - moment(spell.start)) / 60_000, 0);
}

/** The waits that begin with a task: what is left alone when it is done, and until when. */
export function waitAfter(plan, doing) {
  const runs = doing.run ? [doing.run.id] : doing.lot.runs.map(run => run.id);
  return plan.waits.filter(wait => runs.includes(wait.run)
    && moment(wait.from) <= moment(doing.end) && moment(wait.to) > moment(doing.end)
    && moment(wait.from) >= moment(doing.start));
}

/** Runs that become ready on a day. */
export function readyOn(plan, day) {
  return plan.ready.filter(({at}) => dayOf(at) === day);
}

/** Whether what was noted makes the plan untrue, so that it is worth laying out again. */
export function differs(all, progress) {
  const late = all.some(({state, noted, start, end}) => state === 'overdue'
    || (noted && (moment(noted.start).getTime() !== moment(start).getTime()
      || (noted.end && moment(noted.end).getTime() !== moment(end).getTime()))));
  return late || progress.some(({kind}) => ['scrapped', 'away', 'back', 'broken', 'mended'].includes(kind));
}

export {addDays};
