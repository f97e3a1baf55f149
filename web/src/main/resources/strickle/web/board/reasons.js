/** Why something stands where it stands and what would move it, in words of the shop. */

import {say, sayList} from '../app/words.js';
import {holdsOf} from './holds.js';
import {amountOf, at, howLong, personName, span, taskOf} from './names.js';
import {slackOf} from './slack.js';

/** What a hold's words may speak of. */
function valuesOf(hold, week) {
  const {names} = week;
  return {
    at: at(hold.until),
    person: hold.person ? personName(week, hold.person) : '',
    task: hold.task ? taskOf(hold.task) : '',
    form: hold.form ? (names.forms.get(hold.form)?.name ?? hold.form) : '',
    run: hold.run ? amountOf(hold.run) : '',
    station: hold.station ? (names.stations.get(hold.station)?.name ?? hold.station) : '',
  };
}

const keyOf = hold => (hold.kind === 'wait' ? `wait.${hold.wait}` : hold.kind);
const wordsOf = (list, week, group) => list.map(hold => say(`board.${group}.${keyOf(hold)}`, valuesOf(hold, week)));

/**
 * Why a task begins when it begins.
 * @param {object} week
 * @param {object} task
 * @returns {string[]} sentences, what came first first
 */
export function whyThen(week, task) {
  if (task.done) return [say('board.why.done')];
  const {holds, since, idle} = holdsOf(week, task);
  const told = wordsOf([...holds].reverse(), week, 'why');
  if (idle) told.push(say('board.why.idle', {at: at(since)}));
  if (task.spells.length > 1) told.push(say('board.why.parted', {spells: sayList(task.spells.map(spell => span(spell.from, spell.to)))}));
  return told;
}

/**
 * What would move a task: earlier, and how much later it could begin by itself.
 * @param {object} week
 * @param {object} task
 * @returns {string[]} sentences
 */
export function whatMoves(week, task) {
  if (task.done) return [];
  const {holds, idle} = holdsOf(week, task);
  const earlier = idle ? [say('board.moves.idle')] : wordsOf(holds, week, 'moves');
  const limit = slackOf(week, task);
  if (!limit) return earlier;
  const words = say(`board.limits.${limit.kind}`, {...valuesOf({...limit, until: task.from}, week), order: limit.order?.id ?? ''});
  return [...earlier, say(limit.minutes > 0 ? 'board.moves.later' : 'board.moves.fixed', {slack: howLong(limit.minutes), limit: words})];
}

/** What in the studio would free a task, as the what-if room may be asked for it; undefined when nothing of the kind would. */
export function freeing(week, task) {
  const {holds} = holdsOf(week, task);
  const form = holds.find(hold => hold.kind === 'form');
  return form ? {form: form.form} : undefined;
}
