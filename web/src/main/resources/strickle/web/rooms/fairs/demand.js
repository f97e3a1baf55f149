import {LitElement, css, html} from 'lit';
import {sheet} from '../../parts/sheet.js';
import {studio} from '../../app/studio.js';
import {address, link} from '../../app/address.js';
import {say} from '../../app/words.js';
import {addDays, dayOf} from '../../app/times.js';
import {same} from '../../app/same.js';
import {tell} from '../../parts/undo.js';
import '../../parts/field.js';
import '../../parts/form.js';

/** A fair and what may sell there. */
class FairEdit extends LitElement {

  static properties = {fair: {attribute: false}, draft: {state: true}, base: {state: true}};

  static styles = [sheet, css`
    .fields { display: grid; gap: var(--s3); max-width: 46rem; }
    fieldset { border: var(--border) solid var(--line); padding: var(--s3); margin: 0; display: grid; gap: var(--s3); min-width: 0; }
    legend { font-weight: 600; padding: 0 var(--s2); }
    .line { display: grid; grid-template-columns: minmax(8rem, 1fr) repeat(3, 5rem) 7rem auto; gap: var(--s2); align-items: end; }
    @media (max-width: 44rem) { .line { grid-template-columns: repeat(3, 1fr); border-block-end: var(--border) solid var(--line); padding-block-end: var(--s3); } .line s-field:first-child { grid-column: 1 / -1; } }
  `];

  willUpdate(changed) {
    if (changed.has('fair') && (this.fair?.id !== this.draft?.id || (this.fair && same(this.draft, this.base)))) {
      this.#begin();
    }
    this.draft ??= this.#fresh();
  }

  // What it began from stays, though somebody else changes the fair meanwhile.
  #begin() {
    this.draft = this.fair ? structuredClone(this.fair) : this.#fresh();
    this.base = this.fair ?? null;
  }

  #restore({value, base}) {
    [this.draft, this.base] = [value, base];
  }

  #fresh() {
    let number = studio.book.fairs.length + 1;
    while (studio.find('fairs', `fair-${number}`)) {
      number += 1;
    }
    return {id: `fair-${number}`, name: '', opens: `${addDays(dayOf(new Date()), 28)}T10:00`, tableCost: 0,
      channel: studio.book.channels[0]?.id, demand: [this.#line0()]};
  }

  #line0() {
    const piece = studio.book.pieces.find(({id}) => !this.draft?.demand.some(line => line.piece === id)) ?? studio.book.pieces[0];
    return {piece: piece?.id, low: 0, likely: 2, high: 5, ...(piece?.price ? {price: piece.price} : {})};
  }

  render() {
    return html`<s-form .value=${this.draft} .base=${this.base} draft=${`fairs/${this.fair?.id ?? 'new'}`} cancel
      .save=${(mine = this.#clean(), base = this.base ?? null) => studio.put('fairs', mine, base)}
      @restore=${event => this.#restore(event.detail)} @restart=${this.#begin} @saved=${this.#saved} @cancel=${() => address.go(this.fair ? link(['fairs', this.fair.id]) : '/fairs')}>
      <div class="fields">${this.#fields()}</div>
      ${this.fair ? html`<button slot="foot" type="button" @click=${this.#remove}>${say('fairs.remove')}</button>` : ''}</s-form>`;
  }

  #clean() {
    return {...this.draft, demand: this.draft.demand.filter(({piece}) => piece).map(line => {
      const {price, ...rest} = line;
      return price === null || price === undefined ? rest : line;
    })};
  }

  #change(part) {
    this.draft = {...this.draft, ...part};
  }

  #field(name, more) {
    return html`<s-field needed path=${name} label=${say(`fairs.field_${name}`)} kind=${more?.kind ?? 'text'} .least=${more?.least} .options=${more?.options}
      ?disabled=${more?.disabled} .value=${this.draft[name]} @value=${event => this.#change({[name]: event.detail})}></s-field>`;
  }

  #fields() {
    return html`${this.#field('name')}${this.#field('id', {disabled: Boolean(this.fair)})}${this.#field('opens', {kind: 'moment'})}
      ${this.#field('tableCost', {kind: 'money', least: 0})}
      ${this.#field('channel', {options: studio.book.channels.map(({id, name}) => ({value: id, label: name}))})}
      <fieldset><legend>${say('fairs.demand')}</legend><p class="quiet">${say('fairs.demandHint')}</p>
        ${this.draft.demand.map((line, number) => this.#line(line, number))}
        <button type="button" @click=${() => this.#change({demand: [...this.draft.demand, this.#line0()]})}>${say('fairs.addPiece')}</button></fieldset>`;
  }

  #line(line, number) {
    const set = name => event => this.#change({demand: this.draft.demand.map((other, at) => (at === number ? {...other, [name]: event.detail} : other))});
    const whole = name => html`<s-field needed kind="whole" least="0" path="demand[${number}].${name}" label=${say(`fairs.${name}`)} .value=${line[name]} @value=${set(name)}></s-field>`;
    return html`<div class="line" role="group" aria-label=${say('fairs.lineOf', {count: number + 1})}>
      <s-field needed path="demand[${number}].piece" label=${say('fairs.piece')} .value=${line.piece} .options=${studio.book.pieces.map(({id, name}) => ({value: id, label: name}))} @value=${set('piece')}></s-field>
      ${['low', 'likely', 'high'].map(whole)}
      <s-field plain kind="money" least="0" path="demand[${number}].price" label=${say('fairs.price')} .value=${line.price} @value=${set('price')}></s-field>
      <button type="button" aria-label=${say('fairs.dropLine', {count: number + 1})} @click=${() => this.#change({demand: this.draft.demand.filter((_, at) => at !== number)})}>${say('parts.remove')}</button></div>`;
  }

  #saved(event) {
    tell(event.detail === 'kept' ? say('parts.kept') : say('fairs.saved', {fair: this.draft.name}), event.detail !== 'kept');
    address.go(link(['fairs', this.draft.id]));
  }

  async #remove() {
    try {
      await studio.remove('fairs', this.fair);
      tell(say('fairs.removed', {fair: this.fair.name}), true);
      address.go('/fairs');
    } catch (refused) {
      tell(refused.faults?.length ? say('parts.found', refused.faults[0]) : refused.message);
    }
  }
}

customElements.define('s-fair-edit', FairEdit);
