/**
 * The fields of each thing of the book, as its form asks for them. Names are the book's own; words are
 * found by "shelf.f.NAME". A field is
 *
 * - {name, kind, needed, least, most, hint, usual}: one value; `usual` is what a new thing begins with,
 * - {name, from: 'forms'}: one id of a list of the book, {name, choice: [...]} one of a few words,
 * - {name, each: [fields], fresh}: a list of things of fields; `fresh()` makes one more,
 * - {name, part: [fields], optional}: a thing of its own that is there or not,
 * - {name, own: 'element'}: something with an element of its own, which takes and gives `value`.
 */

const id = {name: 'id', kind: 'text', needed: true, once: true, hint: true};
const name = {name: 'name', kind: 'text', needed: true};
const uses = (list = 'consumes') => ({
  name: list, each: [{name: 'material', from: 'materials', needed: true}, {name: 'quantity', kind: 'number', needed: true, least: 0, unitOf: 'material'}],
  fresh: book => ({material: book.materials[0]?.id, quantity: 1}),
});

export const FIELDS = {
  forms: [name, id,
    {name: 'count', kind: 'whole', needed: true, least: 1, usual: 1},
    {name: 'costEach', kind: 'money', needed: true, least: 0, usual: 0},
    {name: 'lifeCastings', kind: 'whole', needed: true, least: 1, usual: 100, hint: true}],
  moulds: [name, id,
    {name: 'forms', each: [{name: 'form', from: 'forms', needed: true}, {name: 'count', kind: 'whole', needed: true, least: 1}], fresh: book => ({form: book.forms[0]?.id, count: 1})},
    {name: 'cavities', kind: 'whole', needed: true, least: 1, usual: 1, hint: true},
    {name: 'volume', own: 's-shelf-volume', of: ['volumeMl', 'shape', 'mesh']},
    {name: 'wastePercent', kind: 'percent', least: 0, most: 100, hint: true},
    {name: 'prepMinutes', kind: 'minutes', least: 0}, {name: 'pourMinutes', kind: 'minutes', needed: true, least: 1, usual: 5},
    {name: 'demouldMinutes', kind: 'minutes', needed: true, least: 1, usual: 5},
    {name: 'setHours', kind: 'hours', needed: true, least: 0, usual: 24, hint: true}, {name: 'setAtMostHours', kind: 'hours', least: 0, hint: true},
    {name: 'core', optional: true, part: [{name: 'displacedMl', kind: 'volume', needed: true, least: 0}, {name: 'massGrams', kind: 'mass', needed: true, least: 0}, {name: 'safetyFactor', kind: 'number', needed: true, least: 1, usual: 1.5}]},
    uses()],
  materials: [name, id,
    {name: 'kind', kind: 'text', needed: true, list: ['binder', 'aggregate', 'fibre', 'pigment', 'coating', 'release', 'hardware', 'packaging'], usual: 'binder'},
    {name: 'unit', choice: ['g', 'ml', 'each'], needed: true, usual: 'g'},
    {name: 'relativeDensity', kind: 'number', least: 0.05, hint: true}, {name: 'cementPercent', kind: 'percent', least: 0, most: 100, hint: true},
    {name: 'mostPercentOfCement', kind: 'percent', least: 0, most: 100, hint: true},
    {name: 'pack', part: [{name: 'quantity', kind: 'number', needed: true, least: 0, unitOf: 'unit', usual: 1000}, {name: 'price', kind: 'money', needed: true, least: 0, usual: 0}]},
    {name: 'onHand', kind: 'number', least: 0, unitOf: 'unit'}, {name: 'leadDays', kind: 'whole', least: 0, hint: true}],
  mixes: [name, id, {name: 'swatch', kind: 'colour'},
    {name: 'dry', each: [{name: 'material', from: 'materials', needed: true}, {name: 'parts', kind: 'number', needed: true, least: 0}], fresh: book => ({material: book.materials[0]?.id, parts: 100}), atLeast: 1},
    {name: 'pigment', each: [{name: 'material', from: 'materials', needed: true}, {name: 'percent', kind: 'percent', needed: true, least: 0}, {name: 'of', choice: ['dry', 'cement', 'dry+pigment', 'water', 'total'], needed: true}], fresh: book => ({material: (book.materials.find(({kind}) => kind === 'pigment') ?? book.materials[0])?.id, percent: 3, of: 'cement'})},
    {name: 'water', part: [{name: 'percent', kind: 'percent', needed: true, least: 0, usual: 25}, {name: 'of', choice: ['dry', 'dry+pigment', 'cement', 'total'], needed: true, usual: 'dry'}]},
    {name: 'airPercent', kind: 'percent', needed: true, least: 0, most: 50, usual: 2}, {name: 'wetDensityKgPerM3', kind: 'density', least: 100, hint: true},
    {name: 'mixMinutes', kind: 'minutes', needed: true, least: 0, usual: 10}, {name: 'workingMinutes', kind: 'minutes', needed: true, least: 1, usual: 25, hint: true}, {name: 'washMinutes', kind: 'minutes', needed: true, least: 0, usual: 6}],
  pieces: [name, id,
    {name: 'mould', from: 'moulds', needed: true}, {name: 'mix', from: 'mixes', needed: true},
    {name: 'goodPercent', kind: 'percent', least: 1, most: 100, hint: true}, {name: 'onHand', kind: 'whole', least: 0}, {name: 'typicalRun', kind: 'whole', least: 1, hint: true},
    {name: 'route', each: [
      {name: 'step', kind: 'text', needed: true}, {name: 'setupMinutes', kind: 'minutes', least: 0}, {name: 'minutesEach', kind: 'minutes', least: 0},
      {name: 'after', optional: true, part: [{name: 'wait', choice: ['cure', 'dry', 'rest'], needed: true, usual: 'cure'}, {name: 'hours', kind: 'hours', needed: true, least: 0, usual: 24}, {name: 'atMostHours', kind: 'hours', least: 0}]},
      {name: 'by', several: 'people'}, uses(),
      {name: 'restsOn', optional: true, part: [{name: 'station', from: 'stations', needed: true}, {name: 'placesEach', kind: 'whole', needed: true, least: 1, usual: 1}]},
    ], fresh: () => ({step: '', minutesEach: 5}), moves: true},
    {name: 'finalDryHours', kind: 'hours', least: 0}, uses('packing'),
    {name: 'price', kind: 'money', least: 0}, {name: 'leftoverValue', kind: 'money', least: 0, hint: true}],
  people: [name, id, {name: 'hours', own: 's-shelf-hours', of: ['hours']},
    {name: 'exceptions', each: [{name: 'date', kind: 'date', needed: true}, {name: 'hours', kind: 'windows', hint: true}], fresh: () => ({date: null, hours: []})}],
  stations: [name, id, {name: 'places', kind: 'whole', needed: true, least: 1, usual: 12}],
  channels: [name, id, {name: 'percentFee', kind: 'percent', least: 0, most: 99.9}, {name: 'fixedFee', kind: 'money', least: 0}, {name: 'discountPercent', kind: 'percent', least: 0, most: 99.9, hint: true}],
  studio: [name, {name: 'currency', kind: 'text', needed: true}, {name: 'timeZone', kind: 'text', needed: true, list: zones()},
    {name: 'wagePerHour', kind: 'money', needed: true, least: 0}, {name: 'overheadPerMonth', kind: 'money', needed: true, least: 0}, {name: 'productiveHoursPerMonth', kind: 'number', needed: true, least: 0},
    {name: 'batchLimitGrams', kind: 'mass', needed: true, least: 1},
    {name: 'climate', each: [{name: 'from', kind: 'moment', needed: true}, {name: 'temperatureC', kind: 'temperature', needed: true}, {name: 'humidityPercent', kind: 'percent', least: 0, most: 100}], fresh: () => ({from: null, temperatureC: 18, humidityPercent: 55})}],
};

/** The lists of the shelf, in their order. */
export const LISTS = ['pieces', 'moulds', 'forms', 'mixes', 'materials', 'people', 'stations', 'channels'];

function zones() {
  return Intl.supportedValuesOf?.('timeZone') ?? [];
}

/** A new thing of a list, with what is usual. */
export function fresh(collection, book) {
  return filled(FIELDS[collection], book);
}

/** A thing of fields with what is usual in them. */
export function filled(fields, book) {
  const thing = {};
  for (const field of fields) {
    if (field.usual !== undefined) {
      thing[field.name] = field.usual;
    } else if (field.from && field.needed && book[field.from].length > 0) {
      thing[field.name] = book[field.from][0].id;
    } else if (field.each && (field.atLeast || field.name === 'forms')) {
      thing[field.name] = field.fresh && book.materials ? [field.fresh(book)].filter(one => Object.values(one).every(value => value !== undefined)) : [];
    } else if (field.part && !field.optional) {
      thing[field.name] = filled(field.part, book);
    }
  }
  return thing;
}

/** The thing without what was left empty, as the book holds it. */
export function cleaned(thing) {
  if (Array.isArray(thing)) {
    return thing.map(cleaned);
  }
  if (thing === null || typeof thing !== 'object') {
    return thing;
  }
  return Object.fromEntries(Object.entries(thing)
    .filter(([, value]) => value !== null && value !== undefined && value !== '')
    .map(([field, value]) => [field, cleaned(value)]));
}

/** An id made of a name: "tall lantern, basalt" is "tall-lantern-basalt". */
export function idOf(text, taken) {
  const stem = text.normalize('NFKD').replace(/[\u0300-\u036f]/g, '').toLowerCase().replace(/[^a-z0-9]+/g, '-').replace(/^-|-$/g, '').slice(0, 40) || 'thing';
  let found = stem;
  for (let number = 2; taken.includes(found); number++) {
    found = `${stem}-${number}`;
  }
  return found;
}
