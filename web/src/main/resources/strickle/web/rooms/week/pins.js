/** Pinning pours in the book: a change of the whole list, so that a lot's pins come and go together. */

import {studio} from '../../app/studio.js';

const same = (a, b) => a.piece === b.piece && a.castings === b.castings && a.person === b.person && a.start.slice(0, 16) === b.start.slice(0, 16);

/** A list without some pins; of equal ones only as many go as are named. */
function without(pins, gone) {
  const left = [...gone];
  return pins.filter(pin => {
    const at = left.findIndex(each => same(each, pin));
    if (at >= 0) left.splice(at, 1);
    return at < 0;
  });
}

/**
 * Takes pins out of the book and puts others in, in one change that can be undone.
 * @param {object[]} gone as they stand in the book
 * @param {object[]} come
 * @throws {Problem} when the book refuses them
 */
export const changePins = (gone, come) => studio.changeBook(book => ({...book, pins: [...without(book.pins ?? [], gone), ...come]}));
