/** Pinning a pour: where it may stand, and what the book then holds. */

import {windowAt} from './hours.js';

/** The finest step in which a pour is moved by hand, in minutes. */
export const STEP = 5;

const minutesOf = lot => lot.pour.to - lot.pour.from;

/** Whether a lot's pour can still be moved: one done or begun is history. */
export const movable = lot => Boolean(lot?.pour) && !lot.pour.done && !lot.pour.begun;

/**
 * The nearest place for a pour in a person's hours.
 * @param {object} week
 * @param {object} lot
 * @param {number} minute where it is wanted to begin
 * @param {string} person
 * @param {number} [step] the minutes it is rounded to
 * @returns {{start: number, person: string, fits: boolean}} fits is false where the person is never open long enough there
 */
export function placeFor(week, lot, minute, person, step = STEP) {
  const length = minutesOf(lot);
  const windows = (week.windows.get(person) ?? []).filter(window => window.to - window.from >= length);
  const wanted = Math.max(week.starts, Math.round(minute / step) * step);
  const after = windowAt(windows, wanted);
  const before = windows.findLast(window => window.to <= wanted);
  const starts = [after, before].filter(Boolean).map(window => Math.min(window.to - length, Math.max(window.from, wanted)));
  if (starts.length === 0) return {start: wanted, person, fits: false};
  const start = starts.reduce((best, each) => (Math.abs(each - wanted) < Math.abs(best - wanted) ? each : best));
  return {start, person, fits: start >= week.starts};
}

/**
 * The pins that settle a whole lot: one for each of its runs, at one time, by one person.
 * @param {object} week
 * @param {object} lot
 * @param {number} start minutes since the epoch
 * @param {string} person
 * @returns {{kind: string, piece: string, castings: number, start: string, person: string}[]}
 */
export function pinsOfLot(week, lot, start, person) {
  return lot.runs.map(run => ({kind: 'pour', piece: run.piece.id, castings: run.castings, start: week.local(start), person}));
}

/**
 * The pins of the book that settle a lot as it stands.
 * @param {object} week
 * @param {object} lot
 * @returns {object[]} as they stand in the book
 */
export function pinsKept(week, lot) {
  return week.pins.filter(pin => pin.lot === lot).map(({pin}) => pin);
}
