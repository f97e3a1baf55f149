/** What lies under the bars: closed hours, days and, for hands, the hours of each person. Gradients only. */

import {gradientOf} from './layers.js';

const between = (from, to, part) => part.x < to && part.x + part.width > from;

/**
 * Closed hours of the whole studio, as a gradient that covers what is open; what shows through is stone.
 * @param {object} axis
 * @param {number} left pixels of the axis where the gradient begins
 * @param {number} right
 * @param {(length: number) => string} [along]
 */
export function openGradient(axis, left, right, along) {
  const open = axis.stretches.filter(stretch => stretch.open && between(left, right, stretch));
  return gradientOf(open.map(({x, width}) => ({x: Math.max(0, x - left), width: width + Math.min(0, x - left), paint: 'var(--lime)'})), along);
}

/** A line at every midnight. */
export function dayGradient(days, axis, left, right, along) {
  const lines = days.map(day => ({x: axis.xOf(day.from) - left, width: 1, paint: 'var(--line)'}));
  return gradientOf(lines.filter(line => line.x > 0 && line.x < right - left), along);
}

/** The hours in which one person is not there, over what the studio's ground shows. */
export function awayGradient(windows, axis, left, right, along) {
  const away = [];
  let at = left;
  for (const {from, to} of windows) {
    const [start, end] = [axis.xOf(from), axis.xOf(to)];
    if (end <= left || start >= right) continue;
    if (start > at) away.push({x: at - left, width: start - at, paint: 'var(--closed)'});
    at = end;
  }
  if (at < right) away.push({x: at - left, width: right - at, paint: 'var(--closed)'});
  return gradientOf(away, along);
}
