import {css, html} from 'lit';
import {repeat} from 'lit/directives/repeat.js';
import {Room} from '../../parts/room.js';
import {address, link} from '../../app/address.js';
import {asking} from '../../app/latest.js';
import {pages} from '../../app/service.js';
import {studio} from '../../app/studio.js';
import {say} from '../../app/words.js';
import {tell} from '../../parts/undo.js';
import './line.js';
import './plans.js';
import './snapshots.js';

const PAGE = 50;

/** What was done to the studio, line by line, with undo and redo; and the states and plans that are kept. */
class HistoryRoom extends Room {

  static properties = {lines: {state: true}, next: {state: true}, problem: {state: true}, hasStates: {state: true}};

  static styles = [...Room.styles, css`
    ol { list-style: none; padding: 0; max-width: 60rem; border-block-start: var(--border) solid var(--line); }
  `];

  #asks = asking();

  constructor() {
    super();
    this.lines = null;
    this.next = '';
    this.problem = null;
    this.hasStates = false;
    this.again = () => this.#read();
  }

  connectedCallback() {
    super.connectedCallback();
    studio.addEventListener('change', this.again);
    this.#read();
  }

  disconnectedCallback() {
    studio.removeEventListener('change', this.again);
    super.disconnectedCallback();
  }

  // As many as were opened, all where all were, or with some more behind them.
  async #read(after = '') {
    const isLast = this.#asks();
    const least = after ? PAGE : this.lines && !this.next ? Infinity : Math.max(PAGE, this.lines?.length ?? 0);
    try {
      const {items, next} = await pages('/api/journal', {least, after});
      if (!isLast()) return;
      this.lines = after ? [...this.lines, ...items] : items;
      this.next = next;
      this.problem = null;
    } catch (problem) {
      if (isLast()) this.problem = problem;
    }
  }

  actions() {
    const undoable = this.lines?.some(line => line.state === 'done') ?? false;
    const redoable = this.lines?.some(line => line.state === 'undone') ?? false;
    return html`
      <button ?disabled=${!undoable} @click=${() => this.#move(() => studio.undo(), 'undone', () => studio.redo())}>${say('history.undo')}</button>
      <button ?disabled=${!redoable} @click=${() => this.#move(() => studio.redo(), 'redone', () => studio.undo())}>${say('history.redo')}</button>`;
  }

  async #move(move, word, back) {
    try {
      await move();
      tell(say(`history.${word}`), back);
    } catch (problem) {
      tell(problem.message);
    }
    await this.#read();
  }

  content() {
    if (this.problem) {
      return html`<s-trouble .problem=${this.problem} @again=${this.again}></s-trouble>`;
    }
    return html`${this.#journal()}${this.lines ? this.#kept() : ''}`;
  }

  #kept() {
    return html`<s-snapshots @read=${() => (this.hasStates = true)}></s-snapshots>${this.hasStates ? html`<s-plans></s-plans>` : ''}`;
  }

  #journal() {
    if (this.lines === null) {
      return html`<s-busy></s-busy>`;
    }
    if (this.lines.length === 0) {
      return html`<s-empty heading=${say('history.empty')}>${say('history.emptyText')}</s-empty>`;
    }
    const open = address.rest[0] ?? '';
    return html`<h2 id="lines">${say('history.lines')}</h2><ol aria-labelledby="lines">${repeat(this.lines, line => line.number, line => html`<li>
        <s-history-line .line=${line} .open=${open === String(line.number)} @toggle=${event => this.#open(line, event.detail)}></s-history-line></li>`)}</ol>
      ${this.next ? html`<p><button @click=${() => this.#read(this.next)}>${say('history.older')}</button></p>` : ''}`;
  }

  #open(line, open) {
    address.go(link(open ? ['history', line.number] : '/history'), {replace: true});
  }
}

customElements.define('s-room-history', HistoryRoom);
