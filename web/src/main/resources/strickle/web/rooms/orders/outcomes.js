/** What the plan in use says of each order. */

import {studio} from '../../app/studio.js';
import {moment} from '../../app/times.js';

/**
 * An order with what becomes of it; `outcome` is null when the plan does not know the order.
 *
 * @typedef {{order: object, outcome: object|null, late: number, spare: number|null}} Fate
 */

/** Every order of the book, late ones first, then by due. */
export function fates() {
  const outcomes = new Map((studio.plan?.orders ?? []).map(outcome => [outcome.order, outcome]));
  return studio.book.orders.map(order => fate(order, outcomes.get(order.id) ?? null))
    .sort((one, other) => other.late - one.late || moment(one.order.due) - moment(other.order.due));
}

// The due of the book counts, which may have been changed since the plan was made.
function fate(order, outcome) {
  const spare = outcome ? (moment(order.due) - moment(outcome.ready)) / 60_000 : null;
  return {order, outcome, late: outcome ? Math.max(0, -spare) : 0, spare};
}

/** What an order is worth when all of it is bought. */
export function worth(order) {
  return order.lines.reduce((sum, line) => sum + line.quantity * (line.price ?? studio.find('pieces', line.piece)?.price ?? 0), 0);
}

/** An id for a new order that is not taken: O-1, O-2 … after the largest number there is. */
export function freshId() {
  const numbers = studio.book.orders.map(({id}) => Number(/(\d+)$/.exec(id)?.[1] ?? 0));
  const stem = /^(.*?)\d+$/.exec(studio.book.orders.at(-1)?.id ?? '')?.[1] || 'O-';
  let number = Math.max(0, ...numbers) + 1;
  while (studio.find('orders', `${stem}${number}`)) {
    number += 1;
  }
  return `${stem}${number}`;
}
