import {LitElement, css, html} from 'lit';
import {live} from 'lit/directives/live.js';
import {sheet} from './sheet.js';

/**
 * A large box to tick off, for bench hands: the whole line is the target, 44 px at least.
 *
 * `<s-tick .on=${done} @tick=${event => …event.detail}>640 g of grey cement</s-tick>`
 */
export class Tick extends LitElement {

  static properties = {on: {type: Boolean, reflect: true}, disabled: {type: Boolean}};

  static shadowRootOptions = {...LitElement.shadowRootOptions, delegatesFocus: true};

  static styles = [sheet, css`
    label { display: flex; align-items: center; gap: var(--s3); min-height: var(--touch); padding: var(--s1) 0; cursor: pointer; }
    input { flex: none; width: 28px; height: 28px; margin: 0; accent-color: var(--moss); }
    .what { flex: 1; min-width: 0; }
    :host([on]) .what { color: var(--slate-2); text-decoration: line-through; }
    @media print { :host([on]) .what { color: inherit; } }
  `];

  render() {
    return html`<label><input type="checkbox" .checked=${live(Boolean(this.on))} ?disabled=${this.disabled} @change=${this.#tick}>
      <span class="what"><slot></slot></span></label>`;
  }

  #tick(event) {
    this.on = event.target.checked;
    this.dispatchEvent(new CustomEvent('tick', {detail: this.on}));
  }
}

customElements.define('s-tick', Tick);
