import {LitElement, css, html, nothing} from 'lit';
import {sheet} from '../../parts/sheet.js';
import {USUAL, makeFirst} from '../../app/beginning.js';
import {studio} from '../../app/studio.js';
import {address} from '../../app/address.js';
import {settings} from '../../app/settings.js';
import {showAmount} from '../../app/units.js';
import {showPercent} from '../../app/numbers.js';
import {showMinutes} from '../../app/times.js';
import {Problem} from '../../app/problem.js';
import {say} from '../../app/words.js';
import {tell} from '../../parts/undo.js';
import '../../parts/field.js';
import '../../parts/form.js';

const DAYS = ['MON', 'TUE', 'WED', 'THU', 'FRI', 'SAT', 'SUN'];
const BEGIN = {piece: '', volumeMl: null, cavities: 1, count: 1, setHours: 24, price: null, mix: '', binder: '', waterPercent: 16,
  packGrams: null, packPrice: null, workingMinutes: 30, person: '', days: ['MON', 'TUE', 'WED', 'THU', 'FRI'], from: '09:00', to: '17:00'};

// About what a sack weighs: it is asked for in kilograms or pounds, as it is printed on the sack.
const PACK_GRAMS = 25_000;

// Where in the first book each answer goes, for what the service finds wrong with it.
const PATHS = {piece: 'pieces[0].name', volumeMl: 'moulds[0].volumeMl', cavities: 'moulds[0].cavities', count: 'forms[0].count',
  setHours: 'moulds[0].setHours', price: 'pieces[0].price', mix: 'mixes[0].name', binder: 'materials[0].name', waterPercent: 'mixes[0].water',
  packGrams: 'materials[0].pack.quantity', packPrice: 'materials[0].pack.price', workingMinutes: 'mixes[0].workingMinutes',
  person: 'people[0].name', from: 'people[0].hours', to: 'people[0].hours'};

/** Three questions that make a first book: what is cast, what with, and who works when. */
class Questions extends LitElement {

  static properties = {answers: {state: true}};

  static styles = [sheet, css`
    fieldset { border: 0; border-block-start: var(--border) solid var(--line); margin: 0; padding: var(--s3) 0 0; min-width: 0; }
    legend { font: 600 var(--t3) var(--head); padding: 0 var(--s3) 0 0; }
    .fields { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(14rem, 100%), 1fr)); gap: var(--s4); align-items: start; }
    .days { display: flex; flex-wrap: wrap; gap: 0 var(--s4); grid-column: 1 / -1; }
    .days > span { width: 100%; font-weight: 600; }
  `];

  constructor() {
    super();
    this.answers = BEGIN;
  }

  render() {
    const field = (name, kind, more = {}) => html`<s-field short path=${PATHS[name]} label=${say(`start.${more.word ?? name}`)} .kind=${kind} ?needed=${!more.free}
      size=${more.size ?? nothing} hint=${more.hint ? say(`start.${more.hint}`) : ''} .least=${more.least} .most=${more.most} .value=${this.answers[name]}
      @value=${event => (this.answers = {...this.answers, [name]: event.detail})}></s-field>`;
    return html`<s-form draft="first-book" label=${say('start.make')} .value=${this.answers} .save=${() => this.#make()}
      @restore=${event => (this.answers = {...BEGIN, ...event.detail.value})} @restart=${() => (this.answers = BEGIN)} @saved=${this.#made}>
      <fieldset><legend>${say('start.piece')}</legend><div class="fields">
        ${field('piece', 'text', {word: 'pieceName', hint: 'pieceNameHint'})}
        ${field('volumeMl', 'volume', {word: 'volume', hint: settings.units === 'us' ? 'volumeHintUs' : 'volumeHint', least: 1})}
        ${field('cavities', 'whole', {least: 1})}
        ${field('count', 'whole', {word: 'forms', least: 1})}
        ${field('setHours', 'hours', {least: 0})}
        ${field('price', 'money', {free: true, least: 0})}
      </div></fieldset>
      <fieldset><legend>${say('start.mix')}</legend><div class="fields">
        ${field('mix', 'text', {word: 'mixName'})}
        ${field('binder', 'text', {hint: 'binderHint'})}
        ${field('waterPercent', 'percent', {word: 'water', least: 1, most: 100})}
        ${field('packGrams', 'mass', {word: 'packQuantity', least: 1, size: PACK_GRAMS})}
        ${field('packPrice', 'money', {least: 0})}
        ${field('workingMinutes', 'minutes', {least: USUAL.pourMinutes})}
      </div></fieldset>
      <fieldset><legend>${say('start.people')}</legend><div class="fields">
        ${field('person', 'text', {word: 'personName'})}
        ${field('from', 'clock')}
        ${field('to', 'clock')}
        <div class="days" role="group" aria-labelledby="days"><span id="days">${say('start.days')}</span>${DAYS.map(day => this.#day(day))}</div>
      </div></fieldset>
      <p class="quiet">${this.#assumed()}</p>
      <a slot="foot" class="button" href="/shelf">${say('start.skip')}</a>
    </s-form>`;
  }

  #day(day) {
    const {days} = this.answers;
    return html`<s-field kind="check" label=${say(`start.days7.${day}`)} .value=${days.includes(day)}
      @value=${event => (this.answers = {...this.answers, days: DAYS.filter(other => (other === day ? event.detail : days.includes(other)))})}></s-field>`;
  }

  #assumed() {
    const minutes = name => showMinutes(USUAL[`${name}Minutes`]);
    return say('start.assumed', {prep: minutes('prep'), pour: minutes('pour'), demould: minutes('demould'), mixing: minutes('mix'), wash: minutes('wash'),
      good: showPercent(USUAL.goodPercent), density: showAmount('density', USUAL.wetDensityKgPerM3)});
  }

  async #make() {
    const {days, from, to} = this.answers;
    const faults = [];
    if (days.length === 0) {
      faults.push({path: '$.people[0].hours', found: say('parts.nothing'), right: say('start.noDay')});
    } else if (to <= from) {
      faults.push({path: '$.people[0].hours', found: `${from} – ${to}`, right: say('start.notLater')});
    }
    if (faults.length > 0) {
      throw new Problem(422, {title: '', faults});
    }
    await makeFirst(this.answers);
  }

  #made() {
    tell(say('start.made'), () => studio.undo());
    address.go('/orders');
  }
}

customElements.define('s-questions', Questions);
