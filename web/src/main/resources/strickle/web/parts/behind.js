/**
 * Draws the larger part of a view a frame later: whoever asked for another view sees at once that they were
 * heard (a title, a pressed button), while what there was stays for that one frame.
 *
 * `#behind = new Behind(this)`, and in render `${this.#behind.drawn(view, () => this.content())}`: as long as
 * the view is the same, nothing waits.
 */
export class Behind {

  #host;
  #view;
  #last = null;
  #frame = 0;

  /** @param {LitElement} host */
  constructor(host) {
    this.#host = host;
    host.addController(this);
  }

  /**
   * What is to be drawn now.
   *
   * @param {string} view which of the host's views is asked for
   * @param {function(): any} make its template
   * @returns {any} the view's, or the last one's while the frame is awaited
   */
  drawn(view, make) {
    if (this.#last && view !== this.#view && document.visibilityState === 'visible') {
      this.#await();
    }
    if (this.#frame === 0) {
      this.#last = {template: make()};
    }
    this.#view = view;
    return this.#last.template;
  }

  #await() {
    // The frame shows what there is; what comes is made behind it.
    this.#frame ||= requestAnimationFrame(() => setTimeout(() => this.#come()));
  }

  #come() {
    this.#frame = 0;
    this.#host.requestUpdate();
  }

  hostConnected() {
    addEventListener('beforeprint', this.#now);
  }

  hostDisconnected() {
    removeEventListener('beforeprint', this.#now);
    cancelAnimationFrame(this.#frame);
    this.#frame = 0;
    this.#last = null;
  }

  #now = () => {
    if (this.#frame !== 0) {
      cancelAnimationFrame(this.#frame);
      this.#come();
    }
  };
}
