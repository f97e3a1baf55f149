/** Colours by contrast, as WCAG 2.2 reckons it (relative luminance and contrast ratio, its definitions). */

/** The least contrast of a line or an area against what is around it (WCAG 2.2, 1.4.11). */
const LEAST_OF_SHAPES = 3;
const STEPS = 20;

/** The channels of #rrggbb, each 0 to 255. */
function channels(hex) {
  return [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16));
}

function linear(channel) {
  const part = channel / 255;
  return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
}

/**
 * The relative luminance of a colour.
 * @param {string} hex #rrggbb
 * @returns {number} 0 (black) to 1 (white)
 */
export function luminance(hex) {
  const [red, green, blue] = channels(hex).map(linear);
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/**
 * The contrast ratio of two colours.
 * @param {string} one #rrggbb
 * @param {string} other #rrggbb
 * @returns {number} 1 to 21
 */
export function contrast(one, other) {
  const [low, high] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (high + 0.05) / (low + 0.05);
}

/**
 * Black or white, whichever reads better on a colour; it is at least 4.5 to 1 on any.
 * @param {string} hex #rrggbb
 * @returns {'#000000'|'#ffffff'}
 */
export function labelOn(hex) {
  return contrast(hex, '#000000') >= contrast(hex, '#ffffff') ? '#000000' : '#ffffff';
}

/**
 * A colour made darker or lighter until it can be told from its ground.
 * @param {string} hex #rrggbb
 * @param {string} ground #rrggbb
 * @returns {string} #rrggbb, at least 3 to 1 against the ground
 */
export function inkOn(hex, ground) {
  const towards = channels(labelOn(ground));
  const start = channels(hex);
  for (let step = 0; step <= STEPS; step++) {
    const mixed = start.map((channel, at) => Math.round(channel + ((towards[at] - channel) * step) / STEPS));
    const ink = `#${mixed.map((channel) => channel.toString(16).padStart(2, '0')).join('')}`;
    if (contrast(ink, ground) >= LEAST_OF_SHAPES) return ink;
 }
  return labelOn(ground);
}

/** The colour of a mix that has no swatch. */
export const PLAIN = '#8f8a80';

/** The swatch of a mix as #rrggbb, in whatever case and length the book writes it. */
export function swatchOf(mix) {
  const text = (mix?.swatch ?? '').trim().toLowerCase();
  if (/^#[0-9a-f]{6}$/.test(text)) return text;
  if (/^#[0-9a-f]{3}$/.test(text)) return `#${[...text.slice(1)].map((digit) => digit + digit).join('')}`;
  return PLAIN;
}
