import {Room, html} from '../../parts/room.js';
import {css} from 'lit';
import {studio} from '../../app/studio.js';
import {address} from '../../app/address.js';
import {laying} from '../../app/laying.js';
import {asking} from '../../app/latest.js';
import {say, nameOf} from '../../app/words.js';
import {showMoney} from '../../app/money.js';
import {dayOf, showDay, showMoment, toLocal} from '../../app/times.js';
import {showMaterial} from '../../app/units.js';
import {ticks} from '../today/ticks.js';
import {layOut} from '../week/outcome.js';
import {shoppingList} from './list.js';
import '../../parts/field.js';
import '../../parts/say.js';
import '../../parts/states.js';
import '../../parts/tick.js';
import '../../parts/table.js';

/** What to buy for the plan in use, in whole packs, by when, and what begins before it can be there. */
class ShoppingRoom extends Room {

  static properties = {list: {state: true}, older: {state: true}, trouble: {state: true}};

  static styles = [...Room.styles, css`
    .day { margin-block-start: var(--s4); }
    .day h2 { font-size: var(--t3); }
    .day ul { list-style: none; padding: 0; max-width: 46rem; }
    .day li { border-block-end: var(--border) solid var(--line); }
    .line { display: flex; flex-wrap: wrap; justify-content: space-between; gap: 0 var(--s4); }
    .stock { display: flex; flex-wrap: wrap; gap: var(--s2) var(--s4); align-items: end; }
    .late-day { color: var(--oxide); }
  `];

  #asks = asking();
  #asked = [];
  #whose = '';

  constructor() {
    super();
    Object.assign(this, {list: null, older: null, trouble: null});
  }

  get #counted() {
    return address.state.counted ?? '';
  }

  willUpdate() {
    // Another studio's list is nobody's here while its own is on the way.
    const whose = `${studio.studio?.id}/${studio.book?.studio.name}`;
    if (whose !== this.#whose || !studio.plan) {
      this.#asks();
      Object.assign(this, {list: null, older: null, trouble: null});
      [this.#whose, this.#asked] = [whose, []];
    }
    const asked = [studio.book, studio.plan, this.#counted];
    if (studio.plan && asked.some((one, at) => one !== this.#asked[at])) {
      this.#asked = asked;
      this.#read();
    }
  }

  async #read() {
    const isLast = this.#asks();
    const {list = this.list, older = null, trouble = null} = await shoppingList(this.#counted);
    if (isLast()) {
      Object.assign(this, {list, older, trouble});
    }
  }

  actions() {
    return this.list?.materials.length ? html`<button @click=${() => window.print()}>${say('shopping.print')}</button>` : '';
  }

  content() {
    if (!studio.book) {
      return html`<s-busy></s-busy>`;
    }
    if (!studio.plan) {
      return html`<s-empty heading=${say('shopping.noPlan')}><p>${say('shopping.noPlanText')}</p><a slot="out" class="button do" href="/week">${say('shopping.toWeek')}</a></s-empty>`;
    }
    if (this.trouble) {
      return html`<s-trouble .problem=${this.trouble} @again=${() => this.#read()}></s-trouble>`;
    }
    const list = this.list ? html`${this.#sentence()}${this.#stock()}${this.#days()}${this.#tooEarly()}${this.#table()}` : '';
    return this.list || this.older ? html`${this.#older()}${list}` : html`<s-busy></s-busy>`;
  }

  // The book has moved on: of which plan the list is, what it leaves out, and the way out.
  #older() {
    if (!this.older) {
      return '';
    }
    const {at, orders} = this.older;
    const left = orders > 0 ? say('shopping.newer', {count: orders}) : say('shopping.changed');
    return html`<s-say kind="care">${at ? say('shopping.asLaidOut', {at: showMoment(at)}) : say('shopping.noList')} ${left}
      <button slot="out" class="do" ?disabled=${laying.isUnderWay} @click=${this.#layOut}>${say('shopping.again')}</button></s-say>`;
  }

  #layOut = async () => {
    try {
      await layOut({waiting: false});
    } catch {
      // what was refused stands in the Week
    }
    address.go('/week');
  };

  get #bought() {
    return this.list.materials.filter(({packs}) => packs > 0).sort((one, other) => (one.orderBy ?? '').localeCompare(other.orderBy ?? ''));
  }

  #sentence() {
    const bought = this.#bought;
    if (bought.length === 0) {
      return html`<s-say kind="ready">${say('shopping.nothing')}</s-say>`;
    }
    const [first] = bought;
    const early = this.list.tooEarly ?? [];
    const overdue = first.orderBy < dayOf(new Date());
    return html`<s-say kind=${early.length > 0 ? 'care' : ''}>${say('shopping.sentence', {
      count: bought.length, cost: showMoney(this.list.cost), material: nameOf(studio.book.materials, first.material), day: showDay(first.orderBy),
    })} ${overdue ? say('shopping.overdue') : ''}</s-say>`;
  }

  // Of a plan under way it matters whether what has been used has left the shelf's numbers already.
  #stock() {
    if (!studio.plan.history) {
      return '';
    }
    const counted = this.#counted;
    return html`<p>${say(counted ? 'shopping.countedAt' : 'shopping.countedBefore', {at: counted && showMoment(counted)})}</p>
      <div class="stock screen">${counted ? html`<s-field needed kind="moment" label=${say('shopping.counted')} .value=${counted} @value=${this.#count}></s-field>` : ''}
      <button @click=${() => address.setState({counted: counted ? '' : toLocal(new Date())})}>${say(counted ? 'shopping.countBefore' : 'shopping.countNow')}</button></div>`;
  }

  // A time that is only half written down is none yet.
  #count({detail}) {
    if (detail) {
      address.setState({counted: detail});
    }
  }

  #tooEarly() {
    const early = this.list.tooEarly ?? [];
    return early.length === 0 ? '' : html`<section aria-labelledby="early"><h2 id="early">${say('shopping.tooEarly')}</h2>
      <ul>${groups(early).map(group => html`<li>${group.length === 1 ? this.#early(group[0]) : this.#earlyTogether(group)}</li>`)}</ul>
      <a class="button" href="/week?wait=materials">${say('shopping.wait')}</a></section>`;
  }

  #early(one) {
    return say('shopping.early', {...this.#earlyWords(one), missing: this.#amount(one.material, one.missing)});
  }

  #earlyTogether(group) {
    return html`<details><summary>${say('shopping.earlyTogether', {...this.#earlyWords(group[0]), count: group.length})}</summary>
      <ul>${group.map(one => html`<li>${this.#early(one)}</li>`)}</ul></details>`;
  }

  #earlyWords({what, at, material, arrives}) {
    return {what, at: showMoment(at), material: nameOf(studio.book.materials, material), arrives: showDay(arrives)};
  }

  // By the last day on which it can be ordered, to be ticked off.
  #days() {
    const days = [...new Set(this.#bought.map(({orderBy}) => orderBy))];
    const today = dayOf(new Date());
    return days.map(day => html`<section class="day" aria-labelledby="d-${day}"><h2 id="d-${day}" class=${day < today ? 'late-day' : ''}>${day ? say(day < today ? 'shopping.wasDue' : 'shopping.orderBy', {day: showDay(day)}) : say('shopping.anyDay')}</h2>
      <ul>${this.#bought.filter(({orderBy}) => orderBy === day).map(one => this.#line(one))}</ul></section>`);
  }

  #line(one) {
    const material = studio.find('materials', one.material);
    const name = `buy/${one.material}`;
    return html`<li><s-tick .on=${ticks.has(dayOf(new Date()), name)} @tick=${event => this.#tick(name, event.detail)}>
      <span class="line"><span>${say('shopping.packs', {count: one.packs, pack: this.#amount(one.material, material?.pack.quantity ?? 0), material: material?.name ?? one.material})}</span> <span>${showMoney(one.cost)}</span></span></s-tick></li>`;
  }

  #tick(name, on) {
    ticks.set(dayOf(new Date()), name, on);
    this.requestUpdate();
  }

  #amount(id, quantity) {
    return showMaterial(quantity, studio.find('materials', id)?.unit ?? 'g');
  }

  #table() {
    const amount = name => one => this.#amount(one.material, one[name]);
    return html`<section aria-labelledby="uses"><h2 id="uses">${say('shopping.uses')}</h2><s-table label=${say('shopping.uses')} .rows=${this.list.materials}
      sort=${address.state.sort ?? ''} @sort=${event => address.setState({sort: event.detail})} .columns=${[
        {name: 'material', label: say('shopping.material'), by: one => nameOf(studio.book.materials, one.material), show: one => nameOf(studio.book.materials, one.material)},
        {name: 'needed', label: say('shopping.needed'), number: true, show: amount('needed')},
        {name: 'onHand', label: say('shopping.onHand'), number: true, show: amount('onHand')},
        {name: 'runsOut', label: say('shopping.runsOut'), by: one => one.runsOut ?? '9', show: one => (one.runsOut ? showMoment(one.runsOut) : say('shopping.lasts'))},
        {name: 'packs', label: say('shopping.buy'), number: true, by: one => one.packs, show: one => one.packs},
        {name: 'left', label: say('shopping.left'), number: true, show: amount('left')},
        {name: 'cost', label: say('shopping.cost'), number: true, by: one => one.cost, show: one => showMoney(one.cost)},
      ]}></s-table></section>`;
  }
}

// What waits for the same delivery of a material.
function groups(early) {
  return Object.values(Object.groupBy(early, ({material, arrives}) => `${arrives} ${material}`));
}

customElements.define('s-room-shopping', ShoppingRoom);
