/** Lists to choose from that the browser knows: currencies and time zones. */

import {settings} from './settings.js';
import {language} from './words.js';

const COMMON = ['USD', 'EUR', 'GBP', 'CAD', 'AUD', 'NZD', 'CHF', 'SEK', 'NOK', 'DKK', 'PLN', 'CZK', 'JPY', 'INR', 'ZAR', 'BRL', 'MXN'];

function known(kind, otherwise) {
  try {
    return Intl.supportedValuesOf(kind);
  } catch {
    return otherwise;
  }
}

/**
 * Currencies by ISO 4217, the usual ones first, as choices of a field.
 *
 * @param {string} present one that must be among them
 */
export function currencies(present) {
  const names = new Intl.DisplayNames(language, {type: 'currency'});
  const codes = [...new Set([...COMMON, ...known('currency', COMMON), present])].filter(code => code);
  return codes.map(code => ({value: code, label: `${code}, ${names.of(code)}`}));
}

/** Time zones of the IANA database, as choices of a field. */
export function zones(present) {
  const names = [...new Set(['UTC', ...known('timeZone', []), present, hereZone()])].filter(name => name).sort();
  return names.map(name => ({value: name, label: name.replaceAll('_', ' ')}));
}

/** The time zone of this machine. */
export function hereZone() {
  return Intl.DateTimeFormat().resolvedOptions().timeZone || 'UTC';
}

/** The currency that is usual where the reader's language is spoken; the dollar where unknown. */
export function hereCurrency() {
  try {
    const {region} = new Intl.Locale(settings.locale).maximize();
    return {US: 'USD', CA: 'CAD', GB: 'GBP', AU: 'AUD', NZ: 'NZD', CH: 'CHF', SE: 'SEK', NO: 'NOK', DK: 'DKK', PL: 'PLN', CZ: 'CZK',
      JP: 'JPY', IN: 'INR', ZA: 'ZAR', BR: 'BRL', MX: 'MXN'}[region]
      ?? (['AT', 'BE', 'CY', 'DE', 'EE', 'ES', 'FI', 'FR', 'GR', 'HR', 'IE', 'IT', 'LT', 'LU', 'LV', 'MT', 'NL', 'PT', 'SI', 'SK'].includes(region) ? 'EUR' : 'USD');
  } catch {
    return 'USD';
  }
}

/** Ways to write dates and numbers, as choices of a field. */
export const LOCALES = ['en-US', 'en-GB', 'en-CA', 'en-AU', 'en-IE', 'de-DE', 'de-CH', 'fr-FR', 'fr-CA', 'es-ES', 'es-MX', 'it-IT', 'nl-NL', 'pt-BR', 'pt-PT', 'sv-SE', 'nb-NO', 'da-DK', 'fi-FI', 'pl-PL', 'cs-CZ', 'ja-JP', 'en-IN', 'en-ZA'];

/** What a way of writing is called. */
export function localeName(tag) {
  return new Intl.DisplayNames(language, {type: 'language', languageDisplay: 'standard'}).of(tag);
}
