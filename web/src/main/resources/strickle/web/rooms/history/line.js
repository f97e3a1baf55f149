import {LitElement, css, html} from 'lit';
import {sheet} from '../../parts/sheet.js';
import {get} from '../../app/service.js';
import {differing} from '../../app/same.js';
import {showMoment} from '../../app/times.js';
import {hasWord, say} from '../../app/words.js';

/** One line of the journal, which opens to show every thing it changed, before and after. */
class HistoryLine extends LitElement {

  static properties = {line: {attribute: false}, open: {type: Boolean}, changes: {state: true}, problem: {state: true}};

  static styles = [sheet, css`
    details { border-block-end: var(--border) solid var(--line); }
    summary { display: flex; flex-wrap: wrap; gap: var(--s1) var(--s4); align-items: baseline; padding: var(--s2) 0; min-height: 38px; cursor: pointer; }
    summary b { font-weight: 600; flex: 1 1 16rem; }
    summary .at { flex: none; color: var(--slate-2); font-size: var(--t1); }
    .number { min-width: 2.5em; color: var(--slate-2); }
    .undone b { text-decoration: line-through; font-weight: 400; }
    .in { padding: 0 0 var(--s3) var(--s4); }
    h3 { margin-block: var(--s2); font-size: var(--t2); }
    td { overflow-wrap: anywhere; vertical-align: top; width: 40%; }
    th[scope="row"] { width: 20%; }
  `];

  willUpdate(changed) {
    if (changed.has('open') && this.open && !this.changes) {
      this.#read();
    }
  }

  async #read() {
    try {
      this.changes = (await get(`/api/journal/${this.line.number}`)).body.items;
    } catch (problem) {
      this.problem = problem;
    }
  }

  render() {
    const {line} = this;
    const gone = line.kind === 'change' && line.state !== 'done';
    return html`<details ?open=${this.open} @toggle=${this.#toggle} class=${gone ? 'undone' : ''}>
      <summary><span class="number">${line.number}</span><b>${this.#what()}</b>
        ${gone ? html`<small>${say('history.takenBack')}</small>` : ''}
        <span class="at">${say('history.who', {who: line.who, at: showMoment(line.at)})}</span></summary>
      <div class="in">${this.open ? this.#inside() : ''}</div>
    </details>`;
  }

  #what() {
    const {line} = this;
    return line.kind === 'change' ? line.what : say(line.kind === 'undo' ? 'history.isUndo' : 'history.isRedo', {of: line.of});
  }

  #toggle(event) {
    const {open} = event.target;
    if (open !== Boolean(this.open)) {
      this.open = open;
      this.dispatchEvent(new CustomEvent('toggle', {detail: open}));
    }
  }

  #inside() {
    if (this.problem) {
      return html`<s-trouble .problem=${this.problem} @again=${() => this.#read()}></s-trouble>`;
    }
    return this.changes ? this.changes.map(change => this.#change(change)) : html`<s-busy></s-busy>`;
  }

  #change({collection, id, before, after}) {
    const fields = differing(before, after);
    const how = before ? (after ? '' : say('history.removed')) : say('history.added');
    return html`<h3>${wordOr(collection)} ${id} ${how}</h3>
      <div class="scroll"><table>
        <thead><tr><th scope="col">${say('history.field')}</th><th scope="col">${say('history.before')}</th><th scope="col">${say('history.after')}</th></tr></thead>
        <tbody>${fields.map(field => html`<tr><th scope="row">${wordOr(field)}</th><td>${shown(before?.[field])}</td><td>${shown(after?.[field])}</td></tr>`)}</tbody>
      </table></div>`;
  }
}

function wordOr(name) {
  return hasWord(`trade.${name}`) ? say(`trade.${name}`) : name;
}

function shown(value) {
  if (value === undefined || value === null) {
    return '–';
  }
  if (Array.isArray(value)) {
    return value.map(shown).join('; ');
  }
  return typeof value === 'object'
    ? Object.entries(value).map(([name, part]) => `${wordOr(name)} ${shown(part)}`).join(', ')
    : String(value);
}

customElements.define('s-history-line', HistoryLine);
