/**
 * Amounts in the reader's units. Everything is kept in grams, millilitres, millimetres and degrees
 * Celsius; here it is only written and read. The factors are exact: the international pound and inch
 * of 1959, the mile of 63360 of them and the US gallon of 231 cubic inches (NIST Handbook 44, Appendix C).
 */

import {settings} from './settings.js';
import {showNumber} from './numbers.js';

const OUNCE = 28.349523125;
const FLUID_OUNCE = 29.5735295625;
const FOOT = 304.8;

/**
 * The units of each kind of measure by system: "many" of the base make one, "most" digits after the
 * point are read, and the unit is for amounts from "from" of the base on.
 */
const UNITS = {
  mass: {
    metric: [{name: 'g', many: 1, most: 1, from: 0}, {name: 'kg', many: 1000, most: 2, from: 10000}],
    us: [{name: 'oz', many: OUNCE, most: 2, from: 0}, {name: 'lb', many: 453.59237, most: 2, from: 2267.96185}],
  },
  volume: {
    metric: [{name: 'ml', many: 1, most: 0, from: 0}, {name: 'l', many: 1000, most: 2, from: 10000}],
    us: [{name: 'fl oz', many: FLUID_OUNCE, most: 1, from: 0}, {name: 'gal', many: 3785.411784, most: 2, from: 3785.411784}],
  },
  length: {
    metric: [{name: 'mm', many: 1, most: 0, from: 0}],
    us: [{name: 'in', many: 25.4, most: 2, from: 0}],
  },
  area: {
    metric: [{name: 'm²', many: 1, most: 3, from: 0}],
    us: [{name: 'ft²', many: FOOT * FOOT / 1e6, most: 2, from: 0}],
  },
  density: {
    metric: [{name: 'kg/m³', many: 1, most: 0, from: 0}],
    us: [{name: 'lb/ft³', many: 453.59237e-3 / (FOOT / 1000) ** 3, most: 1, from: 0}],
  },
  loss: {
    metric: [{name: 'kg/m²/h', many: 1, most: 2, from: 0}],
    us: [{name: 'lb/ft²/h', many: 453.59237e-3 / (FOOT / 1000) ** 2, most: 3, from: 0}],
  },
  temperature: {
    metric: [{name: '°C', many: 1, zero: 0, most: 1, from: -Infinity}],
    us: [{name: '°F', many: 5 / 9, zero: -160 / 9, most: 1, from: -Infinity}],
  },
  // Of a difference the zero of the scale does not count.
  degrees: {
    metric: [{name: '°C', many: 1, most: 1, from: 0}],
    us: [{name: '°F', many: 5 / 9, most: 1, from: 0}],
  },
  speed: {
    metric: [{name: 'km/h', many: 1, most: 0, from: 0}],
    us: [{name: 'mph', many: 1.609344, most: 1, from: 0}],
  },
};

/** The kinds of measure of what a material can be counted in. */
export const MATERIAL_KINDS = {g: 'mass', ml: 'volume'};

/** The names of the kinds of measure. */
export const KINDS = Object.keys(UNITS);

/**
 * The unit to write an amount in.
 *
 * @param {string} kind one of {@link KINDS}
 * @param {number} [size] the amount in base units; without it the smallest unit
 * @param {string} [system] "metric" or "us"; the reader's own without it
 */
export function unitFor(kind, size = 0, system = settings.units) {
  const units = UNITS[kind][system];
  return units.findLast(unit => Math.abs(size) >= unit.from) ?? units[0];
}

/** An amount in base units, in that unit. */
export function toUnit(value, unit) {
  return (value - (unit.zero ?? 0)) / unit.many;
}

/** An amount in a unit, in base units. */
export function fromUnit(value, unit) {
  return value * unit.many + (unit.zero ?? 0);
}

/**
 * An amount for reading, with its unit; a space that does not break between them.
 *
 * @param {string} kind
 * @param {number} value in base units
 * @param {{most?: number, unit?: object}} [how] digits after the point at most, or another unit
 */
export function showAmount(kind, value, how = {}) {
  if (!Number.isFinite(value)) {
    return '–';
  }
  const unit = how.unit ?? unitFor(kind, value);
  return `${showNumber(toUnit(value, unit), how.most ?? unit.most)}\u00a0${unit.name}`;
}

export const showMass = (grams, how) => showAmount('mass', grams, how);
export const showVolume = (millilitres, how) => showAmount('volume', millilitres, how);
export const showLength = (millimetres, how) => showAmount('length', millimetres, how);
export const showTemperature = (celsius, how) => showAmount('temperature', celsius, how);

/** What is put on a scale: always in the smallest unit, so that it is read as the scale shows it. */
export const showWeighed = grams => showAmount('mass', grams, {unit: unitFor('mass'), most: 3});

/** What a material is counted in ("g", "ml", "piece" …), as an amount in the reader's units. */
export function showMaterial(quantity, unit) {
  const kind = MATERIAL_KINDS[unit];
  return kind ? showAmount(kind, quantity) : `${showNumber(quantity)}\u00a0${unit}`;
}
