/** Opening a bar by resting on it: after a moment it is told, and untold a moment after the pointer has left. */

const REST_MS = 350;
const LEAVE_MS = 250;

export class Peeking {
  #timer = 0;

  constructor(host) {
    this.host = host;
  }

  over(event) {
    const node = event.target.closest('.bar');
    if (!node || event.pointerType === 'touch' || event.buttons !== 0) return;
    this.#after(REST_MS, 'peek', () => ({bar: node.item.bar, node}));
  }

  out() {
    this.#after(LEAVE_MS, 'unpeek', () => ({}));
  }

  /** Whoever shows what was told may keep it open while the pointer is on it. */
  hold() {
    clearTimeout(this.#timer);
  }

  #after(time, name, detail) {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => this.host.dispatchEvent(new CustomEvent(name, {detail: detail()})), time);
  }
}
