import {Room, html} from '../../parts/room.js';
import {css} from 'lit';
import {studio} from '../../app/studio.js';
import {address, link} from '../../app/address.js';
import {isAhead, mustNotBeAhead} from '../../app/ahead.js';
import {get, question} from '../../app/service.js';
import {say} from '../../app/words.js';
import {showMoney} from '../../app/money.js';
import {showNumber} from '../../app/numbers.js';
import {minutesBetween, showMinutes, showMoment, showWork} from '../../app/times.js';
import {KINDS, change, first} from './hints.js';
import {tell} from '../../parts/undo.js';
import '../../parts/field.js';
import '../../parts/say.js';
import '../../parts/states.js';
import '../../parts/table.js';

const answers = new WeakMap();

/** What one more form, an open morning, a helper or a warmer room would bring, and what it costs. */
class WhatIfRoom extends Room {

  static properties = {kind: {state: true}, chosen: {state: true}, busy: {state: true}, trouble: {state: true}, bound: {state: true}};

  static styles = [...Room.styles, css`
    .try { display: flex; flex-wrap: wrap; gap: var(--s3) var(--s4); align-items: end; margin-block: var(--s4); }
    .try s-field { max-width: 16rem; }
    .answer { min-height: 18rem; }
    s-say { min-height: 5.5rem; } /* for the sentence to come: what stands below it shall not jump */
    @media (max-width: 40rem) { s-say { min-height: 10rem; } }
  `];

  #plan = null;

  constructor() {
    super();
    this.kind = 'form';
    this.chosen = null;
    this.busy = false;
    this.trouble = null;
    this.bound = null;
  }

  get #answer() {
    return studio.plan ? answers.get(studio.plan) ?? null : null;
  }

  willUpdate() {
    if (studio.plan && studio.plan !== this.#plan) {
      this.#plan = studio.plan;
      this.#bound();
      const wanted = this.#wanted();
      if (!this.#answer || wanted.some(text => !this.#answer.changes.some(one => one.change === text))) {
        this.#ask(wanted);
      }
    }
  }

  // Whoever comes from the board may bring a form along, which is tried at once.
  #wanted() {
    const {form} = address.state;
    if (!studio.find('forms', form)) {
      return [];
    }
    this.kind = 'form';
    this.chosen = {form, many: 1};
    return [change('form', this.chosen)];
  }

  async #bound() {
    const {plan} = studio;
    // A plan that is none of its book any more has none: the answers below say so.
    const bound = isAhead() ? null : await get('/api/bound?plan=in-use').then(({body}) => body, () => null);
    if (plan === studio.plan) this.bound = bound;
  }

  // What is tried by hand joins what the plan's own reasons name.
  async #ask(changes) {
    const {plan} = studio;
    this.busy = true;
    this.trouble = null;
    try {
      mustNotBeAhead();
      const answer = await question('/api/what-if?plan=in-use', {changes});
      const before = answers.get(plan);
      answer.changes = answer.changes.map(one => ({...one, tried: changes.includes(one.change)}));
      const again = new Set(answer.changes.map(one => one.change));
      answers.set(plan, before ? {...answer, changes: [...answer.changes, ...before.changes.filter(one => !again.has(one.change))]} : answer);
    } catch (refused) {
      if (plan === studio.plan) this.trouble = refused;
    } finally {
      this.busy = false;
    }
  }

  // Into the book, and the plan with it into use: one change, worked out once more by the service.
  async #make({change: text, words}) {
    this.busy = true;
    this.trouble = null;
    try {
      await studio.act('/api/what-if/take', {changes: [text]});
      tell(say('what-if.made', {change: words}), true);
    } catch (refused) {
      this.trouble = refused;
      await this.updateComplete;
      this.renderRoot.querySelector('s-trouble').scrollIntoView({block: 'center'}); // it stands above a long list
    } finally {
      this.busy = false;
    }
  }

  content() {
    if (!studio.book) {
      return html`<s-busy></s-busy>`;
    }
    if (!studio.plan) {
      return html`<s-empty heading=${say('what-if.noPlan')}><p>${say('what-if.noPlanText')}</p><a slot="out" class="button do" href="/week">${say('what-if.toWeek')}</a></s-empty>`;
    }
    return html`${this.#order()}${this.#sentence()}${this.#try()}
      ${this.trouble ? html`<s-trouble .problem=${this.trouble} @again=${() => this.#ask([])}></s-trouble>` : ''}
      <div class="answer" aria-busy=${this.busy ? 'true' : 'false'}>${this.#told()}</div>${this.#answer ? this.#atBest() : ''}`;
  }

  // Whoever comes from an order reads again what is the matter with it.
  #order() {
    const order = studio.find('orders', address.state.order);
    const outcome = order && studio.plan.orders.find(one => one.order === order.id);
    if (!outcome) {
      return '';
    }
    const late = outcome.lateMinutes > 0;
    const spare = minutesBetween(outcome.ready, order.due);
    return html`<s-say kind=${late ? 'late' : 'ready'}>${say(late ? 'what-if.orderLate' : 'what-if.orderSpare', {
      order: order.id, for: order.for || say('what-if.nobody'), by: showMinutes(late ? outcome.lateMinutes : spare)})}
      ${outcome.because?.length > 0 ? html`<ul>${outcome.because.map(reason => html`<li>${reason}</li>`)}</ul>` : ''}
      <a slot="out" href=${link(['orders', order.id])}>${say('what-if.toOrder')}</a></s-say>`;
  }

  #sentence() {
    const answer = this.#answer;
    if (!answer) {
      return html`<s-say>${say(this.busy ? 'what-if.busy' : 'what-if.intro')}</s-say>`;
    }
    const [best] = answer.changes.filter(one => one.helps);
    return best
      ? html`<s-say>${say('what-if.best', {change: best.words, does: this.#does(best, answer), cost: this.#cost(best)})}</s-say>`
      : html`<s-say kind="ready">${say('what-if.nothing')}</s-say>`;
  }

  #does({totals}, {planningAlone: alone}) {
    const late = alone.weightedLateHours - totals.weightedLateHours;
    const work = alone.attendedMinutes - totals.attendedMinutes;
    const sooner = minutesBetween(totals.lastReady, alone.lastReady);
    if (late > 0) {
      return say(totals.lateOrders === 0 ? 'what-if.allInTime' : 'what-if.lessLate', {hours: showNumber(late), count: totals.lateOrders});
    }
    if (late < 0) {
      return say('what-if.moreLate', {hours: showNumber(-late)});
    }
    if (work > 0) {
      return say('what-if.lessWork', {work: showWork(work)});
    }
    return sooner > 0 ? say('what-if.sooner', {by: showMinutes(sooner)}) : say('what-if.same');
  }

  #cost({cost}) {
    return cost.amount === undefined ? cost.how : say('what-if.costs', {amount: showMoney(cost.amount), how: cost.how});
  }

  #try() {
    const {book} = studio;
    const chosen = this.chosen ?? first(this.kind, book);
    const kinds = Object.keys(KINDS).filter(kind => kind !== 'places' || book.stations.length > 0);
    const text = change(this.kind, chosen);
    return html`<div class="try screen" role="group" aria-label=${say('what-if.try')}>
      <s-field needed label=${say('what-if.try')} .value=${this.kind} .options=${kinds.map(value => ({value, label: say(`what-if.kind_${value}`)}))}
        @value=${event => { this.kind = event.detail; this.chosen = null; }}></s-field>
      ${KINDS[this.kind].map(name => this.#field(name, chosen))}
      <button ?disabled=${this.busy || text === ''} @click=${() => this.#ask([text])}>${say('what-if.tryIt')}</button></div>`;
  }

  #field(name, chosen) {
    const {book} = studio;
    const listed = list => ({options: list.map(({id, name: called}) => ({value: id, label: called}))});
    const how = {
      form: listed(book.forms), person: listed(book.people), station: listed(book.stations),
      many: {kind: 'whole', least: 1}, from: {kind: 'moment'}, until: {kind: 'moment'}, day: {kind: 'date'},
      degrees: {kind: 'temperature'}, grams: {kind: 'mass', least: 1}, start: {hint: say('what-if.startHint')}, end: {},
    }[name];
    return html`<s-field ?needed=${name !== 'start' && name !== 'end'} short label=${say(`what-if.field_${name}`)} kind=${how.kind ?? 'text'} .options=${how.options} .least=${how.least}
      hint=${how.hint ?? ''} .value=${chosen[name]} @value=${event => (this.chosen = {...chosen, [name]: event.detail})}></s-field>`;
  }

  #told() {
    const answer = this.#answer;
    if (!answer) {
      return html`<p class="quiet" role="status">${this.busy ? say('what-if.busyText') : ''}</p>`;
    }
    const rows = answer.changes.filter(one => one.helps || one.tried);
    const idle = answer.changes.filter(one => !one.helps && !one.tried);
    return html`${this.busy ? html`<p class="quiet" role="status">${say('what-if.busyText')}</p>` : ''}
      <s-table label=${say('rooms.what-if')} .rows=${rows} .columns=${[
        {name: 'words', label: say('what-if.change'), show: one => one.words},
        {name: 'does', label: say('what-if.brings'), show: one => this.#does(one, answer)},
        {name: 'late', label: say('what-if.lateOrders'), number: true, show: one => one.totals.lateOrders},
        {name: 'work', label: say('what-if.work'), number: true, show: one => showWork(one.totals.attendedMinutes)},
        {name: 'last', label: say('what-if.last'), show: one => showMoment(one.totals.lastReady)},
        {name: 'cost', label: say('what-if.cost'), show: one => this.#cost(one)},
        {name: 'make', label: say('what-if.make'), show: one => html`<button aria-label=${say('what-if.makeIt', {change: one.words})} ?disabled=${this.busy} @click=${() => this.#make(one)}>${say('what-if.make')}</button>`},
      ]}></s-table>
      ${idle.length > 0 ? html`<p class="quiet">${say('what-if.idle', {changes: idle.map(one => one.words).join('; ')})}</p>` : ''}`;
  }

  #atBest() {
    const {bound} = this;
    return bound?.plan ? html`<section aria-labelledby="best"><h2 id="best">${say('what-if.atBest')}</h2><p>${bound.plan.weightedLateHoursAbove > 0
      ? say('what-if.boundLate', {hours: showNumber(bound.weightedLateHours)}) : say('what-if.boundFine')}
      ${bound.plan.attendedMinutesAbove > 0 ? say('what-if.boundWork', {least: showWork(bound.attendedMinutes)}) : say('what-if.boundLeast')}</p></section>` : '';
  }
}

customElements.define('s-room-what-if', WhatIfRoom);
