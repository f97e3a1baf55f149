import {LitElement, css, html} from 'lit';
import {sheet} from './sheet.js';
import {say} from '../app/words.js';

/**
 * A dialog over the room. It takes focus, keeps it, and gives it back; Escape closes it.
 *
 * `<s-dialog .open=${…} heading="…" @close=${…}> … <button slot="foot">…</button></s-dialog>`
 */
export class Dialog extends LitElement {

  static properties = {open: {type: Boolean}, heading: {}, wide: {type: Boolean, reflect: true}};

  static styles = [sheet, css`
    dialog {
      width: min(36rem, 100vw - 2 * var(--s3)); max-height: min(46rem, 100dvh - 2 * var(--s3));
      padding: 0; color: var(--slate); background: var(--lime);
      border: var(--border) solid var(--edge); border-radius: var(--corner);
    }
    :host([wide]) dialog { width: min(64rem, 100vw - 2 * var(--s3)); }
    dialog::backdrop { background: rgb(0 0 0 / 0.45); }
    .in { display: flex; flex-direction: column; max-height: inherit; }
    header { display: flex; align-items: center; gap: var(--s3); padding: var(--s3) var(--s4); border-block-end: var(--border) solid var(--line); }
    header h2 { margin-inline-end: auto; font-size: var(--t3); }
    .body { padding: var(--s4); overflow: auto; }
    footer { display: flex; flex-wrap: wrap; gap: var(--s3); padding: 0 var(--s4); }
    footer.full { padding: var(--s3) var(--s4); border-block-start: var(--border) solid var(--line); }
  `];

  #from = null;

  disconnectedCallback() {
    dim(this, false);
    super.disconnectedCallback();
  }

  render() {
    return html`<dialog aria-labelledby="heading" @close=${this.#closed} @cancel=${event => event.stopPropagation()}>
      <div class="in">
        <header><h2 id="heading" tabindex="-1">${this.heading}</h2><button @click=${this.close}>${say('parts.close')}</button></header>
        <div class="body"><slot></slot></div>
        <footer><slot name="foot" @slotchange=${this.#foot}></slot></footer>
      </div>
    </dialog>`;
  }

  #foot(event) {
    event.target.parentElement.classList.toggle('full', event.target.assignedElements().length > 0);
  }

  updated(changed) {
    const dialog = this.renderRoot.querySelector('dialog');
    if (changed.has('open') && Boolean(this.open) !== dialog.open) {
      if (this.open) {
        this.#from = deepActive();
        dialog.showModal();
        dim(this, true);
        this.renderRoot.querySelector('h2').focus();
      } else {
        dialog.close();
      }
    }
  }

  /** Closes it. */
  close() {
    this.renderRoot.querySelector('dialog').close();
  }

  #closed(event) {
    event.stopPropagation();
    this.open = false;
    dim(this, false);
    this.#from?.focus?.();
    this.#from = null;
    this.dispatchEvent(new CustomEvent('close'));
  }
}

const opened = new Set();

// The strip beside the page that is kept for a scrollbar lies outside of every backdrop.
function dim(dialog, on) {
  opened[on ? 'add' : 'delete'](dialog);
  document.documentElement.classList.toggle('dimmed', opened.size > 0);
}

/** What has focus, through all shadows. */
export function deepActive() {
  let active = document.activeElement;
  while (active?.shadowRoot?.activeElement) {
    active = active.shadowRoot.activeElement;
  }
  return active;
}

customElements.define('s-dialog', Dialog);
