import {LitElement, css, html} from 'lit';
import {sheet} from '../../parts/sheet.js';
import {studio} from '../../app/studio.js';
import {address, link} from '../../app/address.js';
import {say} from '../../app/words.js';
import {addDays, dayOf, showMinutes, showMoment} from '../../app/times.js';
import {same} from '../../app/same.js';
import {tell} from '../../parts/undo.js';
import {freshId} from './outcomes.js';
import '../../parts/field.js';
import '../../parts/form.js';
import './promise.js';

const KINDS = ['custom', 'shop', 'fair'];

/** One order: new, or changed; with what it can be promised for. */
class OrderEdit extends LitElement {

  static properties = {order: {attribute: false}, fate: {attribute: false}, draft: {state: true}, base: {state: true}};

  static styles = [sheet, css`
    .two { display: grid; grid-template-columns: minmax(0, 1fr) minmax(16rem, 24rem); gap: var(--s4) var(--s5); align-items: start; }
    .fields { display: grid; gap: var(--s3); max-width: 40rem; }
    fieldset { border: var(--border) solid var(--line); padding: var(--s3); margin: 0; display: grid; gap: var(--s3); min-width: 0; }
    legend { font-weight: 600; padding: 0 var(--s2); }
    .line { display: grid; grid-template-columns: minmax(8rem, 1fr) 6rem 8rem auto; gap: var(--s2); align-items: end; }
    .because { margin-block: var(--s3); }
    @media (max-width: 60rem) { .two { grid-template-columns: minmax(0, 1fr); } }
    @media (max-width: 34rem) { .line { grid-template-columns: 1fr 1fr; border-block-end: var(--border) solid var(--line); padding-block-end: var(--s3); } .line s-field:first-child { grid-column: 1 / -1; } }
  `];

  willUpdate(changed) {
    if (changed.has('order') && (this.order?.id !== this.draft?.id || (this.order && same(this.draft, this.base)))) {
      this.#begin();
    }
    this.draft ??= this.#fresh();
  }

  // What it began from stays, though somebody else changes the order meanwhile.
  #begin() {
    this.draft = this.order ? structuredClone(this.order) : this.#fresh();
    this.base = this.order ?? null;
  }

  #restore({value, base}) {
    [this.draft, this.base] = [value, base];
  }

  #fresh() {
    const due = `${addDays(dayOf(new Date()), 14)}T17:00`;
    return {id: freshId(), for: '', kind: 'custom', due, weight: 1, lines: [{piece: studio.book.pieces[0]?.id, quantity: 1}]};
  }

  render() {
    return html`<div class="two"><s-form .value=${this.draft} .base=${this.base} draft=${`orders/${this.order?.id ?? 'new'}`} cancel
        .save=${(mine = this.#clean(), base = this.base ?? null) => studio.put('orders', mine, base)}
        @restore=${event => this.#restore(event.detail)} @restart=${this.#begin}
        @saved=${this.#saved} @cancel=${() => address.go('/orders')}>
        <div class="fields">${this.#fields()}</div>
        ${this.order ? html`<button slot="foot" type="button" @click=${this.#remove}>${say('orders.remove')}</button>` : ''}
      </s-form>
      <div>${this.#fate()}
        ${this.order ? '' : html`<s-promised .lines=${this.draft.lines} @take=${event => this.#change({due: event.detail})}></s-promised>`}</div></div>`;
  }

  #clean() {
    const {draft} = this;
    return {...draft, lines: draft.lines.filter(({piece}) => piece).map(line => {
      const {price, ...rest} = line;
      return price === null || price === undefined ? rest : line;
    })};
  }

  #change(part) {
    this.draft = {...this.draft, ...part};
  }

  #field(name, more = {}) {
    return html`<s-field path=${name} label=${say(`orders.field_${name}`)} kind=${more.kind ?? 'text'} ?needed=${more.needed} .least=${more.least}
      hint=${more.hint ?? ''} .options=${more.options} .list=${more.list} ?disabled=${more.disabled} .value=${this.draft[name]} @value=${event => this.#change({[name]: event.detail})}></s-field>`;
  }

  #fields() {
    return html`${this.#field('id', {needed: true, disabled: Boolean(this.order)})}${this.#field('for', {hint: say('orders.forHint')})}
      ${this.#field('kind', {list: KINDS})}${this.#field('due', {kind: 'moment', needed: true})}
      ${this.#field('weight', {kind: 'number', least: 0, hint: say('orders.weightHint')})}
      <fieldset><legend>${say('orders.lines')}</legend>${this.draft.lines.map((line, number) => this.#line(line, number))}
        <button type="button" @click=${this.#add}>${say('orders.addLine')}</button></fieldset>`;
  }

  #line(line, number) {
    const set = name => event => this.#change({lines: this.draft.lines.map((other, at) => (at === number ? {...other, [name]: event.detail} : other))});
    return html`<div class="line" role="group" aria-label=${say('orders.lineOf', {count: number + 1})}>
      <s-field needed path="lines[${number}].piece" label=${say('orders.piece')} .value=${line.piece} .options=${studio.book.pieces.map(({id, name}) => ({value: id, label: name}))} @value=${set('piece')}></s-field>
      <s-field needed kind="whole" least="1" path="lines[${number}].quantity" label=${say('orders.quantity')} .value=${line.quantity} @value=${set('quantity')}></s-field>
      <s-field plain kind="money" least="0" path="lines[${number}].price" label=${say('orders.price')} .value=${line.price} @value=${set('price')}></s-field>
      <button type="button" aria-label=${say('orders.dropLine', {count: number + 1})} ?disabled=${this.draft.lines.length === 1}
        @click=${() => this.#change({lines: this.draft.lines.filter((_, at) => at !== number)})}>${say('parts.remove')}</button></div>`;
  }

  #add() {
    this.#change({lines: [...this.draft.lines, {piece: studio.book.pieces[0]?.id, quantity: 1}]});
  }

  #fate() {
    const {fate} = this;
    if (!this.order) {
      return '';
    }
    if (!fate?.outcome) {
      return html`<s-say>${say('orders.notPlanned')}<a slot="out" href="/week">${say('orders.toWeek')}</a></s-say>`;
    }
    return html`<s-say kind=${fate.late > 0 ? 'late' : 'ready'}>${fate.late > 0
      ? say('orders.oneLate', {by: showMinutes(fate.late), at: showMoment(fate.outcome.ready)})
      : say('orders.oneReady', {spare: showMinutes(fate.spare), at: showMoment(fate.outcome.ready)})}</s-say>
      ${fate.outcome.because?.length > 0 ? html`<ul class="because">${fate.outcome.because.map(reason => html`<li>${reason}</li>`)}</ul>` : ''}`;
  }

  #saved(event) {
    tell(event.detail === 'kept' ? say('parts.kept') : say('orders.saved', {order: this.draft.id}), event.detail !== 'kept');
    address.go(link('/orders'));
  }

  async #remove() {
    try {
      await studio.remove('orders', this.order);
      tell(say('orders.removed', {order: this.order.id}), true);
      address.go('/orders');
    } catch (refused) {
      tell(refused.message);
    }
  }
}

customElements.define('s-order-edit', OrderEdit);
