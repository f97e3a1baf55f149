import {LitElement, css, html, nothing} from 'lit';
import {sheet} from '../../parts/sheet.js';
import {say} from '../../app/words.js';

/** How many days a view may show. */
export const ZOOMS = [3, 5, 7, 14, 28, 56];
const WAYS = ['form', 'person', 'order'];
const SHOWS = ['board', 'list'];

/**
 * What the board can be told: its rows, its days, true time, board or list, and the search.
 *
 * Properties: by, days, show, trueTime, find, finds (how many). Events "state" {…} to put into the address, "next".
 */
export class WeekTools extends LitElement {

  static properties = {by: {}, days: {type: Number}, show: {}, trueTime: {type: Boolean}, find: {}, finds: {type: Number}};

  static styles = [sheet, css`
    :host { margin-block: var(--s3) var(--s2); }
    fieldset { border: 0; padding: 0; margin: 0; display: flex; align-items: center; gap: 2px; }
    legend { float: inline-start; padding: 0 var(--s2) 0 0; color: var(--slate-2); font-size: var(--t1); }
    button, select, input { min-height: 34px; }
    select, input { font: inherit; color: inherit; background: var(--lime); border: var(--border) solid var(--edge); border-radius: var(--corner); padding: 0 var(--s2); }
    input { width: 11rem; }
    .find { display: flex; align-items: center; gap: var(--s2); margin-inline-start: auto; }
    .find small { min-width: 6.5rem; }
    @media (max-width: 40rem) { .find { margin-inline-start: 0; flex: 1 1 100%; min-width: 0; } input { flex: 1; width: auto; min-width: 0; } button, select, input { min-height: var(--touch); } .board-only { display: none; } }
    @media print { :host { display: none; } }
  `];

  render() {
    const board = this.show === 'board';
    return html`<div class="row">
      ${this.#choice('show', SHOWS, 'shows')}
      ${board ? this.#choice('by', WAYS, 'ways') : nothing}
      <select aria-label=${say('week.tools.zoom')} @change=${event => this.#tell('state', {days: event.target.value})}>
        ${ZOOMS.map(days => html`<option value=${days} ?selected=${days === this.days}>${daysWords(days)}</option>`)}</select>
      ${board ? html`<button class="board-only" aria-pressed=${this.trueTime} title=${say('week.tools.trueTimeHint')}
        @click=${() => this.#tell('state', {time: this.trueTime ? '' : 'true'})}>${say('week.tools.trueTime')}</button>` : nothing}
      ${board ? this.#search() : nothing}
    </div>`;
  }

  #choice(name, values, words) {
    return html`<fieldset><legend>${say(`week.tools.${name}`)}</legend>${values.map(value => html`<button aria-pressed=${this[name] === value}
      @click=${() => this.#tell('state', {[name]: value})}>${say(`week.tools.${words}.${value}`)}</button>`)}</fieldset>`;
  }

  #search() {
    const told = this.find === '' ? '' : this.finds > 0 ? say('week.tools.finds', {count: this.finds}) : say('week.tools.findNone');
    return html`<div class="find" role="search">
      <input type="search" aria-label=${say('week.tools.find')} placeholder=${say('week.tools.find')} .value=${this.find}
        @input=${event => this.#tell('state', {find: event.target.value})} @keydown=${event => event.key === 'Enter' && this.#tell('next')}>
      <button ?disabled=${this.finds === 0} @click=${() => this.#tell('next')}>${say('week.tools.next')}</button>
      <small role="status">${told}</small></div>`;
  }

  /** Leads to the search. */
  search() {
    this.renderRoot.querySelector('input')?.focus();
  }

  #tell(name, detail = {}) {
    this.dispatchEvent(new CustomEvent(name, {detail}));
  }
}

const daysWords = days => (days % 7 === 0 && days > 7 ? say('week.tools.weeks', {count: days / 7}) : say('week.tools.days', {count: days}));

customElements.define('s-week-tools', WeekTools);
