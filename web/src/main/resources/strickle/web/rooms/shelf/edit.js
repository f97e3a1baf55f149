import {LitElement, css, html} from 'lit';
import {sheet} from '../../parts/sheet.js';
import {studio} from '../../app/studio.js';
import {address, link} from '../../app/address.js';
import {say} from '../../app/words.js';
import {same} from '../../app/same.js';
import {tell} from '../../parts/undo.js';
import {FIELDS, cleaned, fresh, idOf} from './fields.js';
import '../../parts/form.js';
import './check.js';
import './hours.js';
import './mixing.js';
import './parts.js';
import './timeline.js';
import './volume.js';

/** One thing of the book: new, or changed; with what would come of it beside the form. */
class ShelfEdit extends LitElement {

  static properties = {collection: {}, thing: {attribute: false}, draft: {state: true}, base: {state: true}};

  static styles = [sheet, css`
    .two { display: grid; grid-template-columns: minmax(0, 1fr) minmax(15rem, 20rem); gap: var(--s4) var(--s5); align-items: start; }
    aside { display: grid; gap: var(--s4); border-inline-start: var(--border) solid var(--line); padding-inline-start: var(--s4); }
    aside h2 { font-size: var(--t3); margin-block-end: var(--s2); }
    @media (max-width: 62rem) { .two { grid-template-columns: minmax(0, 1fr); } aside { border: 0; padding: 0; } }
  `];

  #named = '';

  willUpdate(changed) {
    const other = changed.has('thing') && (this.thing?.id !== this.draft?.id || (this.thing && same(this.draft, this.base)));
    if (changed.has('collection') || other) {
      this.#begin();
    }
  }

  // What it began from stays, though somebody else changes the thing meanwhile.
  #begin() {
    this.draft = this.thing ? structuredClone(this.thing) : fresh(this.collection, studio.book);
    this.base = this.thing ?? null;
    this.#named = '';
  }

  #restore({value, base}) {
    this.base = base;
    this.#take(value);
  }

  // A new thing is called after its name until somebody calls it otherwise.
  #take(draft) {
    if (!this.thing && this.collection !== 'studio' && (draft.id ?? '') === this.#named && draft.name) {
      this.#named = idOf(draft.name, studio.book[this.collection].map(({id}) => id));
      this.draft = {...draft, id: this.#named};
    } else {
      this.draft = draft;
    }
  }

  render() {
    const {collection, draft} = this;
    return html`<div class="two"><s-form .value=${draft} .base=${this.base} draft=${`${collection}/${this.thing?.id ?? 'new'}`} cancel
        .save=${(mine = cleaned(this.draft), base = this.base ?? null) => studio.put(collection, mine, base)}
        @restore=${event => this.#restore(event.detail)} @restart=${this.#begin} @saved=${this.#saved} @cancel=${() => address.go(this.#back)}>
        <s-shelf-fields .fields=${FIELDS[collection]} .value=${draft} .whole=${draft} ?settled=${Boolean(this.thing)} @value=${event => this.#take(event.detail)}></s-shelf-fields>
        ${this.thing && collection !== 'studio' ? html`<button slot="foot" type="button" @click=${this.#copy}>${say('shelf.copy')}</button>
          <button slot="foot" type="button" @click=${this.#remove}>${say('shelf.removeIt')}</button>` : ''}
      </s-form>
      <aside>${collection === 'pieces' ? html`<div><h2>${say('shelf.timeline')}</h2><s-shelf-timeline .piece=${draft}></s-shelf-timeline></div>` : ''}
        ${collection === 'mixes' ? html`<div><h2>${say('shelf.weighOut')}</h2><s-shelf-mixing .mix=${draft}></s-shelf-mixing></div>` : ''}
        <div><h2>${say('shelf.check')}</h2><s-shelf-check .collection=${collection} .thing=${draft} .base=${this.thing}></s-shelf-check></div></aside></div>`;
  }

  get #back() {
    return this.collection === 'studio' ? '/shelf' : link(['shelf', this.collection]);
  }

  #saved(event) {
    tell(event.detail === 'kept' ? say('parts.kept') : say('shelf.saved', {name: this.draft.name}), event.detail !== 'kept');
    address.go(this.#back);
  }

  async #copy() {
    const taken = studio.book[this.collection].map(({id}) => id);
    const name = say('shelf.copyOf', {name: this.thing.name});
    const copy = {...structuredClone(this.thing), name, id: idOf(name, taken)};
    try {
      await studio.put(this.collection, copy);
      tell(say('shelf.saved', {name}), true);
      address.go(link(['shelf', this.collection, copy.id]));
    } catch (refused) {
      tell(refused.message);
    }
  }

  async #remove() {
    try {
      await studio.remove(this.collection, this.thing);
      tell(say('shelf.removed', {name: this.thing.name}), true);
      address.go(this.#back);
    } catch (refused) {
      tell(refused.faults?.length ? say('shelf.stillUsed', refused.faults[0]) : refused.message);
    }
  }
}

customElements.define('s-shelf-edit', ShelfEdit);
