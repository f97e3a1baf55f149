/**
 * Draws a long list piece by piece: at once what fills a window, then more after each frame, so that nobody
 * waits for what they do not see yet. While something is missing the host says so (aria-busy); on paper
 * everything is there.
 *
 * `#pieces = new Piecewise(this, {first: 6, step: 12})`, and in render
 * `list.slice(0, this.#pieces.drawn(day, list.length))`: it begins anew with another key.
 */
export class Piecewise {

  #host;
  #first;
  #step;
  #key;
  #count = 0;
  #all = 0;
  #frame = 0;

  /**
   * @param {LitElement} host
   * @param {{first: number, step: number}} how many at once, and how many more after each frame
   */
  constructor(host, {first, step}) {
    this.#host = host;
    this.#first = first;
    this.#step = step;
    host.addController(this);
  }

  /** Whether all there is has been drawn. */
  get isWhole() {
    return this.#count >= this.#all;
  }

  /**
   * How many are to be drawn now.
   *
   * @param {any} key what the list is of
   * @param {number} all how many there are
   */
  drawn(key, all) {
    if (key !== this.#key) {
      this.#key = key;
      this.#count = this.#first;
    }
    this.#all = all;
    return this.#count;
  }

  hostConnected() {
    addEventListener('beforeprint', this.#whole);
  }

  hostDisconnected() {
    removeEventListener('beforeprint', this.#whole);
    cancelAnimationFrame(this.#frame);
    this.#frame = 0;
  }

  hostUpdated() {
    if (this.isWhole) {
      this.#count = Infinity; // what is added later comes at once
    } else if (this.#frame === 0) {
      // The frame that is waited for shows what there is; what comes is made behind it.
      this.#frame = requestAnimationFrame(() => setTimeout(() => this.#more()));
    }
  }

  #more() {
    this.#frame = 0;
    this.#count += this.#step;
    this.#host.requestUpdate();
  }

  #whole = () => {
    this.#count = Infinity;
    this.#host.requestUpdate();
  };
}
