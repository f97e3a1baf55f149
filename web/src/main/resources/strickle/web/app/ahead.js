/**
 * What the book has that the plan in use does not know, as far as the two say it themselves. What hangs
 * on their agreeing the service refuses then, so the page need not ask.
 */

import {studio} from './studio.js';
import {Problem} from './problem.js';
import {toLocal} from './times.js';

const minute = local => local.slice(0, 16);

function isKept(pin, lots, pours) {
  return lots.some(({id, runs}) => {
    const pour = pours.get(id);
    return pour?.person === pin.person && toLocal(pour.spells[0].start) === minute(pin.start)
      && runs.some(({piece, castings}) => piece === pin.piece && castings === pin.castings);
  });
}

// Once a plan is under way, a pin of a moment gone by says nothing any more.
function isOver(pin, {history}) {
  return history !== undefined && minute(pin.start) < toLocal(history.now);
}

/** How many orders of the book are newer than the plan in use. */
export function newerOrders() {
  const planned = new Set(studio.plan.orders.map(({order}) => order));
  return studio.book.orders.filter(({id}) => !planned.has(id)).length;
}

/** Whether the book is ahead of the plan in use: orders that came or went, or pins it does not keep. */
export function isAhead() {
  const {book, plan} = studio;
  const known = new Set(book.orders.map(({id}) => id));
  const pours = new Map(plan.tasks.filter(({kind}) => kind === 'pour').map(task => [task.lot, task]));
  return newerOrders() > 0
    || plan.orders.some(({order}) => !known.has(order))
    || (book.pins ?? []).some(pin => !isOver(pin, plan) && !isKept(pin, plan.lots, pours));
}

/**
 * Refuses in the service's place what would be refused there.
 *
 * @throws {Problem} one that {@link Problem#isOfOlderPlan}
 */
export function mustNotBeAhead() {
  if (isAhead()) {
    throw new Problem(409, {title: 'The book has changed'});
  }
}
