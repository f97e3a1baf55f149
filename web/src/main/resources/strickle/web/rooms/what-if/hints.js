/** The changes a maker may choose to try, as the service writes them, made from a few choices. */

import {toLocal} from '../../app/times.js';

/** The kinds of change, with the fields each asks for. */
export const KINDS = {
  form: ['form', 'many'],
  hours: ['person', 'from', 'until'],
  helper: ['day', 'start', 'end'],
  room: ['degrees'],
  batch: ['grams'],
  places: ['station', 'many'],
};

/**
 * A change in the service's words, such as "form:tub-a+1".
 *
 * @param {string} kind one of {@link KINDS}
 * @param {object} chosen the fields' values
 * @returns {string} empty while something is missing
 */
export function change(kind, chosen) {
  if (KINDS[kind].some(name => name !== 'start' && name !== 'end' && (chosen[name] ?? '') === '')) {
    return '';
  }
  return {
    form: () => `form:${chosen.form}+${chosen.many}`,
    hours: () => `hours:${chosen.person}:${chosen.from.slice(0, 16)}-${chosen.until.slice(11, 16)}`,
    helper: () => `helper:${chosen.day}${chosen.start && chosen.end ? `T${chosen.start}-${chosen.end}` : ''}`,
    room: () => `room:${chosen.degrees}`,
    batch: () => `batch:${chosen.grams}`,
    places: () => `places:${chosen.station}+${chosen.many}`,
  }[kind]();
}

/** What the fields begin with. */
export function first(kind, book) {
  const now = toLocal(new Date());
  return {
    form: {form: book.forms[0]?.id, many: 1},
    hours: {person: book.people[0]?.id, from: `${now.slice(0, 10)}T09:00`, until: `${now.slice(0, 10)}T12:00`},
    helper: {day: now.slice(0, 10), start: '', end: ''},
    room: {degrees: 20},
    batch: {grams: book.studio.batchLimitGrams * 1.5},
    places: {station: book.stations[0]?.id, many: 4},
  }[kind];
}
