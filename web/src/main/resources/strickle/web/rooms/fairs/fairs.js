import {Room, html} from '../../parts/room.js';
import {studio} from '../../app/studio.js';
import {address, link} from '../../app/address.js';
import {say, nameOf} from '../../app/words.js';
import {showMoney} from '../../app/money.js';
import {moment, showAgo, showMoment} from '../../app/times.js';
import {ownOrders} from './build.js';
import '../../parts/say.js';
import '../../parts/states.js';
import '../../parts/table.js';
import './demand.js';
import './plan.js';

/** The fairs to come, and what to bring to each. */
class Fairs extends Room {

  get #id() {
    return address.rest[0];
  }

  get #fair() {
    return this.#id && this.#id !== 'new' ? studio.find('fairs', this.#id) : null;
  }

  get title() {
    if (this.#id === 'new') {
      return say('fairs.new');
    }
    return studio.book && this.#fair ? this.#fair.name : super.title;
  }

  actions() {
    if (!studio.book || this.#cannot) {
      return '';
    }
    if (!this.#id) {
      return html`<a class="button do" href="/fairs/new">${say('fairs.new')}</a>`;
    }
    return html`${this.#fair && address.rest[1] !== 'edit' ? html`<a class="button" href=${link(['fairs', this.#id, 'edit'])}>${say('fairs.edit')}</a>` : ''}
      <a class="button" href="/fairs">${say('fairs.all')}</a>`;
  }

  get #cannot() {
    return studio.book.pieces.length === 0 || studio.book.channels.length === 0;
  }

  content() {
    if (!studio.book) {
      return html`<s-busy></s-busy>`;
    }
    if (this.#cannot) {
      return html`<s-empty heading=${say('fairs.cannot')}><p>${say('fairs.cannotText')}</p><a slot="out" class="button do" href="/shelf">${say('fairs.toShelf')}</a></s-empty>`;
    }
    if (this.#id === 'new') {
      return html`<s-fair-edit></s-fair-edit>`;
    }
    if (this.#id) {
      return this.#one();
    }
    return studio.book.fairs.length === 0
      ? html`<s-empty heading=${say('fairs.none')}><p>${say('fairs.noneText')}</p><a slot="out" class="button do" href="/fairs/new">${say('fairs.new')}</a></s-empty>`
      : this.#list();
  }

  #one() {
    const fair = this.#fair;
    if (!fair) {
      return html`<s-empty heading=${say('fairs.nowhere', {fair: this.#id})}><a slot="out" class="button" href="/fairs">${say('fairs.all')}</a></s-empty>`;
    }
    return address.rest[1] === 'edit'
      ? html`<s-fair-edit .fair=${fair}></s-fair-edit>`
      : html`<s-say>${say('fairs.opensAt', {at: showMoment(fair.opens), ago: showAgo(fair.opens), channel: nameOf(studio.book.channels, fair.channel), table: showMoney(fair.tableCost)})}</s-say>
        ${this.#demand(fair)}<s-fair-plan .fair=${fair}></s-fair-plan>`;
  }

  #demand({demand}) {
    return html`<s-table label=${say('fairs.demand')} .rows=${demand} .columns=${[
      {name: 'piece', label: say('fairs.piece'), show: one => nameOf(studio.book.pieces, one.piece)},
      ...['low', 'likely', 'high'].map(name => ({name, label: say(`fairs.${name}`), number: true, show: one => one[name]})),
      {name: 'price', label: say('fairs.price'), number: true, show: one => showMoney(one.price ?? studio.find('pieces', one.piece)?.price)},
    ]}></s-table>`;
  }

  #list() {
    const fairs = [...studio.book.fairs].sort((one, other) => moment(one.opens) - moment(other.opens));
    const next = fairs.find(({opens}) => moment(opens) > Date.now());
    return html`<s-say>${next ? say('fairs.next', {fair: next.name, at: showMoment(next.opens), ago: showAgo(next.opens)}) : say('fairs.past')}
      ${next ? html`<a slot="out" href=${link(['fairs', next.id])}>${say('fairs.whatToBring')}</a>` : ''}</s-say>
      <s-table label=${say('rooms.fairs')} .rows=${fairs} .columns=${[
        {name: 'name', label: say('fairs.fair'), show: fair => html`<a href=${link(['fairs', fair.id])}>${fair.name}</a>`},
        {name: 'opens', label: say('fairs.field_opens'), show: fair => showMoment(fair.opens)},
        {name: 'table', label: say('fairs.field_tableCost'), number: true, show: fair => showMoney(fair.tableCost)},
        {name: 'channel', label: say('fairs.field_channel'), show: fair => nameOf(studio.book.channels, fair.channel)},
        {name: 'plan', label: say('fairs.planned'), show: fair => say(ownOrders(fair, studio.book.orders).length > 0 ? 'parts.yes' : 'parts.no')},
      ]}></s-table>`;
  }
}

customElements.define('s-room-fairs', Fairs);
