import {LitElement, css, html} from 'lit';
import {sheet} from '../../parts/sheet.js';
import {studio} from '../../app/studio.js';
import {isAhead} from '../../app/ahead.js';
import {get} from '../../app/service.js';
import {asking} from '../../app/latest.js';
import {say} from '../../app/words.js';
import {dayOf, showTime} from '../../app/times.js';
import {showAmount, showTemperature} from '../../app/units.js';
import {showPercent} from '../../app/numbers.js';

/** The day's room and cautions, at the foot. */
class Care extends LitElement {

  static properties = {day: {}, room: {state: true}, isOlder: {state: true}, cautions: {state: true}};

  static styles = [sheet, css`
    :host { margin-block-start: var(--s5); min-height: 12rem; }
    .two { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(20rem, 100%), 1fr)); gap: var(--s4); }
    h2 { margin-block-end: var(--s2); }
    ul { list-style: none; padding: 0; }
    li { margin-block-end: var(--s1); }
    summary { cursor: pointer; min-height: 24px; }
    @media print { .two { display: block; } summary { list-style: none; min-height: 0; } }
  `];

  #asks = asking();
  #book = null;
  #plan = null;

  constructor() {
    super();
    this.room = null;
    this.isOlder = false;
    this.cautions = null;
  }

  willUpdate() {
    if (studio.book !== this.#book || studio.plan !== this.#plan) {
      [this.#book, this.#plan] = [studio.book, studio.plan];
      this.#read();
    }
  }

  async #read() {
    const isLast = this.#asks();
    const ahead = isAhead();
    const [room, cautions] = await Promise.allSettled(ahead ? [null, get('/api/cautions')] : [get('/api/room?plan=in-use'), cautionsNow()]);
    if (!isLast()) {
      return;
    }
    this.isOlder = ahead || (room.reason?.isOfOlderPlan ?? false);
    this.room = room.value?.body.days ?? [];
    this.cautions = cautions.value?.body.cautions ?? [];
  }

  render() {
    return html`<div class="two"><section aria-labelledby="room"><h2 id="room">${say('today.room')}</h2>${this.#room()}</section>
      <section aria-labelledby="care"><h2 id="care">${say('today.care')}</h2>${this.#cautions()}</section></div>`;
  }

  #room() {
    const days = (this.room ?? []).filter(({from}) => dayOf(from) === this.day);
    return days.length === 0 ? html`<p class="quiet">${this.room ? say(this.isOlder ? 'today.roomOlder' : 'today.roomUnknown') : ''}</p>` : days.map(day => html`
      <p>${say('today.air', {at: showTime(day.from), air: showTemperature(day.airC), humidity: showPercent(day.humidityPercent, 0)})}
      ${day.pour ? html`<br>${say(`today.loss_${day.pour.level}`, {loss: showAmount('loss', day.pour.evaporationKgPerM2Hour), from: showAmount('loss', day.pour.atLeast), to: showAmount('loss', day.pour.atMost)})}` : ''}
      ${day.coat ? html`<br><span class=${day.coat.good ? '' : 'care'}>${say(day.coat.good ? 'today.coatGood' : 'today.coatBad', {dew: showTemperature(day.coat.dewPointC), above: showAmount('degrees', day.coat.aboveC), least: showAmount('degrees', 3)})}</span>` : ''}</p>`);
  }

  #cautions() {
    return html`<ul>${(this.cautions ?? []).map(one => html`<li><details><summary>${one.brief}</summary>
      <p>${one.more}</p><small>${one.source}</small></details></li>`)}</ul><p class="quiet">${say('today.codes')}</p>`;
  }
}

/** Those of the plan; where the book has changed since it was laid out, those of the whole book: too many rather than none. */
async function cautionsNow() {
  try {
    return await get('/api/cautions?plan=in-use');
  } catch {
    return get('/api/cautions');
  }
}

customElements.define('s-care', Care);
