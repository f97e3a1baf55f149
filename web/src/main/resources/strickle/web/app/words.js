/**
 * The words of the page: all of a language in one file, found by "room.name". A word may hold {places} to
 * fill in; one that depends on a number is an object by plural form (Unicode CLDR), chosen by the value of
 * {count}.
 */

import {showNumber} from './numbers.js';
import all from '../words/en.js';

/** The language the words are in. */
export const language = 'en';

const plurals = new Intl.PluralRules(language);
const conjunction = new Intl.ListFormat(language, {type: 'conjunction'});

function find(key) {
  const found = key.split('.').reduce((at, name) => at?.[name], all);
  if (found === undefined) {
    console.error(`There is no word "${key}".`);
    return ''; // its key would tell a reader nothing
  }
  return found;
}

function chosen(key, values) {
  const found = find(key);
  return typeof found === 'object' ? found[plurals.select(values.count)] ?? found.other : found;
}

function shown(value) {
  return typeof value === 'number' ? showNumber(value) : value;
}

/**
 * A word or sentence.
 *
 * @param {string} key as "week.late"
 * @param {object} [values] for its places; numbers are written in the reader's language
 * @returns {string}
 */
export function say(key, values = {}) {
  return sayParts(key, values).join('');
}

const taken = new Map();

// A sentence taken apart once: a board says the same ones hundreds of times.
function partsOf(sentence) {
  if (!taken.has(sentence)) {
    const parts = sentence.split(/(\{\w+\})/).filter(part => part !== '');
    taken.set(sentence, parts.map(text => ({text, place: /^\{(\w+)\}$/.exec(text)?.[1] ?? ''})));
  }
  return taken.get(sentence);
}

/**
 * The same in parts, so that a place can hold a template: a link, or something to stand out.
 *
 * @returns {Array} texts and values in their order
 */
export function sayParts(key, values = {}) {
  const parts = partsOf(chosen(key, values)).map(({text, place}) => (place ? shown(values[place] ?? '') : text));
  return parts.map((part, at) => (endsWithStop(parts[at - 1]) && /^\.(?!\.)/.test(part) ? part.slice(1) : part));
}

// "6:30 p.m." ends a sentence by itself.
const endsWithStop = part => typeof part === 'string' && part.endsWith('.');

/** Whether there is such a word. */
export function hasWord(key) {
  return key.split('.').reduce((at, name) => at?.[name], all) !== undefined;
}

/** "a, b and c" in the reader's language. */
export function sayList(items) {
  return conjunction.format(items);
}

/** What may be missing, shown as a name: the name of a thing of the book, or its id. */
export function nameOf(list, id) {
  return list?.find(item => item.id === id)?.name ?? id;
}
