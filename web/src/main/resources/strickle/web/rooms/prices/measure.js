/** What the numbers of a price are measured in, as a reader reads them: money, masses, shares, counts. */

import {currency, showMoney} from '../../app/money.js';
import {showNumber, showPercent} from '../../app/numbers.js';
import {showMass, unitFor} from '../../app/units.js';
import {say} from '../../app/words.js';

const A_TON = 1e6;
const plain = amount => amount;
const counted = word => ({number: value => showNumber(value), around: (amount, count) => say(`prices.unit.${word}`, {amount, count})});

const MEASURES = {
  '%': {number: value => showPercent(value), around: plain},
  kg: {number: value => showMass(value * 1000), around: plain},
  castings: counted('castings'),
  min: counted('minutes'),
  'min a good piece': counted('minutesEach'),
  'h/month': counted('hoursAMonth'),
};

// By the unit that much is weighed in: a kilogram, or the reader's pound.
function byMass() {
  const {name, many} = unitFor('mass', A_TON);
  return {number: value => showMoney(value / 1000 * many), around: amount => say('prices.unit.byMass', {amount, unit: name})};
}

function money(per) {
  if (per === 'kg') {
    return byMass();
  }
  const word = {h: 'anHour', month: 'aMonth'}[per];
  return {number: value => showMoney(value), around: word ? amount => say(`prices.unit.${word}`, {amount}) : plain};
}

function measure(unit) {
  const [what, per] = unit.split('/');
  return MEASURES[unit] ?? (what === currency() ? money(per) : {number: value => showNumber(value), around: amount => `${amount}\u00a0${unit}`});
}

/**
 * A number of an answer about prices.
 *
 * @param {string} unit as the service names it: "castings", "%", "CAD", "CAD/kg" …
 * @param {number} value
 */
export function showMeasure(unit, value) {
  const {number, around} = measure(unit);
  return around(number(value), value);
}

/** From one number to another, with the unit once. */
export function showMeasures(unit, low, high) {
  const {number, around} = measure(unit);
  return around(`${number(low)} … ${number(high)}`, high);
}
