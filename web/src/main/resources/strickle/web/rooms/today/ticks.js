/** What was ticked off at the bench: kept on this machine for as long as the day lasts. */

import {settings} from '../../app/settings.js';
import {showWeighed, unitFor} from '../../app/units.js';

const KEY = 'strickle.ticks';
const DAYS = 3;

function read() {
  try {
    return JSON.parse(localStorage.getItem(KEY) ?? '{}');
  } catch {
    return {};
  }
}

export const ticks = {

  /** Whether something of a day is ticked. */
  has(day, name) {
    return read()[day]?.includes(name) ?? false;
  },

  /** Ticks it, or takes the tick away; days long past are forgotten. */
  set(day, name, on) {
    const all = read();
    const others = (all[day] ?? []).filter(other => other !== name);
    all[day] = on ? [...others, name] : others;
    const kept = Object.fromEntries(Object.entries(all).sort().slice(-DAYS));
    try {
      localStorage.setItem(KEY, JSON.stringify(kept));
    } catch {
      // nothing is kept here: the tick lives as long as the page
    }
  },
};

const STEP = 'strickle.scaleStepGrams';

const OUNCE = unitFor('mass', 0, 'us').many;

/** The step of the scale at this bench, in grams. */
export const scale = {

  /** The steps that scales have in the reader's units. */
  get steps() {
    return settings.units === 'us' ? [0.005, 0.01, 0.05, 0.1, 0.25, 0.5].map(ounces => ounces * OUNCE) : [0.1, 0.5, 1, 2, 5, 10];
  },

  /** The same to choose from. */
  get options() {
    return scale.steps.map(value => ({value, label: showWeighed(value)}));
  },

  get stepGrams() {
    const [finest] = scale.steps;
    try {
      const kept = Number(localStorage.getItem(STEP));
      return scale.steps.find(step => Math.abs(step - kept) < 1e-6) ?? finest;
    } catch {
      return finest;
    }
  },

  set stepGrams(grams) {
    try {
      localStorage.setItem(STEP, String(grams));
    } catch {
      // as above
    }
  },
};
