import {LitElement, css, html} from 'lit';
import {sheet} from './sheet.js';

/**
 * The sentence before the picture: what a person would ask first, with the way out as a link.
 *
 * `<s-say kind="late"><b>1 of 7 orders is late.</b> … <a slot="out" href=…>What would free it</a></s-say>`
 * The kind is "late", "ready", "care" or nothing for plain news; the words must say it too.
 */
export class Say extends LitElement {

  static properties = {kind: {reflect: true}};

  static styles = [sheet, css`
    :host {
      display: flex; flex-wrap: wrap; align-items: baseline; gap: var(--s2) var(--s4);
      margin-block: var(--s3); padding: var(--s2) var(--s3);
      border-inline-start: var(--post) solid var(--slate-2); background: var(--lime-2);
    }
    :host([kind="late"]) { border-color: var(--oxide); background: var(--oxide-wash); }
    :host([kind="ready"]) { border-color: var(--moss); background: var(--moss-wash); }
    :host([kind="care"]) { border-color: var(--ochre); background: var(--ochre-wash); }
    .said { flex: 1 1 20rem; }
    .said slot { display: block; max-width: 76ch; }
    ::slotted(a) { color: inherit; font-weight: 600; }
    @media print { :host { background: none; } }
  `];

  render() {
    return html`<div class="said"><slot></slot></div><slot name="out"></slot>`;
  }
}

customElements.define('s-say', Say);
