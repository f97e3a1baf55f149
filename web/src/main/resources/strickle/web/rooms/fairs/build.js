/** Puts what is to be brought to a fair among the orders, in place of what was to be brought so far. */

import {get, put} from '../../app/service.js';
import {studio} from '../../app/studio.js';

/** The kind of a fair's own orders; with the fair's name as "for" they are known again. */
const KIND = 'fair';
const LONGEST_ID = 64;

/** The orders of the book that are a fair's own. */
export function ownOrders(fair, orders) {
  return orders.filter(order => order.kind === KIND && order.for === fair.name);
}

/**
 * One change of the book, so that one step back undoes it.
 *
 * @param {object} fair of the book
 * @param {{piece: string, bring: number, price: number}[]} pieces
 */
export async function bring(fair, pieces) {
  const {body: book, tag} = await get('/api/book');
  const own = ownOrders(fair, book.orders);
  const others = book.orders.filter(order => !own.includes(order));
  const taken = new Set(others.map(({id}) => id));
  const added = pieces.filter(one => one.bring > 0).map(one => order(fair, one, taken));
  await put('/api/book', {...book, orders: [...others, ...added]}, tag);
  await studio.refresh();
  return added.length;
}

function order(fair, {piece, bring: quantity, price}, taken) {
  const id = freeId(`${fair.id}-${piece}`, fair.id, taken);
  taken.add(id);
  return {id, for: fair.name, kind: KIND, due: fair.opens, weight: 1, lines: [{piece, quantity, price}]};
}

function freeId(wanted, short, taken) {
  const stem = (wanted.length > LONGEST_ID ? short : wanted).slice(0, LONGEST_ID - 4);
  let id = stem;
  for (let number = 2; taken.has(id); number++) {
    id = `${stem}-${number}`;
  }
  return id;
}
