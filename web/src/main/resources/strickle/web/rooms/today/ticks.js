/** What was ticked off at the bench: kept on this machine for as long as the day lasts. */

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

/** The step of the scale at this bench, in grams. */
export const scale = {
  STEPS: [0.1, 0.5, 1, 2, 5, 10],

  get stepGrams() {
    try {
      const kept = Number(localStorage.getItem(STEP));
      return scale.STEPS.includes(kept) ? kept : 0.1;
    } catch {
      return 0.1;
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
