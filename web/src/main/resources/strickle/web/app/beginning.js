/** How a studio begins: empty in place of the made-up one, and with a first book of three answers. */

import {get, put} from './service.js';
import {studio} from './studio.js';
import {hereCurrency, hereZone} from './lists.js';
import {idFor} from './keys.js';

/**
 * What a first book takes for granted. Common practice, no source; each is a number on the Shelf.
 */
export const USUAL = {
  prepMinutes: 5, pourMinutes: 5, demouldMinutes: 5, mixMinutes: 10, washMinutes: 8,
  goodPercent: 95, wetDensityKgPerM3: 2100, airPercent: 2, lifeCastings: 60,
};

const LISTS = ['people', 'stations', 'forms', 'moulds', 'materials', 'mixes', 'pieces', 'orders', 'channels', 'fairs', 'pins'];

/** Puts an empty studio of a name in place of what is there; one change, which can be undone. */
export async function beginEmpty(name) {
  const book = {
    studio: {name, currency: hereCurrency(), timeZone: hereZone(), wagePerHour: 0, overheadPerMonth: 0, productiveHoursPerMonth: 1, batchLimitGrams: 10000},
    ...Object.fromEntries(LISTS.map(list => [list, []])),
  };
  const {tag} = await get('/api/export');
  await put('/api/export', {format: 'strickle-studio/1', book, beside: {}}, tag);
  await studio.load();
}

/**
 * A book with one more mould, mix, piece and person.
 *
 * @param {object} book
 * @param {{piece: string, volumeMl: number, cavities: number, count: number, setHours: number, price: ?number,
 *   mix: string, binder: string, waterPercent: number, packGrams: number, packPrice: number, workingMinutes: number,
 *   person: string, days: string[], from: string, to: string}} answers
 */
export function withFirst(book, answers) {
  const id = (list, name) => idFor(name, book[list].map(item => item.id));
  const ids = {
    form: id('forms', answers.piece), mould: id('moulds', answers.piece), material: id('materials', answers.binder),
    mix: id('mixes', answers.mix), piece: id('pieces', answers.piece), person: id('people', answers.person),
  };
  const hours = Object.fromEntries(answers.days.map(day => [day, [`${answers.from}-${answers.to}`]]));
  return {
    ...book,
    people: [...book.people, {id: ids.person, name: answers.person, hours}],
    forms: [...book.forms, {id: ids.form, name: answers.piece, count: answers.count, costEach: 0, lifeCastings: USUAL.lifeCastings}],
    moulds: [...book.moulds, mould(ids, answers)],
    materials: [...book.materials, material(ids, answers)],
    mixes: [...book.mixes, mix(ids, answers)],
    pieces: [...book.pieces, {id: ids.piece, name: answers.piece, mould: ids.mould, mix: ids.mix, goodPercent: USUAL.goodPercent,
      ...(answers.price ? {price: answers.price} : {})}],
    channels: book.channels.length > 0 ? book.channels
      : [{id: 'own-table', name: 'own table', percentFee: 0, fixedFee: 0, discountPercent: 0}],
  };
}

function mould(ids, {piece, volumeMl, cavities, setHours}) {
  return {id: ids.mould, name: piece, forms: [{form: ids.form, count: 1}], cavities, volumeMl, setHours,
    prepMinutes: USUAL.prepMinutes, pourMinutes: USUAL.pourMinutes, demouldMinutes: USUAL.demouldMinutes};
}

function material(ids, {binder, packGrams, packPrice}) {
  return {id: ids.material, name: binder, kind: 'binder', unit: 'g', pack: {quantity: packGrams, price: packPrice}};
}

function mix(ids, {mix: name, waterPercent, workingMinutes}) {
  return {id: ids.mix, name, dry: [{material: ids.material, parts: 100}], water: {percent: waterPercent, of: 'dry'},
    airPercent: USUAL.airPercent, wetDensityKgPerM3: USUAL.wetDensityKgPerM3,
    mixMinutes: USUAL.mixMinutes, workingMinutes, washMinutes: USUAL.washMinutes};
}

/** Puts the first book in place of the empty one. */
export function makeFirst(answers) {
  return studio.changeBook(book => withFirst(book, answers));
}
