import {studio} from './studio.js';

/** Draws a Lit component again whenever the studio (or a further source of "change") has changed. */
export class Watching {

  #sources;
  #draw;

  constructor(host, ...sources) {
    this.#sources = [studio, ...sources];
    this.#draw = () => host.requestUpdate();
    host.addController(this);
  }

  hostConnected() {
    this.#sources.forEach(source => source.addEventListener('change', this.#draw));
  }

  hostDisconnected() {
    this.#sources.forEach(source => source.removeEventListener('change', this.#draw));
  }
}
