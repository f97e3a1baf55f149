import {LitElement, css, html} from 'lit';
import {sheet} from '../../parts/sheet.js';
import {ask, get} from '../../app/service.js';
import {studio} from '../../app/studio.js';
import {say} from '../../app/words.js';

/** Closing a studio that a password opens; or how to put one before it. */
class Door extends LitElement {

  static properties = {ends: {state: true}};

  static styles = [sheet, css`h2 { margin-block-end: var(--s2); }`];

  constructor() {
    super();
    this.ends = null;
  }

  async connectedCallback() {
    super.connectedCallback();
    this.ends = (await get('/api/session')).body.endsAt ?? '';
  }

  render() {
    if (this.ends === null) {
      return '';
    }
    return this.ends
      ? html`<h2>${say('settings.leave')}</h2><p>${say('settings.leaveText')}</p><button @click=${this.#close}>${say('settings.leave')}</button>`
      : html`<p class="quiet">${say('settings.noPassword')}</p>`;
  }

  async #close() {
    try {
      await ask('DELETE', '/api/session');
    } catch (failed) {
      if (!failed.isClosed) { // it was, before
        throw failed;
      }
    }
    await studio.load();
  }
}

customElements.define('s-door', Door);
