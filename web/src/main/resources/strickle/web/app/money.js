/** Money in the studio's currency, by the currency's own minor units. */

import {settings} from './settings.js';
import {studio} from './studio.js';

const formats = new Map();

function format(currency, options = {}) {
  const key = [settings.locale, currency, JSON.stringify(options)].join();
  if (!formats.has(key)) {
    formats.set(key, new Intl.NumberFormat(settings.locale, {style: 'currency', currency, ...options}));
  }
  return formats.get(key);
}

/** The studio's currency by ISO 4217. */
export function currency() {
  return studio.book?.studio.currency ?? 'USD';
}

/** How many digits the currency has after the point: 2 for most, 0 for the yen, 3 for some dinars. */
export function minorDigits(code = currency()) {
  return format(code).resolvedOptions().maximumFractionDigits;
}

/**
 * An amount of money for reading.
 *
 * @param {number} amount
 * @param {{code?: string, sign?: boolean}} [how] another currency; a plus before what is gained
 */
export function showMoney(amount, {code = currency(), sign = false} = {}) {
  return Number.isFinite(amount)
    ? format(code, sign ? {signDisplay: 'exceptZero'} : {}).format(amount)
    : '–';
}

/** The currency's short sign, for beside a box. */
export function currencySign(code = currency()) {
  return format(code, {currencyDisplay: 'narrowSymbol'})
    .formatToParts(1).find(part => part.type === 'currency').value;
}
