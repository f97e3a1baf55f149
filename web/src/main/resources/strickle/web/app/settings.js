/** What a reader has chosen for themselves on this machine: units, language and theme. */

const KEYS = {units: 'strickle.units', locale: 'strickle.locale', theme: 'strickle.theme', who: 'strickle.who'};
const UNITS = ['metric', 'us'];
const US_REGIONS = ['US', 'LR', 'MM'];

// Every number and time that is written asks, and the store takes its time to say.
const known = new Map();

function kept(key) {
  if (!known.has(key)) {
    known.set(key, read(key));
  }
  return known.get(key);
}

function read(key) {
  try {
    return localStorage.getItem(key) ?? '';
  } catch {
    return ''; // a browser that keeps nothing: everything works, but is asked again
  }
}

function keep(key, value) {
  known.delete(key);
  try {
    if (value) {
      localStorage.setItem(key, value);
    } else {
      localStorage.removeItem(key);
    }
  } catch {
    // as above
  }
}

function usualUnits() {
  try {
    return US_REGIONS.includes(new Intl.Locale(navigator.language).maximize().region) ? 'us' : 'metric';
  } catch {
    return 'metric';
  }
}

// The browser's language is what it was when the page was loaded; to look its region up takes a while.
const usual = usualUnits();

const locales = new Map();

// Every number that is written asks, and the browser takes its time to say.
function isLocale(name) {
  if (!locales.has(name)) {
    try {
      locales.set(name, Intl.getCanonicalLocales(name).length === 1);
    } catch {
      locales.set(name, false);
    }
  }
  return locales.get(name);
}

/** The choices; an event "change" whenever one is made. */
class Settings extends EventTarget {

  /** "metric" or "us". */
  get units() {
    const chosen = kept(KEYS.units);
    return UNITS.includes(chosen) ? chosen : usual;
  }

  set units(name) {
    this.#choose(KEYS.units, name);
  }

  /** How numbers, money and times are written: a BCP 47 tag. */
  get locale() {
    const chosen = kept(KEYS.locale);
    return chosen && isLocale(chosen) ? chosen : navigator.language || 'en';
  }

  set locale(tag) {
    this.#choose(KEYS.locale, tag);
  }

  /** Whether a locale was chosen, rather than taken from the browser. */
  get ownLocale() {
    return kept(KEYS.locale);
  }

  /** "system", "light" or "dark". */
  get theme() {
    return window.strickleTheme.chosen();
  }

  set theme(name) {
    this.#choose(KEYS.theme, name);
    window.strickleTheme.wear(name);
  }

  /** Who is at this bench, for the journal; empty when nobody has said. */
  get who() {
    return kept(KEYS.who);
  }

  set who(name) {
    this.#choose(KEYS.who, name.trim().slice(0, 80));
  }

  #choose(key, value) {
    keep(key, value);
    this.dispatchEvent(new Event('change'));
  }
}

export const settings = new Settings();

// Another window of the same reader has chosen.
window.addEventListener('storage', event => {
  if (event.key === null || Object.values(KEYS).includes(event.key)) {
    known.clear();
    window.strickleTheme.wear(settings.theme);
    settings.dispatchEvent(new Event('change'));
  }
});
