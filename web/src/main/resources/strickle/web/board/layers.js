/**
 * How a bar is drawn: as layers of one element's background, so that a bar is one node however much it
 * tells. Colours come as custom properties, which paper replaces by black and white:
 * --fill the mix's colour, --label what reads on it, --ink the mix's colour where it can be told from the
 * ground, --slate hands.
 */

const solid = colour => `linear-gradient(${colour}, ${colour})`;
const DOTS = 'repeating-linear-gradient(90deg, var(--ink) 0 3px, transparent 3px 7px)';
const STRIP = 10;
const HANDS = 4;

/** @typedef {{image: string, x: number, y: number, width: number, height: number}} Layer */

/** The parts of a run on its way, in the strip below its words. */
const ON_THE_WAY = {
  form: (x, width, bottom) => [{image: solid('var(--fill)'), x, width, y: bottom - STRIP, height: STRIP}],
  cure: (x, width, bottom) => [bottom - 9, bottom - 4].map(y => ({image: DOTS, x, width, y, height: 3})),
  dry: (x, width, bottom) => [bottom - 8, bottom - 4].map(y => ({image: solid('var(--ink)'), x, width, y, height: 2})),
  rest: (x, width, bottom) => [{image: solid('var(--ink)'), x, width, y: bottom - 6, height: 1}],
  attended: (x, width, bottom) => [{image: solid('var(--slate)'), x, width: Math.max(2, width), y: bottom - STRIP, height: STRIP}],
};

/** In the form the bar is solid; hands at work stand along its foot, a post where the set is over. */
const IN_THE_FORM = {
  form: () => [],
  attended: (x, width, bottom) => [{image: solid('var(--label)'), x, width: Math.max(2, width), y: bottom - HANDS, height: HANDS}],
};

function partLayers(bar, place, bottom) {
  const looks = bar.kind === 'form' ? IN_THE_FORM : ON_THE_WAY;
  // What comes first lies on top: hands over waits.
  const parts = [...bar.parts].sort((a, b) => (b.look === 'attended') - (a.look === 'attended'));
  return parts.flatMap(part => looks[part.look]?.(place(part.from), place(part.to) - place(part.from), bottom) ?? []);
}

function setPost(bar, place, bottom) {
  const set = bar.kind === 'form' && bar.run.waits.find(wait => wait.kind === 'set');
  return set && set.to < bar.to ? [{image: solid('var(--label)'), x: place(set.to) - 1, width: 2, y: 0, height: bottom}] : [];
}

/** Members of a group keep their own places and colours, told apart by gaps. */
function groupLayers(group, place, bottom, fillOf) {
  return group.bars.map(bar => {
    const x = place(bar.from);
    return {image: solid(fillOf(bar)), x, width: Math.max(2, place(bar.to) - x - 1), y: 3, height: bottom - 6};
  });
}

/**
 * The layers of a bar.
 * @param {object} bar
 * @param {{xOf: (minute: number) => number}} axis
 * @param {number} left where the bar begins, in pixels of the axis
 * @param {number} height of the bar, in pixels
 * @param {(bar: object) => string} fillOf the colour of a member of a group
 * @returns {Layer[]} the first on top
 */
export function layersOf(bar, axis, left, height, fillOf) {
  const place = minute => axis.xOf(minute) - left;
  if (bar.kind === 'group') return bar.flags ? [] : groupLayers(bar, place, height, fillOf);
  if (bar.kind === 'task' || bar.kind === 'flag' || bar.kind === 'pin') return [];
  return [...setPost(bar, place, height), ...partLayers(bar, place, height)];
}

/** Lengths along the axis on screen. */
export const pixels = length => `${Math.round(length * 10) / 10}px`;

/**
 * Puts layers on an element.
 * @param {HTMLElement} element
 * @param {Layer[]} layers
 * @param {(length: number) => string} [along] how lengths along the axis are written
 */
export function lay(element, layers, along = pixels) {
  const {style} = element;
  style.backgroundImage = layers.map(layer => layer.image).join(', ');
  style.backgroundPosition = layers.map(({x, y}) => `${along(x)} ${y}px`).join(', ');
  style.backgroundSize = layers.map(({width, height}) => `${along(width)} ${height}px`).join(', ');
  style.backgroundRepeat = 'no-repeat';
}

/**
 * Stretches of an axis as one gradient with hard edges.
 * @param {{x: number, width: number, paint: string}[]} stretches in order, none over the next
 * @param {(length: number) => string} [along]
 * @returns {string}
 */
export function gradientOf(stretches, along = pixels) {
  const stops = [];
  let at = 0;
  for (const {x, width, paint} of stretches) {
    if (x > at) stops.push(`transparent ${along(at)} ${along(x)}`);
    stops.push(`${paint} ${along(x)} ${along(x + width)}`);
    at = x + width;
  }
  stops.push(`transparent ${along(at)}`);
  return `linear-gradient(90deg, ${stops.join(', ')})`;
}
