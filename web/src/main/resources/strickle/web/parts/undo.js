import {LitElement, css, html} from 'lit';
import {sheet} from './sheet.js';
import {say} from '../app/words.js';
import {studio} from '../app/studio.js';

const STAYS = 12_000;

/**
 * Tells what was just done, at the foot of the room, with a way to take it back. Rooms call
 * {@link tell}; there is one line for the whole page.
 */
export class Undo extends LitElement {

  static properties = {told: {state: true}};

  static styles = [sheet, css`
    :host { position: fixed; z-index: 30; inset-inline: 0; inset-block-end: var(--foot, 0px); pointer-events: none; }
    .line {
      pointer-events: auto; display: flex; flex-wrap: wrap; align-items: center; gap: var(--s2) var(--s4);
      width: fit-content; max-width: calc(100vw - 2 * var(--s3)); margin: var(--s3) auto; padding: var(--s2) var(--s4);
      background: var(--shell); color: var(--on-shell); border-radius: var(--corner);
    }
    button { background: none; color: inherit; border-color: currentColor; }
    :focus-visible { outline-color: var(--on-shell); }
    @media print { :host { display: none; } }
  `];

  #timer = 0;

  constructor() {
    super();
    this.told = null;
    this.addEventListener('focusin', () => clearTimeout(this.#timer));
    this.addEventListener('pointerenter', () => clearTimeout(this.#timer));
    this.addEventListener('focusout', () => this.#forget());
  }

  connectedCallback() {
    super.connectedCallback();
    window.addEventListener('strickle-told', this);
  }

  disconnectedCallback() {
    window.removeEventListener('strickle-told', this);
    super.disconnectedCallback();
  }

  handleEvent(event) {
    this.told = event.detail;
    this.#forget();
  }

  #forget() {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => (this.told = null), STAYS);
  }

  render() {
    const {told} = this;
    return html`<div role="status">${told ? html`<div class="line"><span>${told.text}</span>
      ${told.undo ? html`<button @click=${this.#undo}>${say('parts.undo')}</button>` : ''}</div>` : ''}</div>`;
  }

  async #undo() {
    const {undo} = this.told;
    try {
      await undo();
      this.told = {text: say('parts.undone')};
    } catch (failed) {
      this.told = {text: failed.message};
    }
    this.#forget();
  }
}

/**
 * Tells what was done.
 *
 * @param {string} text a sentence
 * @param {(function(): Promise<void>)|boolean} [undo] how to take it back; true for the studio's last
 *   change
 */
export function tell(text, undo = null) {
  const detail = {text, undo: undo === true ? () => studio.undo() : undo};
  window.dispatchEvent(new CustomEvent('strickle-told', {detail}));
}

customElements.define('s-undo', Undo);
