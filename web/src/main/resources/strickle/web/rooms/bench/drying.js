import {LitElement, css, html} from 'lit';
import {sheet} from '../../parts/sheet.js';
import {studio} from '../../app/studio.js';
import {Watching} from '../../app/watching.js';
import {address, link} from '../../app/address.js';
import {settings} from '../../app/settings.js';
import {say} from '../../app/words.js';
import {faultInWords} from '../../app/refused.js';
import {showMass} from '../../app/units.js';
import {showNumber} from '../../app/numbers.js';
import {addDays, dayOf, minutesBetween, moment, showDay, showMoment, toLocal} from '../../app/times.js';
import {get} from '../../app/service.js';
import {asking} from '../../app/latest.js';
import {tell} from '../../parts/undo.js';
import {drawCurve} from './curve.js';
import '../../parts/field.js';
import '../../parts/form.js';
import '../../parts/say.js';
import '../../parts/states.js';
import '../../parts/table.js';

const MINUTES_OF_DAY = 1440;
const LEAST_WEIGHINGS = 5;

async function fitOf(log) {
  try {
    return {fit: (await get(`/api/drying/${encodeURIComponent(log)}/fit`)).body};
  } catch (refusal) {
    return {refusal};
  }
}

/** Drying logs: the weights of a piece over days, the curve through them, and when it is worth weighing again. */
class BenchDrying extends LitElement {

  static properties = {log: {}, logs: {state: true}, fit: {state: true}, refusal: {state: true}, draft: {state: true}, fresh: {state: true}, trouble: {state: true}};

  static styles = [sheet, css`
    .two { display: grid; grid-template-columns: minmax(0, 1fr) minmax(16rem, 22rem); gap: var(--s4) var(--s5); align-items: start; }
    .fields { display: grid; gap: var(--s3); }
    .chart { min-height: 280px; border: var(--border) solid var(--line); padding: var(--s2); overflow: hidden; }
    .chart .u-wrap { position: relative; }
    .chart canvas { display: block; }
    .chart .u-over, .chart .u-under { position: absolute; }
    @media (max-width: 60rem) { .two { grid-template-columns: minmax(0, 1fr); } }
  `];

  #asks = asking();
  #chart = null;
  #drawn = null;

  constructor() {
    super();
    this.log = '';
    this.logs = null;
    this.fit = null;
    this.refusal = null;
    this.draft = this.#weighing();
    this.fresh = {name: ''};
    this.trouble = null;
    new Watching(this, settings);
  }

  connectedCallback() {
    super.connectedCallback();
    this.#read();
  }

  #weighing() {
    return {at: toLocal(new Date()), grams: null};
  }

  willUpdate(changed) {
    if (changed.has('log') && this.logs) {
      this.#fit();
    }
  }

  async #read() {
    try {
      this.logs = await studio.list('drying');
      await this.#fit();
    } catch (refused) {
      this.trouble = refused;
    }
  }

  // The service is not asked about what can tell nothing yet.
  #isTooShort(log) {
    return (log?.weighings ?? []).length < LEAST_WEIGHINGS;
  }

  get #one() {
    return this.logs?.find(({id}) => id === this.log);
  }

  async #fit() {
    const isLast = this.#asks();
    this.fit = null;
    this.refusal = null;
    const {fit = null, refusal = null} = this.#isTooShort(this.#one) ? {} : await fitOf(this.log);
    if (isLast()) {
      [this.fit, this.refusal] = [fit, refusal];
    }
  }

  render() {
    if (this.trouble) {
      return html`<s-trouble .problem=${this.trouble} @again=${this.#read}></s-trouble>`;
    }
    if (!this.logs) {
      return html`<s-busy></s-busy>`;
    }
    return this.#one ? this.#shown(this.#one) : this.#list();
  }

  #list() {
    return html`${this.logs.length === 0
      ? html`<s-say>${say('bench.noLogs')}</s-say>`
      : html`<s-table label=${say('bench.drying')} .rows=${this.logs} .columns=${[
        {name: 'name', label: say('bench.log'), show: log => html`<a href=${link(['bench', 'drying', log.id])}>${log.name}</a>`},
        {name: 'count', label: say('bench.weighings'), number: true, show: log => (log.weighings ?? []).length},
        {name: 'last', label: say('bench.lastWeight'), number: true, show: log => (log.weighings?.length ? showMass(log.weighings.at(-1).grams) : '–')},
      ]}></s-table>`}
      <section aria-labelledby="new"><h2 id="new">${say('bench.newLog')}</h2>
      <s-form label=${say('bench.begin')} .value=${this.fresh} .save=${() => this.#begin()}>
        <div class="fields"><s-field needed path="name" label=${say('bench.logName')} hint=${say('bench.logHint')} .value=${this.fresh.name} @value=${event => (this.fresh = {name: event.detail})}></s-field></div></s-form></section>`;
  }

  async #begin() {
    let number = this.logs.length + 1;
    while (this.logs.some(({id}) => id === `log-${number}`)) {
      number += 1;
    }
    await studio.put('drying', {id: `log-${number}`, name: this.fresh.name, weighings: []});
    this.fresh = {name: ''};
    await this.#read();
    address.go(link(['bench', 'drying', `log-${number}`]));
  }

  #shown(log) {
    return html`<div class="two"><div><h2>${log.name}</h2>${this.#sentence(log)}
        <div class="chart" role="img" aria-label=${say('bench.chart')}></div>${this.#weights(log)}</div>
      <s-form label=${say('bench.note')} .value=${this.draft} .save=${() => this.#note(log)}><div class="fields">
        <s-field needed kind="moment" path="at" label=${say('bench.at')} .value=${this.draft.at} @value=${event => (this.draft = {...this.draft, at: event.detail})}></s-field>
        <s-field needed kind="mass" least="0.1" path="grams" label=${say('bench.weight')} .value=${this.draft.grams} @value=${event => (this.draft = {...this.draft, grams: event.detail})}></s-field></div>
        <button slot="foot" type="button" @click=${() => this.#remove(log)}>${say('bench.removeLog')}</button>
        <a slot="foot" class="button" href="/bench/drying">${say('bench.allLogs')}</a></s-form></div>`;
  }

  #sentence(log) {
    if (this.#isTooShort(log)) {
      return html`<s-say>${say('bench.tooShort', {count: LEAST_WEIGHINGS - (log.weighings ?? []).length})}</s-say>`;
    }
    if (this.refusal) {
      const fault = this.refusal.faults?.[0];
      return html`<s-say>${fault ? say('bench.cannotTell', faultInWords(fault)) : this.refusal.message}</s-say>`;
    }
    if (!this.fit) {
      return html`<s-busy></s-busy>`;
    }
    const {limitDays, waterNowGrams, waterAtLimitGrams, limitPercent} = this.fit.drying;
    const day = days => showDay(addDays(dayOf(log.weighings[0].at), Math.ceil(days)));
    const done = limitDays.likely <= this.fit.days;
    return html`<s-say kind=${done ? 'ready' : ''}>${say(done ? 'bench.dryNow' : 'bench.dryOn', {
      limit: showNumber(limitPercent), day: day(limitDays.likely), early: day(limitDays.low), late: day(limitDays.high),
      now: showMass(waterNowGrams.likely), least: showMass(waterNowGrams.low), most: showMass(waterNowGrams.high), then: showMass(waterAtLimitGrams.likely),
    })}</s-say>`;
  }

  #weights(log) {
    return html`<s-table label=${say('bench.weighings')} .rows=${[...(log.weighings ?? [])].reverse()} .columns=${[
      {name: 'at', label: say('bench.at'), show: one => showMoment(one.at)},
      {name: 'grams', label: say('bench.weight'), number: true, show: one => showMass(one.grams)},
      {name: 'out', label: say('bench.wrong'), show: one => html`<button aria-label=${say('bench.drop', {at: showMoment(one.at)})} @click=${() => this.#drop(log, one)}>${say('parts.remove')}</button>`},
    ]}></s-table>`;
  }

  async #put(log, weighings) {
    const {refusal, ...rest} = log;
    await studio.put('drying', {...rest, weighings: weighings.sort((one, other) => moment(one.at) - moment(other.at))}, log);
  }

  async #note(log) {
    await this.#put(log, [...(log.weighings ?? []), this.draft]);
    tell(say('bench.noted', {weight: showMass(this.draft.grams)}), true);
    this.draft = this.#weighing(); // before anything is read: what is typed meanwhile is the next weight
    await this.#read();
  }

  async #drop(log, one) {
    try {
      await this.#put(log, log.weighings.filter(other => other !== one));
      tell(say('bench.dropped'), true);
      await this.#read();
    } catch (refused) {
      tell(refused.message);
    }
  }

  async #remove(log) {
    try {
      await studio.remove('drying', log);
      tell(say('bench.logRemoved', {log: log.name}), true);
      address.go('/bench/drying');
      await this.#read();
    } catch (refused) {
      tell(refused.message);
    }
  }

  updated() {
    const log = this.#one;
    const drawn = this.fit ?? (this.#isTooShort(log) || this.refusal ? log : null);
    if (drawn !== this.#drawn) {
      this.#drawn = drawn;
      this.#chart?.destroy();
      this.#chart = drawn && log?.weighings?.length > 0 ? this.#draw(log) : null;
    }
  }

  // What was weighed shows in any case: it is by the points that a wrong weight is found.
  #draw(log) {
    const days = log.weighings.map(({at}) => minutesBetween(log.weighings[0].at, at) / MINUTES_OF_DAY);
    const style = getComputedStyle(this);
    const colour = name => style.getPropertyValue(name).trim();
    return drawCurve(this.renderRoot.querySelector('.chart'), {
      days, grams: log.weighings.map(({grams}) => grams), ...this.#curve(days.at(-1)),
      labels: {day: say('bench.days'), weights: say('bench.weight'), curve: say('bench.curve')},
      colours: {ink: colour('--slate'), line: colour('--line'), curve: colour('--terracotta')},
    });
  }

  // m(t) = final + water now · e^(−rate · (t − last day)), the model of the service.
  #curve(last) {
    if (!this.fit) {
      return {until: Math.max(last, 1) * 1.1, fit: null};
    }
    const {ratePerDay, finalGrams, waterNowGrams, limitDays} = this.fit.drying;
    return {
      until: Math.max(last, limitDays.likely) * 1.1,
      fit: day => finalGrams.likely + waterNowGrams.likely * Math.exp(-ratePerDay.likely * (day - this.fit.days)),
    };
  }
}

customElements.define('s-bench-drying', BenchDrying);
