import {LitElement, css, html} from 'lit';
import {sheet} from './sheet.js';

let number = 0;

/**
 * A button that opens a list of things to do; arrows move, Enter does, Escape closes.
 *
 * `<s-menu label="…" .items=${[{label, does: () => …, danger, disabled, href}]}></s-menu>`
 */
export class Menu extends LitElement {

  static properties = {label: {}, items: {attribute: false}, big: {type: Boolean}, open: {state: true}};

  static styles = [sheet, css`
    :host { display: inline-block; position: relative; }
    .list {
      position: absolute; z-index: 20; inset-inline-end: 0; inset-block-start: 100%;
      min-width: 14rem; max-width: 80vw; margin-block-start: 2px; padding: var(--s1);
      background: var(--lime); border: var(--border) solid var(--edge); border-radius: var(--corner);
    }
    .list button, .list a { display: flex; width: 100%; justify-content: flex-start; text-align: start; background: none; border-color: transparent; color: inherit; }
    .list button:hover, .list a:hover, .list :focus-visible { background: var(--lime-2); }
    .danger { color: var(--oxide); }
    .arrow { font-size: 0.7em; }
  `];

  #id = `menu-${number++}`;

  constructor() {
    super();
    this.items = [];
    this.open = false;
    this.addEventListener('focusout', event => this.contains(event.relatedTarget) || this.#leave(event));
  }

  #leave(event) {
    if (!this.renderRoot.contains(event.relatedTarget) && event.relatedTarget !== this) {
      this.open = false;
    }
  }

  render() {
    return html`<button id="opens" class=${this.big ? 'big' : ''} aria-haspopup="menu" aria-expanded=${this.open}
        aria-controls=${this.#id} @click=${this.#toggle} @keydown=${this.#keyOnButton}>
        ${this.label}<span class="arrow" aria-hidden="true">▾</span></button>
      <div class="list" id=${this.#id} role="menu" aria-labelledby="opens" ?hidden=${!this.open} @keydown=${this.#key}>
        ${this.items.map(item => this.#item(item))}
      </div>`;
  }

  #item(item) {
    const name = `button ${item.danger ? 'danger' : ''}`;
    return item.href
      ? html`<a class=${name} role="menuitem" tabindex="-1" href=${item.href} @click=${() => (this.open = false)}>${item.label}</a>`
      : html`<button class=${name} role="menuitem" tabindex="-1" ?disabled=${item.disabled} @click=${() => this.#does(item)}>${item.label}</button>`;
  }

  #does(item) {
    this.open = false;
    this.renderRoot.querySelector('#opens').focus();
    item.does();
  }

  #toggle() {
    this.open = !this.open;
    if (this.open) {
      this.updateComplete.then(() => this.#focus(0));
    }
  }

  #keyOnButton(event) {
    if (event.key === 'ArrowDown' && !this.open) {
      event.preventDefault();
      this.#toggle();
    }
  }

  #key(event) {
    const items = this.#entries();
    const at = items.indexOf(this.renderRoot.activeElement);
    const to = {ArrowDown: at + 1, ArrowUp: at - 1, Home: 0, End: items.length - 1}[event.key];
    if (event.key === 'Escape') {
      event.stopPropagation();
      this.open = false;
      this.renderRoot.querySelector('#opens').focus();
    } else if (to !== undefined) {
      event.preventDefault();
      this.#focus(to);
    }
  }

  #entries() {
    return [...this.renderRoot.querySelectorAll('[role=menuitem]:not(:disabled)')];
  }

  #focus(at) {
    const items = this.#entries();
    items[(at + items.length) % items.length]?.focus();
  }
}

customElements.define('s-menu', Menu);
