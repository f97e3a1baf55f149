/** The head of the board: days, and hours or weeks, as wide as there is room for. */

import {showDay, showTime} from '../app/times.js';

const MINUTE_MS = 60_000;
const WIDE = 84;
const SHORT = 46;
const NARROW = 18;
/** The room an hour's words take. */
export const HOUR_WIDTH = 68;

/** A day's name in the room there is: "Tue 6 Apr", "Tue 6", "6" or nothing. */
function dayWords(day, width) {
  if (width >= WIDE) return showDay(day.from * MINUTE_MS);
  const number = String(Number(day.date.slice(8)));
  if (width >= SHORT) return `${showDay(day.from * MINUTE_MS).split(/[ ,]/)[0]} ${number}`;
  return width >= NARROW ? number : '';
}

/** The hours at which the studio opens and closes, where there is room to say so. */
function hourMarks(axis, left, right) {
  const open = axis.stretches.filter(each => each.open && each.x < right && each.x + each.width > left && each.width >= HOUR_WIDTH);
  return open.flatMap(({from, to, x, width}) => {
    const ends = width >= 2 * HOUR_WIDTH ? [{x: x + width, words: showTime(to * MINUTE_MS), isEnd: true}] : [];
    return [{x, words: showTime(from * MINUTE_MS)}, ...ends];
  });
}

/** The Mondays, and the first day, where days are too narrow for their months. */
function weekMarks(days, axis) {
  return days.filter((day, at) => at === 0 || day.weekday === 'MON').map(day => ({x: axis.xOf(day.from), words: showDay(day.from * MINUTE_MS)}));
}

/**
 * The marks of the head between two places of the axis.
 * @param {object[]} days
 * @param {object} axis
 * @param {number} left pixels of the axis
 * @param {number} right
 * @returns {{days: {x: number, width: number, words: string}[], lower: {x: number, words: string, isEnd?: boolean}[]}}
 */
export function marksOf(days, axis, left, right) {
  const placed = days.map(day => ({day, x: axis.xOf(day.from), width: axis.xOf(day.to) - axis.xOf(day.from)}));
  const seen = placed.filter(({x, width}) => x < right && x + width > left);
  const wide = seen.some(({width}) => width >= WIDE);
  const marks = seen.map(({day, x, width}) => ({x, width, words: dayWords(day, width), date: day.date}));
  return {days: marks, lower: wide ? hourMarks(axis, left, right) : apart(weekMarks(seen.map(each => each.day), axis))};
}

/** Marks that would run into the one before are left out. */
function apart(marks) {
  let end = -Infinity;
  return marks.filter(({x}) => {
    if (x < end) return false;
    end = x + WIDE;
    return true;
  });
}
