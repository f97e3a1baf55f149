/** Whether the service answers. While it does not, it is looked for again and again. */

const FIRST_PAUSE = 500;
const LONGEST_PAUSE = 8000;

/** Events "lost" and "back". */
class Connection extends EventTarget {

  #waiting = null;

  /** Whether the service answered when it was last asked. */
  get isUp() {
    return this.#waiting === null;
  }

  /**
   * Waits until the service answers again; many may wait at once.
   *
   * @returns {Promise<void>}
   */
  back() {
    if (!this.#waiting) {
      this.#waiting = this.#look();
      this.dispatchEvent(new Event('lost'));
    }
    return this.#waiting;
  }

  async #look() {
    let pause = FIRST_PAUSE;
    do {
      await Promise.race([
        new Promise(done => setTimeout(done, pause)),
        new Promise(done => window.addEventListener('online', done, {once: true})),
      ]);
      pause = Math.min(pause * 1.6, LONGEST_PAUSE);
    } while (!await this.#answers());
    this.#waiting = null;
    this.dispatchEvent(new Event('back'));
  }

  async #answers() {
    try {
      return (await fetch('/health', {cache: 'no-store', signal: AbortSignal.timeout(4000)})).ok;
    } catch {
      return false;
    }
  }
}

export const connection = new Connection();
