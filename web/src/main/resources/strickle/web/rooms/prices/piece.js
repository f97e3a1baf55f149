import {LitElement, css, html, nothing} from 'lit';
import {live} from 'lit/directives/live.js';
import {sheet} from '../../parts/sheet.js';
import {studio} from '../../app/studio.js';
import {address} from '../../app/address.js';
import {say} from '../../app/words.js';
import {minorDigits, showMoney} from '../../app/money.js';
import {showPercent} from '../../app/numbers.js';
import {showMinutes} from '../../app/times.js';
import {tell} from '../../parts/undo.js';
import {breakEven, byKind, priceFor, sale} from './sale.js';
import '../../parts/field.js';
import '../../parts/say.js';
import './stack.js';
import './comparison.js';
import './target.js';
import './sensitivity.js';

/** One piece: what its price is made of, and what another price would do. */
class Piece extends LitElement {

  static properties = {piece: {attribute: false}, figures: {attribute: false}, asked: {attribute: false}, sliding: {state: true}, trouble: {state: true}};

  static styles = [sheet, css`
    section { margin-block-start: var(--s5); }
    section > h2 { margin-block-end: var(--s3); }
    .price { display: grid; grid-template-columns: minmax(9rem, 12rem) minmax(12rem, 1fr) auto; gap: var(--s3) var(--s4); align-items: end; margin-block-end: var(--s3); }
    input[type="range"] { width: 100%; min-height: var(--touch); margin: 0; accent-color: var(--terracotta); }
    .slider label { display: block; font-size: var(--t1); color: var(--slate-2); }
    .figures { display: grid; grid-template-columns: repeat(auto-fit, minmax(10rem, 1fr)); gap: var(--s3); margin: var(--s4) 0; }
    .figures div { border-inline-start: var(--post) solid var(--line); padding-inline-start: var(--s3); }
    .figures dt { font-size: var(--t1); color: var(--slate-2); }
    .figures dd { margin: 0; font-size: var(--t4); font-variant-numeric: var(--figures); }
    details { margin-block-start: var(--s4); }
    summary { cursor: pointer; min-height: 28px; font-weight: 600; }
    .asked { display: flex; flex-wrap: wrap; gap: var(--s3) var(--s4); align-items: end; margin-block: var(--s4); }
    .asked s-field { max-width: 15rem; }
    @media (max-width: 40rem) { .price { grid-template-columns: 1fr; } }
  `];

  constructor() {
    super();
    this.sliding = null;
    this.trouble = null;
  }

  get #cost() {
    return this.figures.cost(this.piece.id, this.asked.basis);
  }

  get #price() {
    if (this.sliding !== null) {
      return this.sliding;
    }
    const asked = Number(address.state.price ?? NaN);
    const usual = this.piece.price ?? this.#cost.channels.find(one => one.channel === this.asked.channel.id)?.suggested;
    return Number.isFinite(asked) && asked > 0 ? asked : usual ?? this.#cost.full * 1.5;
  }

  // From a little under the cost to well over what is asked, in steps of one unit of the currency.
  get #range() {
    const top = Math.max(this.#cost.full, this.piece.price ?? 0, priceFor(this.#cost, this.asked.channel, this.asked.margin) || 0, this.#price);
    const step = top < 20 ? 10 ** -Math.min(1, minorDigits()) : 1;
    return {least: step, most: Math.ceil((top * 1.6) / step) * step, step};
  }

  #set(price) {
    address.setState({price: Number.isFinite(price) && price > 0 ? Number(price.toFixed(minorDigits())) : undefined});
  }

  // The address follows when the hand lets go; a browser takes only so many new addresses a second.
  #slid(event) {
    this.sliding = null;
    this.#set(event.target.valueAsNumber);
  }

  render() {
    const price = this.#price;
    const cost = this.#cost;
    const found = sale(cost, this.asked.channel, price);
    return html`${this.#sentence(price, found)}${this.#choices()}
      <section aria-labelledby="price"><h2 id="price">${say('prices.ofPrice')}</h2>
        ${this.#slider(price)}
        <s-price-stack .parts=${[...byKind(cost), {kind: 'takes', amount: found.takes}, {kind: 'left', amount: found.profit}]} .whole=${price}></s-price-stack>
        ${this.#figures(found, cost)}${this.#lines(cost)}</section>
      <section><h2>${say('prices.sideBySide')}</h2>${this.#channels(price, cost)}</section>
      ${cost.comparison || this.#compared ? html`<section aria-labelledby="compared"><h2 id="compared">${say('prices.compared')}</h2>
        <s-price-comparison .cost=${this.#compared}></s-price-comparison></section>` : ''}
      <section aria-labelledby="target"><h2 id="target">${say('prices.target')}</h2>
        <s-price-target .piece=${this.piece} .asked=${this.asked} .price=${price}></s-price-target></section>
      <section aria-labelledby="moves"><h2 id="moves">${say('prices.moves')}</h2>
        <s-price-sensitivity .piece=${this.piece} .asked=${this.asked} .price=${price}></s-price-sensitivity></section>`;
  }

  get #compared() {
    return this.figures.planned?.pieces.find(one => one.piece === this.piece.id && one.comparison);
  }

  #sentence(price, {profit, marginPercent, earnedPerHour}) {
    const kind = profit < 0 ? 'late' : marginPercent < this.asked.margin ? 'care' : 'ready';
    const words = {price: showMoney(price), channel: this.asked.channel.name, amount: showMoney(Math.abs(profit)),
      margin: showPercent(marginPercent), wanted: showPercent(this.asked.margin), hour: showMoney(earnedPerHour)};
    const set = this.piece.price !== price;
    return html`<s-say kind=${kind}>${say(`prices.one.${kind}`, words)}
      ${set ? html`<button slot="out" class="do" @click=${() => this.#keep(price)}>${say('prices.askThis', {price: showMoney(price)})}</button>` : ''}</s-say>
      ${this.trouble ? html`<s-trouble .problem=${this.trouble} @again=${() => this.#keep(price)}></s-trouble>` : ''}`;
  }

  async #keep(price) {
    this.trouble = null;
    const was = this.piece;
    try {
      await studio.put('pieces', {...was, price}, was);
      address.setState({price: undefined});
      tell(say('prices.kept', {piece: was.name, price: showMoney(price)}), true);
    } catch (refused) {
      this.trouble = refused;
    }
  }

  #choices() {
    const {channel, margin, basis} = this.asked;
    const set = name => event => address.setState({[name]: event.detail ?? undefined});
    return html`<div class="asked screen">
      <s-field needed label=${say('prices.channel')} .value=${channel.id} .options=${studio.book.channels.map(({id, name}) => ({value: id, label: name}))} @value=${set('channel')}></s-field>
      <s-field needed short kind="percent" least="0" most="99" label=${say('prices.margin')} .value=${margin} @value=${set('margin')}></s-field>
      ${this.#compared ? html`<s-field needed label=${say('prices.basis')} .value=${basis} .options=${['standard', 'planned'].map(value => ({value, label: say(`prices.${value}`)}))} @value=${set('basis')}></s-field>` : ''}
    </div>`;
  }

  #slider(price) {
    const {least, most, step} = this.#range;
    return html`<div class="price screen">
      <s-field needed kind="money" label=${say('prices.price')} least=${least} .value=${price} @value=${event => this.#set(event.detail)}></s-field>
      <div class="slider"><label for="slider">${say('prices.slide')}</label>
        <input id="slider" type="range" min=${least} max=${most} step=${step} .value=${live(String(price))} aria-valuetext=${showMoney(price)}
          @input=${event => (this.sliding = event.target.valueAsNumber)} @change=${this.#slid}></div>
      ${address.state.price === undefined || this.piece.price === undefined ? '' : html`<button @click=${() => address.setState({price: undefined})}>${say('prices.back', {price: showMoney(this.piece.price)})}</button>`}
    </div>`;
  }

  #figures(found, cost) {
    const even = breakEven(cost, this.asked.channel);
    const suggested = priceFor(cost, this.asked.channel, this.asked.margin);
    const figures = [
      ['left', showMoney(found.profit), found.profit < 0],
      ['marginShort', showPercent(found.marginPercent), found.profit < 0],
      ['hour', showMoney(found.earnedPerHour), false],
      ['even', Number.isFinite(even) ? showMoney(even) : say('prices.cannot'), false],
      ['for', Number.isFinite(suggested) ? showMoney(suggested) : say('prices.cannot'), false],
    ];
    return html`<dl class="figures" aria-live="off">${figures.map(([name, text, late]) => html`<div>
      <dt>${say(`prices.${name}`, {margin: showPercent(this.asked.margin)})}</dt><dd class=${late ? 'late' : nothing}>${text}</dd></div>`)}</dl>`;
  }

  #lines(cost) {
    return html`<details><summary>${say('prices.lineByLine', {amount: showMoney(cost.full), minutes: showMinutes(cost.minutes)})}</summary>
      <table><caption class="unseen">${say('prices.lineByLine', {amount: showMoney(cost.full), minutes: showMinutes(cost.minutes)})}</caption>
        <thead><tr><th scope="col">${say('prices.what')}</th><th scope="col">${say('prices.kind')}</th><th scope="col" class="number">${say('prices.amount')}</th></tr></thead>
        <tbody>${cost.lines.map(line => html`<tr><th scope="row">${line.what}</th><td>${say(`prices.parts.${line.kind}`)}</td><td class="number">${showMoney(line.amount)}</td></tr>`)}</tbody></table></details>`;
  }

  #channels(price, cost) {
    return html`<div class="scroll" tabindex="0" role="region" aria-label=${say('prices.sideBySide')}><table><caption class="unseen">${say('prices.sideBySide')}</caption>
      <thead><tr><th scope="col">${say('prices.channel')}</th>${['paid', 'net', 'left', 'marginShort', 'hour', 'even', 'for'].map(name => html`<th scope="col" class="number">${say(`prices.${name}`, {margin: showPercent(this.asked.margin)})}</th>`)}</tr></thead>
      <tbody>${studio.book.channels.map(channel => {
        const found = sale(cost, channel, price);
        const money = value => html`<td class="number ${value < 0 ? 'late' : ''}">${Number.isFinite(value) ? showMoney(value) : say('prices.cannot')}</td>`;
        return html`<tr><th scope="row">${channel.name}</th>${money(found.paid)}${money(found.net)}${money(found.profit)}
          <td class="number">${showPercent(found.marginPercent)}</td>${money(found.earnedPerHour)}${money(breakEven(cost, channel))}${money(priceFor(cost, channel, this.asked.margin))}</tr>`;
      })}</tbody></table></div>`;
  }
}

customElements.define('s-price-piece', Piece);
