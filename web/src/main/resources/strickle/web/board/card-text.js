/** What a card tells of a bar: what it is, why then, what would move it. */

import {say, sayList} from '../app/words.js';
import {showMass} from '../app/units.js';
import {amountOf, at, formsOf, howLong, labelOf, lateFor, nameOf, orderName, personName, pinOf, span, taskName, taskOf} from './names.js';
import {movable} from './pinning.js';
import {whatMoves, whyThen} from './reasons.js';

/** The task whose beginning a bar's beginning is. */
function beginningOf(bar) {
  if (bar.task) return bar.task;
  return bar.kind === 'stay' ? bar.run.tasks.find(task => task.kind === 'demould') : bar.lot.pour;
}

/** How a run goes through the studio, line by line. */
function wayOf(run, week) {
  const steps = run.tasks.map(task => ({from: task.from, text: say('board.card.taskLine', {what: taskName(task), span: span(task.from, task.to), person: personName(week, task.person)})}));
  const waits = run.waits.map(wait => ({from: wait.from, text: say(`board.card.waitUntil.${wait.kind}`, {to: at(wait.to)})}));
  const lines = [...steps, ...waits].sort((a, b) => a.from - b.from).map(line => line.text);
  return [...lines, say('board.card.readyAt', {at: at(run.ready)})];
}

function weighing(lot, week) {
  const parts = lot.weighOut.map(({material, grams}) => `${showMass(grams)} ${week.names.materials.get(material)?.name ?? material}`);
  return parts.length > 0 ? [say('board.card.weigh', {parts: sayList(parts)})] : [];
}

function ballasts(runs) {
  return runs.filter(run => run.ballastGramsEach > 0).map(run => say('board.card.ballast', {grams: showMass(run.ballastGramsEach)}));
}

function servedBy(run) {
  if (run.orders.length === 0) return say('board.card.forStock');
  return say('board.card.orders', {orders: sayList(run.orders.map(orderName))});
}

function ofRun(bar, week) {
  const {run, lot} = bar;
  const late = lateFor(run);
  return {
    title: amountOf(run), sub: say('board.card.lot', {lot: run.id, mix: run.mix.name}),
    what: [say('board.card.inForms', {forms: formsOf(run, week)}), ...ballasts([run]), servedBy(run), ...(late ? [say('board.names.late', {order: late.id, late: howLong(late.lateMinutes)})] : [])],
    way: wayOf(run, week), because: late?.because ?? [], lateOrder: late, lot, task: beginningOf(bar),
  };
}

function ofTask(bar, week) {
  const {task} = bar;
  const lot = task.kind === 'pour' ? task.lot : null;
  const lines = lot ? [...task.runs.map(run => `${amountOf(run)} · ${formsOf(run, week)}`), ...weighing(lot, week), ...ballasts(task.runs)] : [amountOf(task.run), servedBy(task.run)];
  return {
    title: taskName(task), sub: `${personName(week, task.person)} · ${span(bar.from, bar.to)}`, what: lines,
    way: task.run ? wayOf(task.run, week) : [], because: [], lot: lot, task,
  };
}

function ofOrder({order}) {
  const late = order.lateMinutes > 0;
  const dueLine = say('board.card.dueLine', {due: at(order.due), ready: at(order.ready)});
  return {
    title: orderName(order),
    sub: late ? say('board.names.isLate', {late: howLong(order.lateMinutes)}) : say('board.why.onTime', {spare: howLong(order.due - order.ready)}),
    what: [dueLine, ...order.lines.map(line => say('board.amount', {count: line.quantity, piece: line.of.name})), ...(order.runs.length === 0 ? [say('board.card.fromStock')] : [])],
    way: [], because: order.because, order, lateOrder: late ? order : undefined, members: order.runs.map(run => ({kind: 'life', id: run.id, run, lot: run.lot, from: run.tasks[0].from, to: run.ready, parts: []})),
  };
}

function ofGroup(group, week) {
  return {title: labelOf(group, week), sub: '', what: [say('board.card.members')], way: [], because: [], members: group.bars};
}

function ofPin(bar, week) {
  return {title: say('board.pinWaits'), sub: at(bar.from), what: [nameOf(bar, week)], way: [], because: [], pin: bar.pin};
}

function bodyOf(bar, week) {
  switch (bar.kind) {
    case 'group': return ofGroup(bar, week);
    case 'flag': return ofOrder(bar);
    case 'task': return ofTask(bar, week);
    case 'pin': return ofPin(bar, week);
    default: return ofRun(bar, week);
  }
}

/**
 * What a card tells of a bar.
 * @param {object} bar
 * @param {object} week
 * @returns {{title: string, sub: string, what: string[], way: string[], why: string[], moves: string[], because: string[],
 *   members: object[], lot?: object, pinned: boolean, movable: boolean, task?: object, order?: object, pin?: object}}
 */
export function cardText(bar, week) {
  const body = {members: [], ...bodyOf(bar, week)};
  const {task, lot} = body;
  return {
    ...body, why: task ? whyThen(week, task) : [], moves: task ? whatMoves(week, task) : [],
    pinned: Boolean(body.pin || (lot && pinOf(week, lot))), movable: Boolean(lot && movable(lot)),
  };
}

/** A member of a group or an order as a line to press. */
export function memberLine(bar, week) {
  if (bar.kind === 'task') return `${span(bar.from, bar.to)} ${taskOf(bar.task)}`;
  if (bar.kind === 'flag') return nameOf(bar, week);
  if (bar.kind === 'pin') return nameOf(bar, week);
  return `${amountOf(bar.run)} · ${span(bar.from, bar.to)}`;
}
