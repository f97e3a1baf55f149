/** What things on the board are called: short words on bars, whole sentences for those who cannot see them. */

import {settings} from '../app/settings.js';
import {studio} from '../app/studio.js';
import {say, sayList} from '../app/words.js';
import {showMinutes, showMoment, showSpan} from '../app/times.js';

const MINUTE_MS = 60_000;

const written = new Map();
settings.addEventListener('change', () => written.clear());
studio.addEventListener('change', () => written.clear());

/** A minute of the board as the page writes moments; kept, because every bar's name asks for several. */
export function at(minute) {
  if (!written.has(minute)) written.set(minute, showMoment(minute * MINUTE_MS));
  return written.get(minute);
}

/** A stretch of the board as the page writes it. */
export const span = (from, to) => showSpan(from * MINUTE_MS, to * MINUTE_MS);

export {showMinutes as howLong};

/** "2 × doorstop, brick". */
export const amountOf = run => say('board.amount', {count: run.pieces - run.scrapped, piece: run.piece.name});

/** The forms a run lies in, with the numbers of their units where there are several. */
export function formsOf(run, week) {
  return sayList(run.forms.flatMap(({form, units}) => units.map(unit => formName(week.names.forms.get(form) ?? {name: form, count: 1}, unit))));
}

/** "wedge 2", or "large drum" where there is only one. */
export function formName(form, unit) {
  return form.count > 1 ? say('board.unit', {form: form.name, unit: String(unit)}) : form.name;
}

/** What a task is, in the words of the route. */
export function taskName(task) {
  if (task.kind === 'pour') return say('board.pour', {mix: task.lot.mix.name});
  if (task.kind === 'demould') return say('board.demould');
  return task.run.piece.route?.[task.step - 1]?.step ?? say('board.step', {step: task.step});
}

/** A task with what it is done to. */
export const taskOf = task => `${taskName(task)} (${task.run ? amountOf(task.run) : sayList(task.runs.map(amountOf))})`;

export const personName = (week, id) => week.names.people.get(id)?.name ?? id;

/** The order a run makes late the most, or undefined. */
export const lateFor = run => run.orders.filter(order => order.lateMinutes > 0 && run.ready > order.due).sort((a, b) => b.lateMinutes - a.lateMinutes)[0];

/** Whether a lot stands where a pin of the book wants it. */
export const pinOf = (week, lot) => week.pins.find(pin => pin.lot === lot);

/** A row's name, and a longer one where what is on screen says too little. */
export function rowTitle(row) {
  if (row.heading) return say(`board.bands.${row.band}`);
  switch (row.band) {
    case 'forms': return formName(row.form, row.unit);
    case 'hands': return row.person.name;
    case 'drying': return say('board.line', {line: row.line});
    case 'orders': return row.line > 1 ? say('board.line', {line: row.line}) : row.spare ? say('board.spare') : orderTitle(row.order);
    default: return say(`board.bands.${row.band}`);
  }
}

/** An order with whom it is for, where that is known. */
export const orderName = order => (order.for ? `${order.id}, ${order.for}` : order.id);

/** An order's id, and below it whom it is for. */
const orderTitle = order => (order.for ? `${order.id}\n${order.for}` : order.id);

/** A row's name for a reader of names only. */
export function rowName(row) {
  const title = row.band === 'drying' ? say('board.standing', {line: row.line})
    : row.band === 'orders' && row.line > 1 ? say('board.more', {order: row.order?.id ?? say('board.spare'), line: row.line}) : rowTitle(row).replace('\n', ', ');
  const bars = row.bars.length === 0 ? say('board.idle') : say('board.bars', {count: row.bars.length});
  const due = row.order && row.line === 1 ? say('board.rowDue', {due: at(row.order.due)}) : '';
  return say('board.rowName', {row: title, bars: `${due}${bars}`});
}

/** The words on a bar. */
export function labelOf(bar, week) {
  switch (bar.kind) {
    case 'task': return taskName(bar.task);
    case 'flag': return bar.order.lateMinutes > 0 ? say('board.flagLate', {order: bar.order.id, late: showMinutes(bar.order.lateMinutes)}) : bar.order.id;
    case 'pin': return say('board.pinWaits');
    case 'group': return groupLabel(bar);
    default: return runLabel(bar, week);
  }
}

function runLabel({kind, run, lot}, week) {
  const amount = lateFor(run) ? say('board.lateAmount', {amount: amountOf(run)}) : amountOf(run);
  return kind !== 'stay' && pinOf(week, lot) ? say('board.pinnedAmount', {amount}) : amount;
}

function groupLabel(group) {
  const count = group.bars.length;
  if (!group.flags) return say(group.bars[0].kind === 'task' ? 'board.tasks' : 'board.runs', {count});
  const late = group.bars.filter(bar => bar.order.lateMinutes > 0).length;
  const flags = say('board.flags', {count});
  return late > 0 ? say('board.flagsLate', {flags, late}) : flags;
}

function moreOf(run, week) {
  const late = lateFor(run);
  return [
    pinOf(week, run.lot) ? say('board.names.pinned') : '',
    run.orders.length > 0 ? say('board.names.serves', {orders: sayList(run.orders.map(order => order.id))}) : '',
    late ? say('board.names.late', {order: late.id, late: showMinutes(late.lateMinutes)}) : '',
  ].filter(text => text !== '').join(' ');
}

/** Most pieces have their mix in their name already. */
const amountWithMix = run => (run.piece.name.includes(run.mix.name) ? amountOf(run) : `${amountOf(run)}, ${run.mix.name}`);

function runName(bar, week) {
  const {run} = bar;
  const set = run.waits.find(wait => wait.kind === 'set');
  const demould = run.tasks.find(task => task.kind === 'demould');
  return say(`board.names.${bar.kind}`, {
    amount: amountWithMix(run), run: run.id, forms: formsOf(run, week), from: at(bar.from), to: at(bar.to),
    set: set ? at(set.to) : '', demould: at(demould.to), more: moreOf(run, week),
  });
}

function taskSentence(bar, week) {
  const {task} = bar;
  const more = task.done ? say('board.happened.done') : task.begun ? say('board.happened.begun') : task.lot && pinOf(week, task.lot) ? say('board.names.pinned') : '';
  const amount = sayList(task.runs.map(amountOf));
  return say('board.names.task', {what: taskName(task), amount, person: personName(week, task.person), from: at(bar.from), to: at(bar.to), more});
}

function flagSentence({order}) {
  const more = order.lateMinutes > 0 ? say('board.names.isLate', {late: showMinutes(order.lateMinutes)})
    : say('board.names.spare', {spare: showMinutes(order.due - order.ready)});
  return say('board.names.flag', {order: orderName(order), due: at(order.due), ready: at(order.ready), more});
}

/** How many members of a group are named one by one; the rest is in its card. */
const NAMED = 4;

/**
 * A bar as a sentence.
 * @param {object} bar
 * @param {object} week
 * @returns {string}
 */
export function nameOf(bar, week) {
  switch (bar.kind) {
    case 'group': {
      const names = sayList(bar.bars.slice(0, NAMED).map(each => labelOf(each, week)));
      return say('board.names.group', {count: groupLabel(bar), from: at(bar.from), to: at(bar.to), names});
    }
    case 'task': return taskSentence(bar, week);
    case 'flag': return flagSentence(bar);
    case 'pin': return say('board.names.pin', {amount: say('board.amount', {count: bar.pin.pin.castings * (bar.pin.mould?.cavities ?? 1), piece: bar.pin.piece.name}), person: personName(week, bar.pin.pin.person), from: at(bar.from)});
    default: return runName(bar, week).trim();
  }
}
