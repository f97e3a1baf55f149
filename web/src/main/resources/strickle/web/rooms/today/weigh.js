import {LitElement, css, html} from 'lit';
import {sheet} from '../../parts/sheet.js';
import {studio} from '../../app/studio.js';
import {asking} from '../../app/latest.js';
import {question} from '../../app/service.js';
import {say, nameOf} from '../../app/words.js';
import {showMass, showWeighed} from '../../app/units.js';
import {scale, ticks} from './ticks.js';
import '../../parts/tick.js';
import '../../parts/field.js';

const FINEST = 0.1;

/** What to weigh for a lot, to tick off; rounded to the step of the scale at this bench. */
class Weigh extends LitElement {

  static properties = {lot: {attribute: false}, day: {}, batch: {state: true}, step: {state: true}, trouble: {state: true}};

  static styles = [sheet, css`
    ol { list-style: none; padding: 0; margin: 0; border-block-start: var(--border) solid var(--line); }
    li { border-block-end: var(--border) solid var(--line); }
    .line { display: flex; flex-wrap: wrap; align-items: baseline; justify-content: space-between; gap: 0 var(--s3); }
    .grams { font-size: 1.75rem; font-variant-numeric: var(--figures); white-space: nowrap; }
    .foot { display: flex; flex-wrap: wrap; align-items: end; justify-content: space-between; gap: var(--s2) var(--s4); margin-block-start: var(--s2); }
    .foot s-field { max-width: 11rem; }
    p { margin: 0; }
  `];

  #asks = asking();
  #asked = {lot: null, step: NaN};

  constructor() {
    super();
    this.batch = null;
    this.trouble = null;
    this.step = scale.stepGrams;
  }

  willUpdate() {
    if (!scale.steps.includes(this.step)) {
      this.step = scale.stepGrams; // the reader's units are others now
    }
    if (this.lot !== this.#asked.lot || this.step !== this.#asked.step) {
      this.#asked = {lot: this.lot, step: this.step};
      this.#read();
    }
  }

  // A plan weighs to 0.1 g; any coarser step is the service's to round, so that it never falls short.
  async #read() {
    const isLast = this.#asks();
    this.batch = null;
    this.trouble = null;
    if (this.step === FINEST) {
      return;
    }
    const fillings = this.lot.runs.map(run => ({mould: studio.find('pieces', run.piece)?.mould, castings: run.castings}));
    try {
      const {batch} = await question('/api/batch', {mix: this.lot.mix, fillings: joined(fillings), scaleStepGrams: this.step});
      if (isLast()) this.batch = batch;
    } catch (refused) {
      if (isLast()) this.trouble = refused;
    }
  }

  get #lines() {
    return this.batch?.lines ?? this.lot.weighOut;
  }

  render() {
    const total = this.#lines.reduce((sum, line) => sum + line.grams, 0);
    return html`<ol>${this.#lines.map(line => this.#line(line))}</ol>
      <div class="foot"><p>${say('today.together', {mass: showMass(total)})}</p>
        <s-field class="screen" short needed label=${say('today.step')} .value=${this.step} .options=${scale.options} @value=${this.#set}></s-field></div>
      ${this.trouble ? html`<p class="care">${say('today.stepRefused', {why: this.trouble.message})}</p>` : ''}`;
  }

  #line({material, grams}) {
    const name = `${this.lot.id}/${material}`;
    const called = material === 'water' ? say('today.water') : nameOf(studio.book.materials, material);
    return html`<li><s-tick .on=${ticks.has(this.day, name)} @tick=${event => this.#tick(name, event.detail)}>
      <span class="line"><span>${called}</span> <span class="grams">${showWeighed(grams)}</span></span></s-tick></li>`;
  }

  #tick(name, on) {
    ticks.set(this.day, name, on);
    this.requestUpdate();
  }

  #set(event) {
    this.step = event.detail ?? FINEST;
    scale.stepGrams = this.step;
  }
}

function joined(fillings) {
  const castings = new Map();
  fillings.forEach(({mould, castings: count}) => castings.set(mould, (castings.get(mould) ?? 0) + count));
  return [...castings].map(([mould, count]) => ({mould, castings: count}));
}

customElements.define('s-weigh', Weigh);
