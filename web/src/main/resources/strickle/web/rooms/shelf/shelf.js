import {Room, html} from '../../parts/room.js';
import {css} from 'lit';
import {studio} from '../../app/studio.js';
import {address, link} from '../../app/address.js';
import {say, nameOf} from '../../app/words.js';
import {showMoney} from '../../app/money.js';
import {showNumber} from '../../app/numbers.js';
import {showMaterial, showVolume} from '../../app/units.js';
import {LISTS} from './fields.js';
import '../../parts/say.js';
import '../../parts/states.js';
import '../../parts/table.js';
import './edit.js';

/** What the studio owns and makes: pieces, moulds, forms, mixes, materials, people, racks, channels. */
class Shelf extends Room {

  static styles = [...Room.styles, css`
    .lists { display: grid; grid-template-columns: repeat(auto-fill, minmax(min(15rem, 100%), 1fr)); gap: var(--s3); padding: 0; list-style: none; }
    .lists a { display: block; padding: var(--s3) var(--s4); border: var(--border) solid var(--line); background: var(--lime-2); color: inherit; text-decoration: none; border-radius: var(--corner); min-height: 100%; }
    .lists a:hover { border-color: var(--slate); }
    .lists strong { display: block; font-family: var(--head); font-size: var(--t3); }
  `];

  get #list() {
    const [list] = address.rest;
    return LISTS.includes(list) || list === 'studio' ? list : '';
  }

  get #thing() {
    return this.#list === 'studio' ? studio.book?.studio : studio.book && address.rest[1] && address.rest[1] !== 'new' ? studio.find(this.#list, address.rest[1]) : null;
  }

  get title() {
    const list = this.#list;
    if (!list) {
      return super.title;
    }
    if (address.rest[1] === 'new') {
      return say(`shelf.new.${list}`);
    }
    return this.#thing?.name && list !== 'studio' ? this.#thing.name : say(`shelf.lists.${list}`);
  }

  actions() {
    const list = this.#list;
    if (!studio.book || !list) {
      return '';
    }
    return html`${address.rest[1] || list === 'studio' ? '' : html`<a class="button do" href=${link(['shelf', list, 'new'])}>${say(`shelf.new.${list}`)}</a>`}
      <a class="button" href=${address.rest[1] ? link(['shelf', list]) : '/shelf'}>${address.rest[1] ? say(`shelf.lists.${list}`) : say('rooms.shelf')}</a>`;
  }

  content() {
    if (!studio.book) {
      return html`<s-busy></s-busy>`;
    }
    const list = this.#list;
    if (!list) {
      return this.#all();
    }
    if (address.rest[1] === 'new' || list === 'studio') {
      return html`<s-shelf-edit .collection=${list} .thing=${list === 'studio' ? studio.book.studio : undefined}></s-shelf-edit>`;
    }
    if (address.rest[1]) {
      return this.#thing
        ? html`<s-shelf-edit .collection=${list} .thing=${this.#thing}></s-shelf-edit>`
        : html`<s-empty heading=${say('shelf.nowhere', {id: address.rest[1]})}><a slot="out" class="button" href=${link(['shelf', list])}>${say(`shelf.lists.${list}`)}</a></s-empty>`;
    }
    return this.#table(list);
  }

  #all() {
    const many = (word, collection) => say(word, {count: studio.book[collection].length});
    return html`<s-say>${say('shelf.sentence', {pieces: many('shelf.sentencePieces', 'pieces'), moulds: many('shelf.sentenceMoulds', 'moulds'), mixes: many('shelf.sentenceMixes', 'mixes')})}</s-say>
      <ul class="lists">${[...LISTS, 'studio'].map(list => html`<li><a href=${link(['shelf', list])}><strong>${say(`shelf.lists.${list}`)}</strong>
        <span>${list === 'studio' ? studio.book.studio.name : say('shelf.count', {count: studio.book[list].length})}</span><br><small>${say(`shelf.about.${list}`)}</small></a></li>`)}</ul>`;
  }

  #table(list) {
    const things = studio.book[list];
    return things.length === 0
      ? html`<s-empty heading=${say('shelf.none')}><p>${say(`shelf.about.${list}`)}</p><a slot="out" class="button do" href=${link(['shelf', list, 'new'])}>${say(`shelf.new.${list}`)}</a></s-empty>`
      : html`<s-table label=${say(`shelf.lists.${list}`)} .rows=${things} sort=${address.state.sort ?? ''} @sort=${event => address.setState({sort: event.detail})}
        .columns=${[{name: 'name', label: say('shelf.f.name'), by: one => one.name, show: one => html`<a href=${link(['shelf', list, one.id])}>${one.name}</a>`}, ...this.#columns(list)]}></s-table>`;
  }

  #columns(list) {
    const {book} = studio;
    const column = (name, by, show = by, more = {}) => ({name, label: say(`shelf.f.${name}`), by, show, ...more});
    const number = (name, by, show = by) => column(name, by, show, {number: true});
    return {
      pieces: () => [column('mould', one => nameOf(book.moulds, one.mould)), column('mix', one => nameOf(book.mixes, one.mix)), number('onHand', one => one.onHand ?? 0), number('price', one => one.price ?? null, one => (one.price === undefined ? '–' : showMoney(one.price)))],
      moulds: () => [column('forms', one => one.forms.map(({form, count}) => `${count > 1 ? `${count} × ` : ''}${nameOf(book.forms, form)}`).join(', ')), number('cavities', one => one.cavities), number('volumeMl', one => one.volumeMl ?? null, one => (one.volumeMl ? showVolume(one.volumeMl) : say('shelf.fromShape'))), number('setHours', one => one.setHours)],
      forms: () => [number('count', one => one.count), number('costEach', one => one.costEach, one => showMoney(one.costEach)), number('lifeCastings', one => one.lifeCastings)],
      mixes: () => [column('dry', one => one.dry.map(({material, parts}) => `${showNumber(parts)} ${nameOf(book.materials, material)}`).join(', ')), number('workingMinutes', one => one.workingMinutes)],
      materials: () => [column('kind', one => one.kind), number('onHand', one => one.onHand ?? 0, one => showMaterial(one.onHand ?? 0, one.unit)), number('pack', one => one.pack.quantity, one => showMaterial(one.pack.quantity, one.unit)), number('packPrice', one => one.pack.price, one => showMoney(one.pack.price)), number('leadDays', one => one.leadDays ?? 0)],
      people: () => [column('hours', one => Object.entries(one.hours ?? {}).map(([day, windows]) => `${say(`shelf.days.${day}`)} ${windows.join(', ')}`).join('; '))],
      stations: () => [number('places', one => one.places)],
      channels: () => [number('percentFee', one => one.percentFee ?? 0, one => `${showNumber(one.percentFee ?? 0)} %`), number('fixedFee', one => one.fixedFee ?? 0, one => showMoney(one.fixedFee ?? 0)), number('discountPercent', one => one.discountPercent ?? 0, one => `${showNumber(one.discountPercent ?? 0)} %`)],
    }[list]();
  }
}

customElements.define('s-room-shelf', Shelf);
