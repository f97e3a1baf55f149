/** A plan being laid out: asked for, watched while it gets better, stopped, accepted or left. */

import {ask, get, listen} from './service.js';
import {connection} from './connection.js';
import {randomKey} from './keys.js';
import {Unreachable} from './problem.js';
import {studio} from './studio.js';

const UNDER_WAY = ['waiting', 'running'];

/** Events "change" whenever something of it has changed, and "done" once it is over. */
class Laying extends EventTarget {

  /**
   * The plan that is being laid out, or is over and neither accepted nor left: {id, kind, state,
   * progress?, totals?, thawed?, why?} as the service tells it; null for none.
   */
  plan = null;
  /** Why it could not be asked for; null when it could. */
  problem = null;

  #close = null;

  constructor() {
    super();
    // When the made-up studio is left or come back to, what was laid out of the other is nobody's here.
    studio.addEventListener('change', () => this.plan && studio.phase === 'open' && !studio.owns(this.plan) && this.leave());
  }

  /** Whether it still gets better. */
  get isUnderWay() {
    return this.plan !== null && UNDER_WAY.includes(this.plan.state);
  }

  /** Whether it waits to be accepted or left. */
  get isReady() {
    return this.plan?.totals !== undefined && !this.isUnderWay && this.plan.state !== 'failed';
  }

  /**
   * Asks for a plan of the whole book.
   *
   * @param {object} wanted as the service takes it: {from?, seconds?, schedules?, seed?, cover?, …}
   * @throws {Problem} when the book can never be met, with every fault
   */
  layOut(wanted = {}) {
    return this.#ask('/api/plans', wanted);
  }

  /** Asks for the plan in use to be laid out anew: {now?, frozenHours?, frozenUntil?, seconds?, …}. */
  replan(wanted = {}) {
    return this.#ask('/api/replan', wanted);
  }

  /** Lays out again what is there: anew when there is a plan in use, else from the beginning. */
  again(wanted = {}) {
    return studio.plan ? this.replan(wanted) : this.layOut(wanted);
  }

  async #ask(path, wanted) {
    this.leave();
    const key = randomKey();
    for (;;) {
      try {
        const {body} = await ask('POST', path, {body: wanted, key});
        this.#watch(body);
        return;
      } catch (failed) {
        if (!(failed instanceof Unreachable)) {
          this.problem = failed;
          this.#told();
          throw failed;
        }
        await connection.back();
      }
    }
  }

  #watch(plan) {
    this.problem = null;
    this.plan = plan;
    this.#told();
    this.#close = listen(`/api/plans/${plan.id}/events`, {
      progress: told => this.#now(told),
      done: told => {
        this.#now(told);
        this.dispatchEvent(new Event('done'));
      },
    });
  }

  #now(told) {
    this.plan = told;
    this.#told();
  }

  /**
   * Takes up a plan that was asked for elsewhere, whether it is under way or over.
   *
   * @param {string} id
   * @returns {Promise<boolean>} false when it is not of this studio's book, and so is not taken up
   * @throws {Problem} when there is none
   */
  async follow(id) {
    const {body} = await get(`/api/plans/${id}`);
    if (!studio.owns(body)) return false;
    this.leave();
    this.#watch(body);
    return true;
  }

  /** Takes up again what was under way before the page was loaded. */
  resume() {
    const running = studio.plans.find(plan => UNDER_WAY.includes(plan.state));
    if (!this.plan && running) {
      this.#watch(running);
    }
  }

  /** Good enough: it ends soon and keeps its best. */
  async stop() {
    await ask('POST', `/api/plans/${this.plan.id}/stop`);
  }

  /** Works by it from now on; can be undone. */
  async accept() {
    await studio.act(`/api/plans/${this.plan.id}/accept`);
    this.leave();
  }

  /** Leaves it: the plan in use stays what it is. */
  leave() {
    this.#close?.();
    this.#close = null;
    this.plan = null;
    this.problem = null;
    this.#told();
  }

  #told() {
    this.dispatchEvent(new Event('change'));
  }
}

export const laying = new Laying();
