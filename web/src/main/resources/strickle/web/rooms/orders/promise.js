import {LitElement, css, html} from 'lit';
import {sheet} from '../../parts/sheet.js';
import {studio} from '../../app/studio.js';
import {mustNotBeAhead} from '../../app/ahead.js';
import {question} from '../../app/service.js';
import {say, sayList, nameOf} from '../../app/words.js';
import {dayOf, minutesBetween, moment, showMinutes, showMoment, toLocal} from '../../app/times.js';

const WAIT = 700;

/**
 * When a new order could be ready, while it is typed. Several lines are each asked for by themselves,
 * and it says so. Event "take" with a local time when the date is taken.
 */
class Promised extends LitElement {

  static properties = {lines: {attribute: false}, due: {}, answers: {state: true}, busy: {state: true}, trouble: {state: true}};

  static styles = [sheet, css`
    :host { border: var(--border) solid var(--line); background: var(--lime-2); padding: var(--s3) var(--s4); min-height: 9rem; border-radius: var(--corner); }
    h2 { font-size: var(--t3); margin-block-end: var(--s2); }
    ul { padding-inline-start: 1.1em; }
  `];

  #asked = '';
  #timer = 0;
  #abort = null;

  constructor() {
    super();
    this.lines = [];
    this.answers = [];
    this.busy = false;
    this.trouble = null;
  }

  disconnectedCallback() {
    clearTimeout(this.#timer);
    this.#abort?.abort();
    super.disconnectedCallback();
  }

  willUpdate() {
    const wanted = this.lines.filter(({piece, quantity}) => piece && quantity > 0);
    const asked = JSON.stringify([wanted.map(({piece, quantity}) => [piece, quantity]), this.due]);
    if (asked !== this.#asked) {
      this.#asked = asked;
      clearTimeout(this.#timer);
      this.#abort?.abort();
      this.#timer = setTimeout(() => this.#ask(wanted), WAIT);
    }
  }

  async #ask(wanted) {
    this.trouble = null;
    if (wanted.length === 0 || !studio.plan) {
      this.answers = [];
      return;
    }
    const abort = new AbortController();
    this.#abort = abort;
    this.busy = true;
    try {
      mustNotBeAhead();
      const answers = [];
      for (const {piece, quantity} of wanted) {
        const asked = {piece, quantity, ...(this.due ? {latest: dayOf(this.due)} : {})};
        answers.push(await question('/api/promise?plan=in-use', asked, {signal: abort.signal}));
      }
      this.answers = answers;
    } catch (failed) {
      if (failed.name !== 'AbortError') {
        this.trouble = failed;
      }
    } finally {
      this.busy = this.#abort !== abort;
    }
  }

  render() {
    return html`<h2>${say('orders.promise')}</h2><div role="status">${this.#told()}</div>`;
  }

  #told() {
    if (!studio.plan) {
      return html`<p class="quiet">${say('orders.promiseNoPlan')}</p>`;
    }
    if (this.trouble) {
      if (this.trouble.isOfOlderPlan) {
        return html`<p class="care">${say('orders.promiseOlderPlan')} <a href="/week">${say('orders.toWeek')}</a></p>`;
      }
      const fault = this.trouble.faults?.[0];
      return html`<p class="care">${fault ? say('orders.refused', fault) : this.trouble.message}</p>`;
    }
    if (this.busy) {
      return html`<p class="quiet">${say('orders.promiseBusy')}</p>`;
    }
    return this.answers.length === 0 ? html`<p class="quiet">${say('orders.promiseHint')}</p>` : this.#answers();
  }

  #answers() {
    const kept = this.answers.map(answer => answer.kept);
    const last = kept.every(Boolean) ? kept.map(({ready}) => ready).sort((one, other) => moment(one) - moment(other)).at(-1) : null;
    return html`${this.answers.map(answer => this.#one(answer))}
      ${this.answers.length > 1 ? html`<p class="quiet">${say('orders.promiseApart')}</p>` : ''}
      ${last ? html`<button type="button" @click=${() => this.#take(last)}>${say('orders.take', {at: showMoment(last)})}</button>` : ''}`;
  }

  #take(last) {
    this.dispatchEvent(new CustomEvent('take', {detail: toLocal(last)}));
  }

  #one({piece, quantity, kept, still, pressed, latest}) {
    const what = say('orders.line', {count: quantity, piece: nameOf(studio.book.pieces, piece)});
    const more = [...(latest ? [latestWords(latest)] : []), ...(kept ? originWords(kept) : [])];
    if (still && kept && still.ready !== kept.ready) {
      more.push(say('orders.still', {at: showMoment(still.ready)}));
    }
    if (pressed && (!kept || moment(pressed.ready) < moment(kept.ready))) {
      more.push(say('orders.pressed', {at: showMoment(pressed.ready), slips: slipWords(pressed)}));
    }
    return html`<p><strong>${kept ? say('orders.kept', {what, at: showMoment(kept.ready)}) : say('orders.notKept', {what})}</strong></p>
      ${more.length > 0 ? html`<ul>${more.map(text => html`<li>${text}</li>`)}</ul>` : ''}`;
  }
}

function slipWords({slips}) {
  return slips.map(slip => say('orders.slip', {order: slip.order, by: showMinutes(minutesBetween(slip.readyBefore, slip.ready))})).join('; ') || say('orders.nobody');
}

/** Whether the date that stands in the form can be met. */
function latestWords({at, way, offer, alone}) {
  return say(`orders.latest_${way}${way === 'impossible' && !alone ? 'Ever' : ''}`, {at: showMoment(at), slips: offer ? slipWords(offer) : '', alone: alone ? showMoment(alone) : ''});
}

/** Where the pieces come from: what is taken from stock, and when the rest is poured. */
function originWords({stock, runs}) {
  const pours = runs.map(({tasks}) => say('orders.poured', {at: showMoment(tasks[0].spells[0].start), person: nameOf(studio.book.people, tasks[0].person)}));
  if (!stock) {
    return pours;
  }
  const meant = sayList(stock.meant.map(({order}) => order));
  return [say(meant ? 'orders.stockMeant' : 'orders.stock', {count: stock.pieces, onHand: stock.onHand, orders: meant}), ...pours];
}

customElements.define('s-promised', Promised);
