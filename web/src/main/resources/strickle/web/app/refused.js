/** What a refusal says, for a reader: the service writes times as files hold them. */

import {moment, showDay, showMoment} from './times.js';

const MOMENT = /\b\d{4}-\d\d-\d\dT\d\d:\d\d(?::\d\d)?(?:Z|[+-]\d\d:\d\d)?/g;
const DAY = /\b\d{4}-\d\d-\d\d\b/g;
const NEAR_MS = 300 * 86_400_000;

/**
 * A text of the service with its times as the reader writes them. Those far from now stay as they are,
 * since a reader's form of them has no year.
 *
 * @param {?string} text
 * @param {Date} [now]
 */
export function inWords(text, now = new Date()) {
  return String(text ?? '').replace(MOMENT, near(showMoment, now)).replace(DAY, near(showDay, now));
}

const near = (show, now) => text => {
  try {
    return Math.abs(moment(text) - now) < NEAR_MS ? show(text) : text;
  } catch {
    return text; // it only looks like a time, as the 45th of May
  }
};

/** What a fault found and what would be right, for a reader. */
export function faultInWords({found, right}) {
  return {found: inWords(found), right: inWords(right)};
}
