/** When the studio is open: the windows of its people, from the book's hours and exceptions. */

import {localMinute} from './clock.js';

/**
 * The opening windows of one person on given days.
 * @param {object} person of the book: hours by weekday, exceptions by date
 * @param {{date: string, weekday: string}[]} days
 * @param {string} zone
 * @returns {{from: number, to: number}[]} in order, minutes since the epoch
 */
export function windowsOf(person, days, zone) {
  const special = new Map((person.exceptions ?? []).map(({date, hours}) => [date, hours ?? []]));
  return days.flatMap(({date, weekday}) => {
    const hours = special.get(date) ?? person.hours?.[weekday] ?? [];
    return hours.map((text) => windowOn(date, text, zone)).sort((a, b) => a.from - b.from);
 });
}

/** A window such as 09:00-12:00 on a date; one that ends at 24:00 ends with the day. */
function windowOn(date, text, zone) {
  const [from, to] = text.split('-');
  const end = to === '24:00' ? localMinute(`${date}T23:59`, zone) + 1 : localMinute(`${date}T${to}`, zone);
  return {from: localMinute(`${date}T${from}`, zone), to: end};
}

/**
 * Windows that overlap or touch, made one.
 * @param {{from: number, to: number}[]} windows in any order
 * @returns {{from: number, to: number}[]} in order, none touching the next
 */
export function joined(windows) {
  const all = [];
  for (const {from, to} of [...windows].sort((a, b) => a.from - b.from)) {
    const last = all.at(-1);
    if (last && from <= last.to) last.to = Math.max(last.to, to);
    else if (to > from) all.push({from, to});
 }
  return all;
}

/**
 * The window that holds a minute, or the next one after it.
 * @param {{from: number, to: number}[]} windows in order
 * @param {number} minute
 * @returns {{from: number, to: number}|undefined}
 */
export function windowAt(windows, minute) {
  let low = 0;
  let high = windows.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (windows[middle].to > minute) high = middle;
    else low = middle + 1;
 }
  return windows[low];
}
