/**
 * The board's axis. In bench time open hours are drawn wide and closed ones narrow, so that minutes of
 * handwork are readable beside days of waiting; in true time every minute is as wide as any other.
 */

import {DAY} from './clock.js';

/** What part of the width closed hours take in bench time: enough to see a cure pass the night. */
const CLOSED_SHARE = 0.42;
/** Where nobody is ever open there is nothing to draw wide. */
const NARROWEST = 0.02;

/** How wide a closed minute is beside an open one, at most as wide. */
function narrowness(open, from, to) {
  const openMinutes = open.reduce((sum, window) => sum + (window.to - window.from), 0);
  const closedMinutes = to - from - openMinutes;
  if (openMinutes <= 0 || closedMinutes <= 0) return 1;
  const share = CLOSED_SHARE / (1 - CLOSED_SHARE);
  return Math.min(1, Math.max(NARROWEST, (share * openMinutes) / closedMinutes));
}

/** The open windows cut to a stretch of time, with the closed stretches between them. */
function stretchesOf(open, from, to) {
  const stretches = [];
  let at = from;
  for (const window of open) {
    const start = Math.max(from, window.from);
    const end = Math.min(to, window.to);
    if (end <= start) continue;
    if (start > at) stretches.push({from: at, to: start, open: false});
    stretches.push({from: start, to: end, open: true});
    at = end;
 }
  if (at < to) stretches.push({from: at, to, open: false});
  return stretches;
}

/** The place of the last item whose key is at most a value. */
function lastAtMost(items, value, key) {
  let low = 0;
  let high = items.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (items[middle][key] <= value) low = middle;
    else high = middle - 1;
 }
  return low;
}

/**
 * An axis from one minute to another.
 * @param {object} of
 * @param {number} of.from minutes since the epoch
 * @param {number} of.to later than from
 * @param {{from: number, to: number}[]} of.open joined windows in order
 * @param {boolean} of.trueTime
 * @param {number} of.days how many days a view shows
 * @param {number} of.viewWidth how wide the view is, in pixels
 * @returns {{from: number, to: number, width: number, stretches: object[], xOf: (minute: number) => number,
 *   minuteAt: (x: number) => number}} x in pixels from the axis' beginning
 */
export function axis({from, to, open, trueTime, days, viewWidth}) {
  const cut = stretchesOf(open, from, to);
  const narrow = trueTime ? 1 : narrowness(cut.filter((stretch) => stretch.open), from, to);
  const weight = (stretch) => (stretch.to - stretch.from) * (stretch.open ? 1 : narrow);
  const whole = cut.reduce((sum, stretch) => sum + weight(stretch), 0);
  const width = Math.max(viewWidth, (viewWidth * (to - from)) / (days * DAY));
  const scale = width / whole;
  let x = 0;
  const stretches = cut.map((stretch) => {
    const placed = {...stretch, x, width: weight(stretch) * scale};
    x += placed.width;
    return placed;
 });
  return {from, to, width, stretches, xOf: (minute) => xIn(stretches, width, minute), minuteAt: (at) => minuteIn(stretches, at)};
}

function xIn(stretches, width, minute) {
  const stretch = stretches[lastAtMost(stretches, minute, 'from')];
  const into = (minute - stretch.from) / (stretch.to - stretch.from);
  return Math.min(width, Math.max(0, stretch.x + into * stretch.width));
}

function minuteIn(stretches, x) {
  const stretch = stretches[lastAtMost(stretches, x, 'x')];
  const into = Math.min(1, Math.max(0, (x - stretch.x) / stretch.width));
  return Math.round(stretch.from + into * (stretch.to - stretch.from));
}
