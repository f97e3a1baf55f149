/**
 * How a box of each kind reads and writes its value. A value is what the book holds: a text, a number
 * in base units, a local time; null for nothing.
 */

import {readNumber, writeNumber, decimalMark} from '../app/numbers.js';
import {KINDS, fromUnit, toUnit, unitFor} from '../app/units.js';
import {currencySign, minorDigits} from '../app/money.js';
import {say} from '../app/words.js';

const plainNumber = {
  isNumber: true,
  write: value => writeNumber(value),
  read: text => readNumber(text),
  unit: field => field.unit,
};

const measure = kind => ({
  isNumber: true,
  unit: field => measureUnit(kind, field).name,
  write: (value, field) => (Number.isFinite(value) ? writeNumber(converted(value, measureUnit(kind, field))) : ''),
  read: (text, field) => round(fromUnit(readNumber(text), measureUnit(kind, field))),
});

// The same unit from the first letter to the last, whatever is typed between.
function measureUnit(kind, field) {
  return unitFor(kind, field.size ?? 0);
}

const DIGITS = 4;

// What was kept in another system of units would fill a box with digits that nobody measured. It is kept as it was until
// something is typed.
function converted(value, unit) {
  const amount = toUnit(value, unit);
  return Number.isInteger(Math.log10(unit.many)) ? amount : Number(amount.toFixed(DIGITS));
}

// As many digits as a number holds for sure: 2.5 lb is 1133.980925 g and not 1133.9809249999998, and 32 °F is 0 °C.
function round(value) {
  return Number.isFinite(value) ? Number(Number(value.toFixed(12)).toPrecision(15)) : value;
}

const text = {write: value => value ?? '', read: text => text, unit: () => ''};

/** By name: text, note, password, clock, date, moment, number, whole, percent, minutes, hours, money, and measures. */
export const KIND = {
  text,
  note: text,
  password: {...text, type: 'password'},
  clock: {...text, type: 'time'},
  date: {...text, type: 'date'},
  moment: {...text, type: 'datetime-local', write: value => (value ?? '').slice(0, 16)},
  number: plainNumber,
  whole: {...plainNumber, whole: true},
  percent: {...plainNumber, unit: () => '%'},
  minutes: {...plainNumber, whole: true, unit: () => 'min'},
  hours: {...plainNumber, unit: () => 'h'},
  money: {
    ...plainNumber,
    unit: () => currencySign(),
    write: value => (Number.isFinite(value) && Number(value.toFixed(minorDigits())) === value && minorDigits() > 0 && !Number.isInteger(value)
      ? value.toFixed(minorDigits()).replace('.', decimalMark())
      : writeNumber(value)),
  },
  ...Object.fromEntries(KINDS.map(kind => [kind, measure(kind)])),
};

/**
 * What is wrong with what was typed, in the reader's words; empty when nothing is.
 *
 * @param {string} typed
 * @param {object} field with kind, needed, least and most (in base units)
 */
export function faultOf(typed, field) {
  const kind = KIND[field.kind] ?? KIND.text;
  if (typed.trim() === '') {
    return field.needed ? say('parts.needed') : '';
  }
  if (!kind.isNumber) {
    return '';
  }
  const value = kind.read(typed, field);
  if (!Number.isFinite(value)) {
    return say('parts.notANumber', {text: typed});
  }
  if (kind.whole && !Number.isInteger(value)) {
    return say('parts.notWhole');
  }
  const told = limit => `${kind.write(limit, field)} ${kind.unit(field) ?? ''}`.trim();
  if (field.least !== undefined && value < field.least - 1e-9) {
    return say('parts.below', {least: told(field.least)});
  }
  return field.most !== undefined && value > field.most + 1e-9 ? say('parts.above', {most: told(field.most)}) : '';
}
