import {LitElement, css, html} from 'lit';
import {sheet} from '../../parts/sheet.js';
import {studio} from '../../app/studio.js';
import {Watching} from '../../app/watching.js';
import {mustNotBeAhead} from '../../app/ahead.js';
import {get} from '../../app/service.js';
import {settings} from '../../app/settings.js';
import {say} from '../../app/words.js';
import {showAmount, showTemperature} from '../../app/units.js';
import {showPercent} from '../../app/numbers.js';
import {showMoment} from '../../app/times.js';
import '../../parts/field.js';
import '../../parts/say.js';
import '../../parts/states.js';
import '../../parts/table.js';

/** What the room does to pours and coats, by the book's climate or on the days of the plan. */
class BenchAir extends LitElement {

  static properties = {wind: {state: true}, room: {state: true}, trouble: {state: true}};

  static styles = [sheet, css`s-field { max-width: 15rem; margin-block-end: var(--s4); }`];

  #asked = null;

  constructor() {
    super();
    this.wind = 0;
    this.room = null;
    this.trouble = null;
    new Watching(this, settings);
  }

  willUpdate() {
    const asked = [studio.book, studio.plan, this.wind];
    if (asked.some((one, at) => one !== this.#asked?.[at])) {
      this.#asked = asked;
      this.#read(asked);
    }
  }

  async #read(asked) {
    try {
      if (studio.plan) mustNotBeAhead();
      const {body} = await get(`/api/room?wind=${this.wind}${studio.plan ? '&plan=in-use' : ''}`);
      if (this.#asked === asked) {
        [this.room, this.trouble] = [body, null];
      }
    } catch (refused) {
      if (this.#asked === asked) this.trouble = refused;
    }
  }

  render() {
    return html`<s-field class="screen" needed short kind="speed" least="0" most="100" label=${say('bench.wind')} hint=${say('bench.windHint')} .value=${this.wind} @value=${event => (this.wind = event.detail ?? 0)}></s-field>
      ${this.trouble ? html`<s-trouble .problem=${this.trouble} @again=${() => { this.#asked = null; this.requestUpdate(); }}></s-trouble>` : ''}
      ${this.room ? this.#told() : this.trouble ? '' : html`<s-busy></s-busy>`}`;
  }

  #told() {
    const days = this.room.days ?? [];
    if (days.length === 0) {
      return html`<s-empty heading=${say('bench.noClimate')}><p>${say('bench.noClimateText')}</p><a slot="out" class="button do" href="/shelf/studio">${say('bench.toClimate')}</a></s-empty>`;
    }
    const dry = days.filter(({pour}) => pour && pour.level !== 'low');
    const damp = days.filter(({coat}) => coat && !coat.good);
    return html`<s-say kind=${dry.length + damp.length > 0 ? 'care' : 'ready'}>${dry.length + damp.length === 0 ? say('bench.airFine')
      : [dry.length > 0 ? say('bench.airDry', {count: dry.length}) : '', damp.length > 0 ? say('bench.airDamp', {count: damp.length}) : ''].join(' ')}</s-say>
      <s-table label=${say('bench.room')} .rows=${days} .styleRow=${day => (day.coat && !day.coat.good ? 'late' : '')} .columns=${[
        {name: 'from', label: say('bench.from'), show: day => (day.from ? showMoment(day.from) : say('bench.always'))},
        {name: 'air', label: say('bench.air'), number: true, show: day => showTemperature(day.airC)},
        {name: 'humidity', label: say('bench.humidity'), number: true, show: day => showPercent(day.humidityPercent, 0)},
        {name: 'loss', label: say('bench.loss'), number: true, show: day => (day.pour ? say('bench.band', {likely: showAmount('loss', day.pour.evaporationKgPerM2Hour), low: showAmount('loss', day.pour.atLeast), high: showAmount('loss', day.pour.atMost)}) : '–')},
        {name: 'means', label: say('bench.means'), show: day => (day.pour ? say(`bench.level_${day.pour.level}`) : '–')},
        {name: 'dew', label: say('bench.dew'), number: true, show: day => (day.coat ? showTemperature(day.coat.dewPointC) : '–')},
        {name: 'coat', label: say('bench.coat'), show: day => (day.coat ? say(day.coat.good ? 'bench.coatGood' : 'bench.coatBad', {least: showAmount('degrees', 3)}) : '–')},
      ]}></s-table><p class="quiet">${say('bench.airHint')}</p>`;
  }
}

customElements.define('s-bench-air', BenchAir);
