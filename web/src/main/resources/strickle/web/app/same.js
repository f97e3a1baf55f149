/** Whether two values of JSON are the same, whatever the order of their fields, and what differs. */

/** @returns {boolean} */
export function same(one, other) {
  if (one === other) {
    return true;
  }
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null
    || Array.isArray(one) !== Array.isArray(other)) {
    return false;
  }
  const names = fieldsOf(one, other);
  return names.every(name => same(one[name], other[name]));
}

function fieldsOf(...values) {
  return [...new Set(values.flatMap(value => Object.keys(value ?? {})))];
}

/** The fields in which two things differ. */
export function differing(one, other) {
  return fieldsOf(one, other).filter(name => !same(one?.[name], other?.[name]));
}

/**
 * Puts two changes of one thing together, field by field.
 *
 * @param {object} base what it was
 * @param {object} theirs
 * @param {object} mine
 * @returns {{merged: object, clashes: string[]}} where both changed a field differently, mine is taken
 *   and the field is among the clashes
 */
export function merge(base, theirs, mine) {
  const merged = {...theirs};
  const clashes = [];
  for (const name of differing(base, mine)) {
    if (!same(base?.[name], theirs?.[name]) && !same(theirs?.[name], mine?.[name])) {
      clashes.push(name);
    }
    if (mine[name] === undefined) {
      delete merged[name];
    } else {
      merged[name] = structuredClone(mine[name]);
    }
  }
  return {merged, clashes};
}
