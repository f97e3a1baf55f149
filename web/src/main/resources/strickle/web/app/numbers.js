/** Numbers as a person writes and reads them, in the reader's language. */

import {settings} from './settings.js';

const formats = new Map();
// What a box holds is written without groups and, at first, with a point.
const plainly = new Intl.NumberFormat('en-US', {useGrouping: false, maximumFractionDigits: 9});

function format(options) {
  const key = settings.locale + JSON.stringify(options);
  if (!formats.has(key)) {
    formats.set(key, new Intl.NumberFormat(settings.locale, options));
  }
  return formats.get(key);
}

/**
 * A number for reading.
 *
 * @param {number} value any number; nothing else is shown as a dash
 * @param {number} [most] digits after the point at most, 0 to 6
 * @param {number} [least] digits after the point at least
 * @returns {string}
 */
export function showNumber(value, most = 2, least = 0) {
  return Number.isFinite(value)
    ? format({minimumFractionDigits: least, maximumFractionDigits: Math.max(most, least)}).format(value)
    : '–';
}

/** A share of a hundred, with its sign. */
export function showPercent(value, most = 1) {
  return Number.isFinite(value)
    ? format({style: 'percent', maximumFractionDigits: most}).format(value / 100)
    : '–';
}

/** The mark between whole and parts in the reader's language. */
export function decimalMark() {
  return format({minimumFractionDigits: 1}).formatToParts(1.5).find(part => part.type === 'decimal').value;
}

function groupMark() {
  const group = format({useGrouping: true}).formatToParts(1234567).find(part => part.type === 'group');
  return group ? group.value : '';
}

/**
 * A number for a box to write in: no groups, the reader's own mark, every digit that matters.
 *
 * @param {number|null|undefined} value empty when it is no number
 * @returns {string}
 */
export function writeNumber(value) {
  if (!Number.isFinite(value)) {
    return '';
  }
  // Twelve digits: what a change of units leaves behind in the sixteenth is nobody's measure.
  return plainly.format(Number(value.toPrecision(12))).replace('.', decimalMark());
}

/**
 * What a person has written as a number: either mark for the parts, groups by space, apostrophe or
 * the reader's own mark.
 *
 * @param {string} text
 * @returns {number} NaN when it is none
 */
export function readNumber(text) {
  let plain = text.trim().replace(/[\s\u00a0\u202f'’]/g, '').replace('\u2212', '-');
  const decimal = decimalMark();
  const group = groupMark();
  if (/[.,]/.test(group) && plain.includes(group) && isGrouped(plain, group, decimal)) {
    plain = plain.split(group).join('');
  }
  plain = plain.replace(decimal, '.').replace(',', '.');
  return /^[-+]?(\d+\.?\d*|\.\d+)$/.test(plain) ? Number(plain) : NaN;
}

// "1,500" in English is fifteen hundred; "1,5" is one and a half, whoever writes it.
function isGrouped(text, group, decimal) {
  const whole = text.replace(/^[-+]/, '').split(decimal)[0].split(group);
  const many = groupDigits();
  return whole.length > 1 && whole[0].length <= many && whole[0] !== '' && whole[0] !== '0'
    && whole.slice(1, -1).every(part => /^\d+$/.test(part) && part.length === many) && /^\d{3}$/.test(whole.at(-1));
}

// The last group has three digits everywhere, those before it only two in India: 12,34,567.
function groupDigits() {
  const groups = format({useGrouping: true}).formatToParts(1234567890).filter(part => part.type === 'integer');
  return groups[1]?.value.length ?? 3;
}
