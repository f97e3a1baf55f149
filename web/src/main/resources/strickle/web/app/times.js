/**
 * Times in the studio's zone. A book holds local times ("2027-04-05T09:00"), a plan holds moments
 * with their offset ("2027-04-05T09:00-04:00"); a reader sees both in the studio's zone, wherever the
 * reader's machine is.
 */

import {settings} from './settings.js';
import {studio} from './studio.js';
import {say} from './words.js';

const MINUTE = 60_000;
const DAY = 86_400_000;
const MOST_KEPT = 5000;

const TIME_OF_DAY = {hour: 'numeric', minute: '2-digit'};
const SHORT_DAY = {weekday: 'short', day: 'numeric', month: 'short'};
const LONG_DAY = {weekday: 'long', day: 'numeric', month: 'long'};
const DATE = {day: 'numeric', month: 'long', year: 'numeric'};
const MOMENT = {...SHORT_DAY, ...TIME_OF_DAY};
const APART = {year: 'numeric', month: '2-digit', day: '2-digit', hour: '2-digit', minute: '2-digit',
  second: '2-digit', hourCycle: 'h23', calendar: 'iso8601', numberingSystem: 'latn'};

/** The studio's time zone. */
export function zone() {
  return studio.book?.studio.timeZone ?? 'UTC';
}

// What a reader is shown, kept for as long as they read in the same language and zone: to make a format
// is slow, and a room writes the same moments with every drawing.
const formats = new Map();
let reader = '';

function formatOf(options) {
  const now = `${settings.locale} ${zone()}`;
  if (now !== reader) {
    formats.clear();
    reader = now;
  }
  if (!formats.has(options)) {
    const format = new Intl.DateTimeFormat(options === APART ? 'en-US' : settings.locale, {timeZone: zone(), ...options});
    formats.set(options, {format, texts: new Map()});
  }
  return formats.get(options);
}

function written(options, at) {
  const {format, texts} = formatOf(options);
  const time = moment(at).getTime();
  if (!texts.has(time)) {
    if (texts.size > MOST_KEPT) {
      texts.clear();
    }
    texts.set(time, format.format(time));
  }
  return texts.get(time);
}

/**
 * A moment from any text of a book or plan, or a date.
 *
 * @param {string|Date|number} at
 * @returns {Date}
 */
export function moment(at) {
  if (typeof at !== 'string') {
    return new Date(at);
  }
  const local = /^\d{4}-\d\d-\d\d(T\d\d:\d\d(:\d\d)?)?$/.test(at);
  return local ? fromLocal(at) : new Date(at);
}

// What a zone's clock shows is slow to find out, and a room asks for the same moments with every drawing.
const kept = new Map();
let keptZone = '';

function once(key, find) {
  if (keptZone !== zone() || kept.size > MOST_KEPT) {
    kept.clear();
    keptZone = zone();
  }
  if (!kept.has(key)) {
    kept.set(key, find());
  }
  return kept.get(key);
}

// What the studio's clock shows, as if it were UTC.
function shown(date) {
  return once(date.getTime(), () => takenApart(date));
}

function takenApart(date) {
  const part = Object.fromEntries(formatOf(APART).format.formatToParts(date).map(({type, value}) => [type, value]));
  return Date.UTC(part.year, part.month - 1, part.day, part.hour, part.minute, part.second);
}

function fromLocal(text) {
  return new Date(once(text, () => timeOf(text)));
}

// A time that a clock change skips is as much later, as in the service; of two the first.
function timeOf(text) {
  const wanted = Date.parse(`${text.length > 10 ? text : text + 'T00:00'}Z`);
  const offsets = [-1, 1].map(side => {
    const near = wanted + side * DAY;
    return shown(new Date(near)) - near;
  });
  const fitting = offsets.map(offset => wanted - offset).filter(at => shown(new Date(at)) === wanted);
  return fitting.length > 0 ? Math.min(...fitting) : wanted - offsets[0];
}

/** A moment as the book writes it: local, to the minute. */
export function toLocal(at) {
  return new Date(shown(moment(at))).toISOString().slice(0, 16);
}

/** The day of a moment in the studio, as 2027-04-05. */
export function dayOf(at) {
  return toLocal(at).slice(0, 10);
}

/** So many days after a day, both as 2027-04-05. */
export function addDays(day, days) {
  return new Date(Date.parse(`${day}T00:00Z`) + days * DAY).toISOString().slice(0, 10);
}

/** The day of the week, 0 for Monday. */
export function weekday(day) {
  return (new Date(`${day}T00:00Z`).getUTCDay() + 6) % 7;
}

/** The Monday of a day's week. */
export function weekOf(day) {
  return addDays(day, -weekday(day));
}

/** "14:10", or as the reader's language writes it. */
export function showTime(at) {
  return written(TIME_OF_DAY, at);
}

/** "Tue 6 Apr". */
export function showDay(at) {
  return written(SHORT_DAY, at);
}

/** "Tuesday 6 April". */
export function showLongDay(at) {
  return written(LONG_DAY, at);
}

/** "6 April 2027". */
export function showDate(at) {
  return written(DATE, at);
}

/** "Tue 6 Apr, 14:10". */
export function showMoment(at) {
  return written(MOMENT, at);
}

/** "14:10 – 15:00", with the days where they differ. */
export function showSpan(from, to) {
  return dayOf(from) === dayOf(to)
    ? `${showTime(from)}\u202f–\u202f${showTime(to)}`
    : `${showMoment(from)} – ${showMoment(to)}`;
}

/** "5 – 11 April": days of a stretch, both ends in it. */
export function showDays(from, to) {
  return formatOf(DATE).format.formatRange(moment(from), moment(to));
}

/**
 * How long: "40 min", "2 h 40 min", "3 d 5 h". From two days on without minutes.
 *
 * @param {number} minutes 0 or more
 */
export function showMinutes(minutes) {
  const whole = Math.round(Math.abs(minutes));
  const [days, hours, rest] = [Math.floor(whole / 1440), Math.floor(whole / 60) % 24, whole % 60];
  const parts = [[days, 'days'], [hours, 'hours'], [days > 1 ? 0 : rest, 'minutes']]
    .filter(([count]) => count > 0).slice(0, 2);
  return (parts.length ? parts : [[0, 'minutes']])
    .map(([count, unit]) => say(`times.${unit}`, {count})).join(' ');
}

/**
 * How much work: "26 h 14 min". Never in days, which are not what somebody works.
 *
 * @param {number} minutes 0 or more
 */
export function showWork(minutes) {
  const whole = Math.round(Math.abs(minutes));
  const parts = [[Math.floor(whole / 60), 'hours'], [whole % 60, 'minutes']].filter(([count]) => count > 0);
  return (parts.length ? parts : [[0, 'minutes']])
    .map(([count, unit]) => say(`times.${unit}`, {count})).join(' ');
}

/** Minutes from one moment to another. */
export function minutesBetween(from, to) {
  return (moment(to) - moment(from)) / MINUTE;
}

const relatives = new Map();

function relativeOf(locale) {
  if (!relatives.has(locale)) {
    relatives.set(locale, new Intl.RelativeTimeFormat(locale, {numeric: 'auto'}));
  }
  return relatives.get(locale);
}

/** "3 minutes ago", "in 2 days". */
export function showAgo(at, now = Date.now()) {
  const minutes = (moment(at) - now) / MINUTE;
  const relative = relativeOf(settings.locale);
  if (Math.abs(minutes) < 60) {
    return relative.format(Math.round(minutes), 'minute');
  }
  return Math.abs(minutes) < 1440
    ? relative.format(Math.round(minutes / 60), 'hour')
    : relative.format(Math.round(minutes / 1440), 'day');
}
