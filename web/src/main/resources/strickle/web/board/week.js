/**
 * A plan with its book, read once: lots, runs, tasks, waits and orders that know each other, with all times
 * as minutes. Everything else on the board works with this and never looks at the files again.
 */

import {DAY, daysBetween, localMinute, localText, minuteOf} from './clock.js';
import {joined, windowsOf} from './hours.js';
import {serve} from './serving.js';

/** Dues further away than this many days after the last piece do not stretch the board. */
const FARTHEST_DUE_DAYS = 21;

const byId = (list) => new Map((list ?? []).map((thing) => [thing.id, thing]));
const named = (map, id) => map.get(id) ?? {id, name: id};

function namesOf(book) {
  return Object.fromEntries(['people', 'forms', 'moulds', 'mixes', 'pieces', 'stations', 'materials'].map((key) => [key, byId(book[key])]));
}

function taskOf(task) {
  const spells = task.spells.map(({start, end}) => ({from: minuteOf(start), to: minuteOf(end)}));
  return {...task, spells, from: spells[0].from, to: spells.at(-1).to, done: task.done ?? false, begun: task.begun ?? false};
}

function runOf(run, lot, names) {
  const piece = named(names.pieces, run.piece);
  const mould = names.moulds.get(piece.mould);
  return {
    id: run.id, lot, piece, mould, mix: lot.mix, castings: run.castings, scrapped: run.scrapped ?? 0,
    pieces: run.castings * (mould?.cavities ?? 1), ballastGramsEach: run.ballastGramsEach ?? 0,
    forms: run.forms ?? [], tasks: [], waits: [], orders: [], ready: 0,
 };
}

function lotsOf(plan, names) {
  return (plan.lots ?? []).map((of) => {
    const lot = {id: of.id, mix: named(names.mixes, of.mix), weighOut: of.weighOut ?? [], wetGrams: of.wetGrams, runs: [], pour: null};
    lot.runs = (of.runs ?? []).map((run) => runOf(run, lot, names));
    return lot;
 });
}

/** Gives every task to its lot and runs, every wait and ready moment to its run. */
function tie(plan, lots, runs) {
  const lotOf = byId(lots);
  const tasks = (plan.tasks ?? []).map(taskOf).sort((a, b) => a.from - b.from || (a.id < b.id ? -1 : 1));
  for (const task of tasks) {
    task.lot = task.kind === 'pour' ? lotOf.get(task.lot) : null;
    task.run = task.kind === 'pour' ? null : runs.get(task.run);
    task.runs = task.lot ? task.lot.runs : [task.run];
    if (task.lot) task.lot.pour = task;
    for (const run of task.runs) run.tasks.push(task);
 }
  for (const {run, kind, from, to} of plan.waits ?? []) runs.get(run)?.waits.push({kind, from: minuteOf(from), to: minuteOf(to)});
  for (const {run, at} of plan.ready ?? []) if (runs.has(run)) runs.get(run).ready = minuteOf(at);
  return tasks;
}

function ordersOf(plan, book, names, zone) {
  const outcomes = new Map((plan.orders ?? []).map((outcome) => [outcome.order, outcome]));
  return (book.orders ?? []).map((order) => {
    const outcome = outcomes.get(order.id);
    return {
      id: order.id, for: order.for ?? '', kind: order.kind ?? '', weight: order.weight ?? 1, due: localMinute(order.due, zone),
      lines: (order.lines ?? []).map((line) => ({...line, of: named(names.pieces, line.piece)})), runs: [],
      planned: outcome !== undefined, ready: outcome ? minuteOf(outcome.ready) : null,
      lateMinutes: outcome?.lateMinutes ?? 0, because: outcome?.because ?? [],
   };
 });
}

/** The pins of the book, each with the lot of the plan that keeps it, if one does. */
function pinsOf(book, lots, names, zone) {
  return (book.pins ?? []).map((pin, at) => {
    const start = localMinute(pin.start, zone);
    const keeps = (lot) => lot.pour?.from === start && lot.pour.person === pin.person && lot.runs.some((run) => run.piece.id === pin.piece);
    const piece = named(names.pieces, pin.piece);
    return {id: String(at + 1), pin, start, piece, mould: names.moulds.get(piece.mould), lot: lots.find(keeps) ?? null};
 });
}

function reach(plan, orders, runs, zone, now) {
  const from = minuteOf(plan.from);
  const last = Math.max(from + DAY, ...[...runs.values()].map((run) => run.ready));
  const dues = orders.map((order) => order.due).filter((due) => due > from && due <= last + FARTHEST_DUE_DAYS * DAY);
  const at = now !== undefined && now > from && now < last + FARTHEST_DUE_DAYS * DAY ? [now] : [];
  return daysBetween(from, Math.max(last, ...dues, ...at) + DAY, zone);
}

/**
 * Reads a plan with its book.
 * @param {object} book strickle-book/1
 * @param {object} plan strickle-plan/1 of that book
 * @param {number} [now] minutes since the epoch, so that the board reaches it
 * @returns {object} zone, from, to, days, open (joined windows), windows by person, names, lots, runs (Map), tasks, orders, pins
 */
export function readWeek(book, plan, now) {
  const zone = book.studio.timeZone;
  const names = namesOf(book);
  const lots = lotsOf(plan, names);
  const runs = byId(lots.flatMap((lot) => lot.runs));
  const tasks = tie(plan, lots, runs);
  const orders = ordersOf(plan, book, names, zone);
  serve(orders.filter((order) => order.planned), [...runs.values()]);
  const days = reach(plan, orders, runs, zone, now);
  const windows = new Map((book.people ?? []).map((person) => [person.id, joined(windowsOf(person, days, zone))]));
  return {
    zone, names, lots, runs, tasks, orders, days, windows, starts: minuteOf(plan.from),
    from: days[0].from, to: days.at(-1).to, open: joined([...windows.values()].flat()),
    people: book.people ?? [], forms: book.forms ?? [], batchLimitGrams: book.studio.batchLimitGrams,
    pins: pinsOf(book, lots, names, zone), totals: plan.totals, local: (minute) => localText(minute, zone),
 };
}

const kept = new WeakMap();

/**
 * The same as {@link readWeek}, read once for a plan while its book and the time stay the same, so that
 * the board, its card and the room speak of the same things.
 */
export function weekOf(book, plan, now) {
  const known = kept.get(plan);
  if (known && known.book === book && known.now === now) return known.week;
  const week = readWeek(book, plan, now);
  kept.set(plan, {book, now, week});
  return week;
}
