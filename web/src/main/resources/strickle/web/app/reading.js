/** Reads a studio by the ETags of its parts: what is as it was is not sent again. */

import {get} from './service.js';
import {Problem} from './problem.js';

const NONE = [404, 409];

/** What has been read of each part, by its tag. */
export class Reading {

  #tags = {};

  /** The tag of the book as it was read last; empty when it is not known. */
  get bookTag() {
    return this.#tags.book ?? '';
  }

  /** Reads the book anew the next time. */
  forgetBook() {
    this.#tags.book = '';
  }

  /** Reads everything anew the next time. */
  forget() {
    this.#tags = {};
  }

  /**
   * All there is of the studio; of the book, the plan in use and what has happened to it only what has
   * changed: undefined when it is as before, null when there is none.
   *
   * @param {boolean} hasPlan whether there was a plan in use
   * @returns {Promise<Array>} the book, the page of plans, and the plan in use with its progress
   */
  all(hasPlan) {
    return this.bookTag ? this.#again(hasPlan) : this.#first();
  }

  #first() {
    const plans = listed();
    return Promise.all([this.#changed('book', '/api/book'), plans, this.#beside(plans)]);
  }

  // The list after the book, so that it is no older: it says whether there is a plan to ask for.
  async #again(hasPlan) {
    const book = await this.#changed('book', '/api/book');
    const plans = await listed();
    // All of a studio is under one revision: a book that is as it was says that of the rest, too.
    const isAsItWas = book === undefined && plans.anyInUse === hasPlan;
    return [book, plans, isAsItWas ? [] : await this.#beside(plans)];
  }

  #beside(plans) {
    const plan = async () => ((await plans).anyInUse ? this.#changed('plan', '/api/plan-in-use') : this.#none('plan'));
    return Promise.all([plan(), this.#changed('progress', '/api/progress?limit=1000')]);
  }

  async #changed(name, path) {
    try {
      const {status, body, tag} = await get(path, {known: this.#tags[name]});
      this.#tags[name] = tag;
      return status === 304 ? undefined : body;
    } catch (failed) {
      if (failed instanceof Problem && NONE.includes(failed.status)) {
        return this.#none(name);
      }
      throw failed;
    }
  }

  #none(name) {
    const before = this.#tags[name];
    this.#tags[name] = '';
    return before === '' ? undefined : null;
  }
}

function listed() {
  return get('/api/plans?limit=50').then(answer => answer.body);
}
