import {Room, html} from '../../parts/room.js';
import {css, nothing} from 'lit';
import {studio} from '../../app/studio.js';
import {address, link} from '../../app/address.js';
import {say, nameOf} from '../../app/words.js';
import {showMoney} from '../../app/money.js';
import {showPercent} from '../../app/numbers.js';
import {showMinutes} from '../../app/times.js';
import {saveAs, get} from '../../app/service.js';
import {tell} from '../../parts/undo.js';
import {Figures} from './figures.js';
import {sale} from './sale.js';
import '../../parts/field.js';
import '../../parts/say.js';
import '../../parts/states.js';
import '../../parts/table.js';
import './piece.js';

const MARGIN = 30;

/** What every piece costs and brings, and for each piece what to ask. */
class Prices extends Room {

  static styles = [...Room.styles, css`
    .asked { display: flex; flex-wrap: wrap; gap: var(--s3) var(--s4); align-items: start; margin-block-end: var(--s4); }
    .asked s-field { max-width: 15rem; }
    .paper { display: none; }
    @media print { .paper { display: block; } .overview { display: none; } }
  `];

  #figures = new Figures(this);

  get #state() {
    const {channel, margin, ending, basis} = address.state;
    return {
      channel: studio.find('channels', channel) ?? studio.book.channels[0],
      margin: number(margin, MARGIN, 0, 99.9),
      ending: number(ending, 0, 0, 1e6),
      basis: basis === 'planned' && studio.plan ? 'planned' : 'standard',
    };
  }

  get title() {
    const [piece] = address.rest;
    return piece && studio.book ? say('prices.of', {piece: nameOf(studio.book.pieces, piece)}) : super.title;
  }

  actions() {
    const [piece] = address.rest;
    return piece
      ? html`<a class="button" href=${link('/prices', address.state)}>${say('prices.all')}</a>`
      : html`<button @click=${() => window.print()}>${say('prices.print')}</button>
        <button @click=${() => this.#save('pdf')}>${say('prices.savePdf')}</button>
        <button @click=${() => this.#save('csv')}>${say('prices.saveCsv')}</button>`;
  }

  async #save(kind) {
    try {
      const {body} = await get(`/api/price-list.${kind}`, {as: 'blob'});
      saveAs(body, `price-list.${kind}`);
    } catch (refused) {
      tell(refused.message);
    }
  }

  content() {
    if (!studio.book) {
      return html`<s-busy></s-busy>`;
    }
    if (studio.book.pieces.length === 0) {
      return html`<s-empty heading=${say('prices.noPieces')}><p>${say('prices.noPiecesText')}</p>
        <a slot="out" class="button do" href="/shelf/pieces">${say('prices.toShelf')}</a></s-empty>`;
    }
    if (studio.book.channels.length === 0) {
      return html`<s-empty heading=${say('prices.noChannels')}><p>${say('prices.noChannelsText')}</p>
        <a slot="out" class="button do" href="/shelf/channels">${say('prices.toChannels')}</a></s-empty>`;
    }
    this.#figures.want(this.#state);
    if (this.#figures.trouble) {
      return html`<s-trouble .problem=${this.#figures.trouble} @again=${() => this.#figures.again()}></s-trouble>`;
    }
    if (!this.#figures.standard) {
      return html`<s-busy></s-busy>`;
    }
    const [piece] = address.rest;
    return piece ? this.#piece(piece) : this.#overview();
  }

  #piece(id) {
    const piece = studio.find('pieces', id);
    return piece && this.#figures.cost(id)
      ? html`<s-price-piece .piece=${piece} .figures=${this.#figures} .asked=${this.#state}></s-price-piece>`
      : html`<s-empty heading=${say('prices.nowhere', {piece: id})}><a slot="out" href="/prices">${say('prices.all')}</a></s-empty>`;
  }

  #overview() {
    const rows = this.#rows();
    return html`<div class="overview">${this.#sentence(rows)}${this.#unpaid()}${this.#asked()}
      <s-table label=${say('rooms.prices')} .rows=${rows} .columns=${this.#columns()} sort=${address.state.sort ?? ''}
        .styleRow=${row => (row.price !== null && row.profit < 0 ? 'late' : '')}
        @sort=${event => address.setState({sort: event.detail})}></s-table></div>
      ${this.#paper(rows)}`;
  }

  // A new studio's wage is nothing until somebody says it, and then no price holds any of the work.
  #unpaid() {
    return studio.book.studio.wagePerHour > 0 ? '' : html`<s-say kind="care">${say('prices.unpaid')}
      <a slot="out" href="/settings">${say('prices.toWage')}</a></s-say>`;
  }

  #rows() {
    const {channel, basis} = this.#state;
    return studio.book.pieces.map(piece => {
      const cost = this.#figures.cost(piece.id, basis);
      const price = piece.price ?? null;
      const suggested = cost.channels.find(one => one.channel === channel.id)?.suggested ?? null;
      return {piece, cost, price, suggested, ...(price === null ? {} : sale(cost, channel, price))};
    });
  }

  // What a person would ask first: is anything sold for less than it costs, or than was wanted?
  #sentence(rows) {
    const {channel, margin} = this.#state;
    const priced = rows.filter(row => row.price !== null);
    const losing = priced.filter(row => row.profit < 0);
    const thin = priced.filter(row => row.profit >= 0 && row.marginPercent < margin);
    const worst = [...(losing.length ? losing : thin)].sort((one, other) => one.marginPercent - other.marginPercent)[0];
    const what = losing.length ? 'losing' : thin.length ? 'thin' : priced.length ? 'fine' : 'unpriced';
    return html`<s-say kind=${{losing: 'late', thin: 'care', fine: 'ready'}[what] ?? nothing}>${say(`prices.${what}`, {
      count: losing.length || thin.length || priced.length, all: priced.length, margin: showPercent(margin),
      channel: channel.name, worst: worst?.piece.name ?? '', amount: worst ? showMoney(Math.abs(worst.profit)) : '',
    })}${worst ? html`<a slot="out" href=${this.#link(worst.piece.id)}>${say('prices.lookAt', {piece: worst.piece.name})}</a>` : ''}</s-say>`;
  }

  #asked() {
    const {channel, margin, ending, basis} = this.#state;
    const set = name => event => address.setState({[name]: event.detail ?? undefined});
    return html`<div class="asked screen">
      <s-field label=${say('prices.channel')} needed .value=${channel.id} .options=${studio.book.channels.map(({id, name}) => ({value: id, label: name}))} @value=${set('channel')}></s-field>
      <s-field needed short label=${say('prices.margin')} kind="percent" least="0" most="99" .value=${margin} @value=${set('margin')}></s-field>
      <s-field needed short label=${say('prices.ending')} kind="money" least="0" hint=${say('prices.endingHint')} .value=${ending} @value=${set('ending')}></s-field>
      ${studio.plan ? html`<s-field label=${say('prices.basis')} needed .value=${basis} .options=${['standard', 'planned'].map(value => ({value, label: say(`prices.${value}`)}))} @value=${set('basis')}></s-field>` : ''}
    </div>`;
  }

  #link(id) {
    return link(['prices', id], address.state);
  }

  #columns() {
    return [
      {name: 'piece', label: say('prices.piece'), by: row => row.piece.name, show: row => html`<a href=${this.#link(row.piece.id)}>${row.piece.name}</a>`},
      {name: 'minutes', label: say('prices.hands'), number: true, by: row => row.cost.minutes, show: row => showMinutes(row.cost.minutes)},
      {name: 'cost', label: say('prices.full'), number: true, by: row => row.cost.full, show: row => showMoney(row.cost.full)},
      {name: 'price', label: say('prices.price'), number: true, by: row => row.price, show: row => (row.price === null ? say('prices.none') : showMoney(row.price))},
      {name: 'left', label: say('prices.left'), number: true, by: row => row.profit, show: row => (row.price === null ? '–' : row.profit < 0 ? html`<span class="late">${say('prices.lost', {amount: showMoney(-row.profit)})}</span>` : showMoney(row.profit))},
      {name: 'margin', label: say('prices.marginShort'), number: true, by: row => row.marginPercent, show: row => showPercent(row.marginPercent)},
      {name: 'hour', label: say('prices.hour'), number: true, by: row => row.earnedPerHour, show: row => showMoney(row.earnedPerHour)},
      {name: 'ask', label: say('prices.ask', {margin: showPercent(this.#state.margin)}), number: true, by: row => row.suggested, show: row => (row.suggested === null ? say('prices.cannot') : showMoney(row.suggested))},
    ];
  }

  // What a buyer reads: no costs on it.
  #paper(rows) {
    return html`<div class="paper"><h2>${studio.book.studio.name}</h2><table>
      <caption class="unseen">${say('prices.list')}</caption>
      <thead><tr><th scope="col">${say('prices.piece')}</th><th scope="col" class="number">${say('prices.price')}</th></tr></thead>
      <tbody>${rows.filter(row => row.price !== null).map(row => html`<tr><td>${row.piece.name}</td><td class="number">${showMoney(row.price)}</td></tr>`)}</tbody></table></div>`;
  }
}

function number(text, usual, least, most) {
  const value = Number(text ?? NaN);
  return Number.isFinite(value) ? Math.min(most, Math.max(least, value)) : usual;
}

customElements.define('s-room-prices', Prices);
