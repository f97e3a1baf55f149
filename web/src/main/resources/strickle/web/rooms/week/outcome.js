/** What a plan that was laid out comes to: the plan itself, and what would be different with it. */

import {get} from '../../app/service.js';
import {laying} from '../../app/laying.js';
import {studio} from '../../app/studio.js';
import {toLocal} from '../../app/times.js';
import {say} from '../../app/words.js';

const SECONDS = 10;

/** Whether the plan in use has begun, so that what has happened must stay. */
export function isUnderWay(plan, progress) {
  return plan !== null && (plan.history !== undefined || progress.length > 0 || Date.parse(plan.from) < Date.now());
}

/**
 * Asks for the week to be laid out: anew where the plan in use is under way, else from its beginning,
 * and the first one from now.
 * @param {{waiting: boolean}} how waiting: nothing begins before its material can be there
 */
export async function layOut({waiting}) {
  const {plan, progress} = studio;
  if (isUnderWay(plan, progress)) return laying.replan({seconds: SECONDS});
  const from = plan ? {from: toLocal(plan.from)} : beginning();
  const ordering = waiting ? {orderingFrom: toLocal(new Date())} : {};
  return laying.layOut({seconds: SECONDS, ...from, ...ordering});
}

/** Hours that have passed are nobody's any more; a book of a time to come begins where the service says. */
function beginning() {
  const now = toLocal(new Date());
  const [first] = studio.book.studio.climate ?? [];
  return first && first.from > now ? {} : {from: now};
}

/** A plan of pieces that the book does not have, as after another studio's file was put in its place. */
function mustBeOfThisBook({book, lots}) {
  if (lots.some(({runs}) => runs.some(({piece}) => !studio.find('pieces', piece)))) {
    throw new Error(say('week.laying.ofAnother', {book}));
  }
}

/** Follows what is being laid out. Events "change". */
export class Outcome extends EventTarget {

  /** The plan it speaks of. */
  id = '';
  /** Totals of the first way found, to see how far it came. */
  first = null;
  /** The plan, once it is there. */
  plan = null;
  /** What moves, as the service compares it with the plan in use. */
  comparison = null;
  problem = null;

  /** Looks at what is being laid out now. */
  look() {
    const {plan} = laying;
    if (plan?.id !== this.id) Object.assign(this, {id: plan?.id ?? '', first: null, plan: null, comparison: null, problem: null, asked: false});
    this.first ??= plan?.progress ?? null;
    if (laying.isReady && !this.asked) this.#read(plan.id);
    this.dispatchEvent(new Event('change'));
  }

  async #read(id) {
    this.asked = true;
    try {
      const result = (await get(`/api/plans/${id}/result`)).body;
      mustBeOfThisBook(result);
      const comparison = studio.plan ? (await get(`/api/plans/in-use/compare/${id}`)).body : null;
      if (id === this.id) Object.assign(this, {plan: result, comparison});
    } catch (failed) {
      if (id === this.id) this.problem = failed;
    }
    this.dispatchEvent(new Event('change'));
  }
}
