/** Asks the service again whenever the question has changed, and keeps the last answer meanwhile. */

import {question} from '../../app/service.js';
import {studio} from '../../app/studio.js';

const WAIT = 250;

/** One question of a component that changes as the reader moves things. */
export class Asking {

  answer = null;
  trouble = null;
  busy = false;

  #host;
  #path;
  #asked = '';
  #book = null;
  #timer = 0;
  #abort = null;

  constructor(host, path) {
    this.#host = host;
    this.#path = path;
    host.addController(this);
  }

  hostDisconnected() {
    clearTimeout(this.#timer);
    this.#abort?.abort();
    this.#asked = '';
  }

  /** Asks this, a moment after the last change. */
  want(body) {
    const asked = JSON.stringify(body);
    if (asked === this.#asked && this.#book === studio.book) {
      return;
    }
    [this.#asked, this.#book] = [asked, studio.book];
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => this.#ask(body), this.answer ? WAIT : 0);
  }

  async #ask(body) {
    this.#abort?.abort();
    const abort = new AbortController();
    this.#abort = abort;
    this.busy = true;
    try {
      this.answer = await question(this.#path, body, {signal: abort.signal});
      this.trouble = null;
    } catch (failed) {
      if (failed.name !== 'AbortError') {
        this.trouble = failed;
      }
    } finally {
      this.busy = this.#abort !== abort;
      this.#host.requestUpdate();
    }
  }

  /** Asks the same once more. */
  again() {
    this.#asked = '';
    this.trouble = null;
    this.#host.requestUpdate();
  }
}
