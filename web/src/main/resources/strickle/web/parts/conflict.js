import {LitElement, css, html} from 'lit';
import {sheet} from './sheet.js';
import {say, hasWord} from '../app/words.js';
import {showMoment} from '../app/times.js';
import {differing, merge, same} from '../app/same.js';
import './dialog.js';

/**
 * Somebody else has changed what is being saved: shows each line that both changed, side by side, to
 * choose from; what only one changed is put together. The event "choice" has {base, mine} to save,
 * or {theirs} when theirs shall stand.
 */
export class ConflictDialog extends LitElement {

  static properties = {conflict: {attribute: false}, names: {attribute: false}, picks: {state: true}};

  static styles = [sheet, css`
    label { display: flex; gap: var(--s2); align-items: baseline; min-height: 24px; }
    td { vertical-align: top; overflow-wrap: anywhere; }
  `];

  constructor() {
    super();
    this.picks = {};
    this.names = {};
  }

  render() {
    const {base, theirs, mine, changed} = this.conflict;
    return html`<s-dialog wide .open=${true} heading=${say('parts.conflict')} @close=${() => this.dispatchEvent(new CustomEvent('close'))}>
      <div class="stack">
        ${changed.filter(one => one.who && one.at).map(one => html`<p>${say('parts.conflictWho', {who: one.who, when: showMoment(one.at), what: one.what ?? ''})}</p>`)}
        ${theirs === null ? html`<p>${say('parts.conflictGone')}</p>` : this.#lines(base, theirs, mine ?? {})}
      </div>
      ${theirs === null
        ? html`<button slot="foot" class="do" @click=${() => this.#choose({base: null, mine})}>${say('parts.bringBack')}</button>`
        : html`<button slot="foot" class="do" @click=${this.#keep}>${say('parts.keepThese')}</button>`}
      <button slot="foot" @click=${() => this.#choose({theirs})}>${say('parts.takeTheirs')}</button>
    </s-dialog>`;
  }

  #lines(base, theirs, mine) {
    const {clashes} = merge(base, theirs, mine);
    const merged = differing(base, theirs).filter(name => !clashes.includes(name)).length;
    return html`<p>${say('parts.conflictText')}</p>
      ${clashes.length > 0 ? html`<div class="scroll"><table>
        <thead><tr><th></th><th>${say('parts.was')}</th><th>${say('parts.theirs')}</th><th>${say('parts.mine')}</th></tr></thead>
        <tbody>${clashes.map(name => this.#line(name, base, theirs, mine))}</tbody></table></div>` : ''}
      ${merged > 0 ? html`<p class="quiet">${say('parts.conflictMerged', {count: merged})}</p>` : ''}`;
  }

  #line(name, base, theirs, mine) {
    const choice = (side, value) => html`<label><input type="radio" name=${name} .checked=${(this.picks[name] ?? 'mine') === side}
      @change=${() => (this.picks = {...this.picks, [name]: side})}> <span>${shown(value)}</span></label>`;
    return html`<tr><th scope="row">${this.names?.[name] ?? (hasWord(`trade.${name}`) ? say(`trade.${name}`) : name)}</th>
      <td>${shown(base?.[name])}</td><td>${choice('theirs', theirs[name])}</td><td>${choice('mine', mine[name])}</td></tr>`;
  }

  #keep() {
    const {base, theirs, mine} = this.conflict;
    const {merged, clashes} = merge(base, theirs, mine);
    for (const name of clashes.filter(clash => this.picks[clash] === 'theirs')) {
      merged[name] = theirs[name];
    }
    this.#choose(same(merged, theirs) ? {theirs} : {base: theirs, mine: merged});
  }

  #choose(detail) {
    this.dispatchEvent(new CustomEvent('choice', {detail}));
  }
}

function shown(value) {
  if (value === undefined || value === null || value === '') {
    return say('parts.nothing');
  }
  if (Array.isArray(value)) {
    return value.map(shown).join('; ');
  }
  return typeof value === 'object' ? Object.values(value).map(shown).join(', ') : String(value);
}

customElements.define('s-conflict', ConflictDialog);
