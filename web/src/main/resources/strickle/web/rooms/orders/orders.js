import {Room, html} from '../../parts/room.js';
import {css} from 'lit';
import {studio} from '../../app/studio.js';
import {address, link} from '../../app/address.js';
import {ask, get, saveAs} from '../../app/service.js';
import {say, sayList, nameOf} from '../../app/words.js';
import {showMoney} from '../../app/money.js';
import {moment, showMinutes, showMoment} from '../../app/times.js';
import {tell} from '../../parts/undo.js';
import {fates, worth} from './outcomes.js';
import '../../parts/say.js';
import '../../parts/states.js';
import '../../parts/table.js';
import './edit.js';

/** What is owed to whom, late ones first, each with its reason. */
class Orders extends Room {

  static properties = {imported: {state: true}};

  static styles = [...Room.styles, css`
    .late-ones { display: grid; gap: var(--s3); margin-block: var(--s4); }
    .late-ones article { border-inline-start: var(--post) solid var(--oxide); padding-inline-start: var(--s3); }
    .late-ones h2 { font-size: var(--t3); }
    input[type="file"] { position: absolute; width: 1px; height: 1px; opacity: 0; }
  `];

  constructor() {
    super();
    this.imported = null;
  }

  get #open() {
    return address.rest[0];
  }

  get title() {
    if (this.#open === 'new') {
      return say('orders.new');
    }
    return this.#open ? say('orders.of', {order: this.#open}) : super.title;
  }

  actions() {
    if (!studio.book || studio.book.pieces.length === 0) {
      return '';
    }
    return this.#open
      ? html`<a class="button" href="/orders">${say('orders.all')}</a>`
      : html`<button @click=${() => this.renderRoot.querySelector('input').click()}>${say('orders.import')}</button>
        <button @click=${this.#export}>${say('orders.export')}</button>
        <a class="button do" href="/orders/new">${say('orders.new')}</a>
        <input type="file" accept=".csv,text/csv" tabindex="-1" aria-label=${say('orders.import')} @change=${this.#import}>`;
  }

  async #export() {
    try {
      saveAs((await get('/api/orders.csv', {as: 'blob'})).body, 'orders.csv');
    } catch (refused) {
      tell(refused.message);
    }
  }

  async #import(event) {
    const [file] = event.target.files;
    event.target.value = '';
    if (!file) {
      return;
    }
    try {
      const {tag} = await get('/api/book');
      const {body} = await ask('POST', '/api/orders.csv?keepGood=true', {body: await file.text(), type: 'text/csv', tag});
      this.imported = {file: file.name, ...body};
      await studio.refresh();
    } catch (refused) {
      this.imported = {file: file.name, problem: refused};
    }
  }

  content() {
    if (!studio.book) {
      return html`<s-busy></s-busy>`;
    }
    if (studio.book.pieces.length === 0) {
      return html`<s-empty heading=${say('orders.noPieces')}><p>${say('orders.noPiecesText')}</p><a slot="out" class="button do" href="/shelf/pieces">${say('orders.toShelf')}</a></s-empty>`;
    }
    if (this.#open) {
      return this.#one();
    }
    const all = fates();
    return html`${this.#imported()}${all.length === 0
      ? html`<s-empty heading=${say('orders.none')}><p>${say('orders.noneText')}</p><a slot="out" class="button do" href="/orders/new">${say('orders.new')}</a></s-empty>`
      : html`${this.#sentence(all)}${this.#lateOnes(all)}
        <s-table label=${say('rooms.orders')} .rows=${all} .columns=${this.#columns()} sort=${address.state.sort ?? ''}
          .styleRow=${fate => (fate.late > 0 ? 'late' : '')} @sort=${event => address.setState({sort: event.detail})}></s-table>`}`;
  }

  #one() {
    if (this.#open === 'new') {
      return html`<s-order-edit></s-order-edit>`;
    }
    const order = studio.find('orders', this.#open);
    return order
      ? html`<s-order-edit .order=${order} .fate=${fates().find(fate => fate.order === order)}></s-order-edit>`
      : html`<s-empty heading=${say('orders.nowhere', {order: this.#open})}><a slot="out" class="button" href="/orders">${say('orders.all')}</a></s-empty>`;
  }

  #sentence(all) {
    const late = all.filter(fate => fate.late > 0);
    const unknown = all.filter(fate => !fate.outcome);
    if (!studio.plan || unknown.length === all.length) {
      return html`<s-say>${say('orders.unplanned', {count: all.length})}<a slot="out" href="/week">${say('orders.toWeek')}</a></s-say>`;
    }
    return html`<s-say kind=${late.length > 0 ? 'late' : unknown.length > 0 ? 'care' : 'ready'}>${late.length > 0
      ? say('orders.someLate', {count: late.length, all: all.length, order: late[0].order.id, by: showMinutes(late[0].late)})
      : say('orders.allInTime', {count: all.length - unknown.length})}
      ${unknown.length > 0 ? say('orders.someUnknown', {count: unknown.length}) : ''}
      <a slot="out" href=${late.length > 0 ? '/what-if' : '/week'}>${say(late.length > 0 ? 'orders.whatWouldHelp' : 'orders.toWeek')}</a></s-say>`;
  }

  #lateOnes(all) {
    const late = all.filter(({late: by, outcome}) => by > 0 && outcome.because?.length > 0);
    return late.length === 0 ? '' : html`<div class="late-ones">${late.map(({order, outcome, late: by}) => html`<article>
      <h2><a href=${link(['orders', order.id])}>${order.id}</a>, ${order.for || say('orders.nobodyNamed')}: <span class="late">${say('orders.lateBy', {by: showMinutes(by)})}</span></h2>
      <ul>${outcome.because.map(reason => html`<li>${reason}</li>`)}</ul></article>`)}</div>`;
  }

  #imported() {
    const {imported} = this;
    if (!imported) {
      return '';
    }
    if (imported.problem) {
      return html`<s-trouble heading=${say('orders.importFailed', {file: imported.file})} .problem=${imported.problem} @again=${() => (this.imported = null)}></s-trouble>`;
    }
    const faults = imported.faults ?? [];
    return html`<s-say kind=${faults.length > 0 ? 'care' : 'ready'}>${say('orders.importedSome', {count: imported.added + imported.changed, file: imported.file})}
      ${faults.length > 0 ? html`<ul>${faults.map(fault => html`<li>${fault.path}: ${say('parts.found', fault)}</li>`)}</ul>` : ''}
      <button slot="out" @click=${() => (this.imported = null)}>${say('parts.close')}</button></s-say>`;
  }

  #columns() {
    return [
      {name: 'id', label: say('orders.order'), by: ({order}) => order.id, show: ({order}) => html`<a href=${link(['orders', order.id])}>${order.id}</a>`},
      {name: 'for', label: say('orders.field_for'), by: ({order}) => order.for ?? '', show: ({order}) => order.for ?? ''},
      {name: 'what', label: say('orders.lines'), show: ({order}) => sayList(order.lines.map(line => say('orders.line', {count: line.quantity, piece: nameOf(studio.book.pieces, line.piece)})))},
      {name: 'worth', label: say('orders.worth'), number: true, by: ({order}) => worth(order), show: ({order}) => showMoney(worth(order))},
      {name: 'due', label: say('orders.field_due'), whole: true, by: ({order}) => moment(order.due).getTime(), show: ({order}) => showMoment(order.due)},
      {name: 'ready', label: say('orders.ready'), whole: true, by: ({outcome}) => (outcome ? moment(outcome.ready).getTime() : null), show: ({outcome}) => (outcome ? showMoment(outcome.ready) : say('orders.notYet'))},
      {name: 'spare', label: say('orders.spare'), by: ({spare}) => spare, show: ({spare, late}) => this.#spare(spare, late)},
    ];
  }

  #spare(spare, late) {
    if (spare === null) {
      return '–';
    }
    return late > 0 ? html`<span class="late">${say('orders.lateBy', {by: showMinutes(late)})}</span>` : say('orders.toSpare', {spare: showMinutes(spare)});
  }
}

customElements.define('s-room-orders', Orders);
