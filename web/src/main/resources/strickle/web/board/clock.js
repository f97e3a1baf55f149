/**
 * Time on the board: whole minutes since the epoch, and the wall clock of the studio's zone.
 * A plan gives times with their offset, a book gives local ones; both become minutes here.
 */

const MINUTE_MS = 60_000;
export const HOUR = 60;
export const DAY = 24 * HOUR;

const formats = new Map();

/** The format that takes a moment apart in a zone; made once for each zone, because making one is slow. */
function partsFormat(zone) {
  let format = formats.get(zone);
  if (!format) {
    format = new Intl.DateTimeFormat('en-GB', {
      timeZone: zone, hourCycle: 'h23', weekday: 'short',
      year: 'numeric', month: '2-digit', day: '2-digit', hour: '2-digit', minute: '2-digit',
   });
    formats.set(zone, format);
 }
  return format;
}

/**
 * The minute of a time with its offset, such as 2027-04-05T09:00-04:00.
 * @param {string} text
 * @returns {number} minutes since the epoch
 */
export function minuteOf(text) {
  return Math.round(Date.parse(text) / MINUTE_MS);
}

/**
 * What the wall clock of a zone shows at a minute.
 * @param {number} minute minutes since the epoch
 * @param {string} zone a time zone such as America/Halifax
 * @returns {{date: string, time: string, weekday: string}} ISO date, hh:mm, MON to SUN
 */
export function wallClock(minute, zone) {
  const of = {};
  for (const {type, value} of partsFormat(zone).formatToParts(minute * MINUTE_MS)) of[type] = value;
  return {date: `${of.year}-${of.month}-${of.day}`, time: `${of.hour}:${of.minute}`, weekday: of.weekday.toUpperCase()};
}

/** Minutes by which a zone's wall clock is ahead of UTC at a minute. */
function offsetMinutes(minute, zone) {
  const {date, time} = wallClock(minute, zone);
  return minuteOf(`${date}T${time}Z`) - minute;
}

/**
 * The minute at which a zone's wall clock shows a local time. One that a clock change leaves out
 * is taken as so much later; of one that comes twice it is the first.
 * @param {string} local such as 2027-04-05T09:00
 * @param {string} zone
 * @returns {number} minutes since the epoch
 */
export function localMinute(local, zone) {
  const asUtc = minuteOf(`${local.slice(0, 16)}Z`);
  const before = asUtc - offsetMinutes(asUtc - DAY, zone);
  const after = asUtc - offsetMinutes(asUtc + DAY, zone);
  const right = [before, after].filter((minute) => minute + offsetMinutes(minute, zone) === asUtc);
  return right.length > 0 ? Math.min(...right) : before;
}

/**
 * The local time a book would write for a minute.
 * @param {number} minute
 * @param {string} zone
 * @returns {string} such as 2027-04-05T09:00
 */
export function localText(minute, zone) {
  const {date, time} = wallClock(minute, zone);
  return `${date}T${time}`;
}

/** The date so many days after an ISO date. */
export function dateAfter(date, days) {
  const day = new Date(`${date}T00:00Z`);
  day.setUTCDate(day.getUTCDate() + days);
  return day.toISOString().slice(0, 10);
}

/** The weekday of an ISO date, MON to SUN. */
export function weekdayOf(date) {
  return ['SUN', 'MON', 'TUE', 'WED', 'THU', 'FRI', 'SAT'][new Date(`${date}T00:00Z`).getUTCDay()];
}

/**
 * The days of a stretch of time, each from its local midnight to the next (23 or 25 hours at a clock change).
 * @param {number} from minutes since the epoch
 * @param {number} to
 * @param {string} zone
 * @returns {{date: string, weekday: string, from: number, to: number}[]}
 */
export function daysBetween(from, to, zone) {
  const days = [];
  let {date} = wallClock(from, zone);
  let start = localMinute(`${date}T00:00`, zone);
  while (start < to) {
    const next = dateAfter(date, 1);
    const end = localMinute(`${next}T00:00`, zone);
    days.push({date, weekday: weekdayOf(date), from: start, to: end});
    date = next;
    start = end;
 }
  return days;
}
