/** The prices of the service, read once for each question and again when the studio has changed. */

import {get} from '../../app/service.js';
import {studio} from '../../app/studio.js';

/** Reads for one component; draws it when there is something new. */
export class Figures {

  standard = null;
  planned = null;
  trouble = null;

  #host;
  #asked = '';
  #book = null;
  #plan = null;

  constructor(host) {
    this.#host = host;
    host.addController(this);
  }

  /**
   * Reads the prices for a margin and an ending, unless they are there.
   *
   * @param {{margin: number, ending: number}} wanted
   */
  want({margin, ending}) {
    const query = `margin=${margin}&ending=${ending}`;
    if (query === this.#asked && this.#book === studio.book && this.#plan === studio.plan) {
      return;
    }
    [this.#asked, this.#book, this.#plan] = [query, studio.book, studio.plan];
    this.#read(query);
  }

  async #read(query) {
    this.trouble = null;
    const [standard, planned] = await Promise.allSettled([
      get(`/api/prices?${query}`),
      studio.plan ? get(`/api/prices?${query}&plan=in-use`) : Promise.resolve(null),
    ]);
    if (query !== this.#asked) {
      return;
    }
    this.standard = standard.value?.body ?? null;
    // A plan that is none of its book any more has no cost as planned; the standard stands.
    this.planned = planned.value?.body ?? null;
    this.trouble = standard.reason ?? null;
    this.#host.requestUpdate();
  }

  /** Reads again. */
  again() {
    this.#asked = '';
    this.#host.requestUpdate();
  }

  /** The cost of a piece, as planned when asked for and known. */
  cost(piece, basis = 'standard') {
    const prices = basis === 'planned' ? this.planned ?? this.standard : this.standard;
    return prices?.pieces.find(one => one.piece === piece);
  }
}
