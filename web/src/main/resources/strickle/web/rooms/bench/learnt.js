import {LitElement, css, html} from 'lit';
import {sheet} from '../../parts/sheet.js';
import {studio} from '../../app/studio.js';
import {Watching} from '../../app/watching.js';
import {settings} from '../../app/settings.js';
import {question} from '../../app/service.js';
import {say} from '../../app/words.js';
import {showNumber, showPercent} from '../../app/numbers.js';
import {tell} from '../../parts/undo.js';
import '../../parts/say.js';
import '../../parts/states.js';
import '../../parts/table.js';

/** What has been noted of the plan in use, held against the book's times and good shares. */
class BenchLearnt extends LitElement {

  static properties = {lessons: {state: true}, trouble: {state: true}, busy: {state: true}};

  static styles = [sheet, css`:host { min-height: 12rem; }`];

  #asked = null;

  constructor() {
    super();
    this.lessons = null;
    this.trouble = null;
    this.busy = false;
    new Watching(this, settings);
  }

  willUpdate() {
    const asked = [studio.book, studio.plan, studio.progress];
    if (studio.plan && asked.some((one, at) => one !== this.#asked?.[at])) {
      this.#asked = asked;
      this.#read(asked);
    }
  }

  async #read(asked) {
    try {
      const {lessons} = await question('/api/learn?plan=in-use', {});
      if (this.#asked === asked) {
        [this.lessons, this.trouble] = [lessons, null];
      }
    } catch (refused) {
      if (this.#asked === asked) this.trouble = refused;
    }
  }

  render() {
    if (!studio.plan) {
      return html`<s-empty heading=${say('bench.learnNoPlan')}><p>${say('bench.learnHint')}</p><a slot="out" class="button do" href="/week">${say('bench.toWeek')}</a></s-empty>`;
    }
    if (this.trouble) {
      return html`<s-trouble .problem=${this.trouble} @again=${() => { this.#asked = null; this.requestUpdate(); }}></s-trouble>`;
    }
    return this.lessons ? this.#told() : html`<s-busy></s-busy>`;
  }

  #told() {
    const {lessons} = this;
    const offers = lessons.filter(({offer}) => offer !== undefined).length;
    return html`<s-say kind=${offers > 0 ? 'care' : lessons.length > 0 ? 'ready' : ''}>${lessons.length === 0 ? say('bench.learnNothing') : offers > 0 ? say('bench.learnOffers', {count: offers}) : say('bench.learnFits')}
        ${offers > 0 ? html`<button slot="out" class="do" ?disabled=${this.busy} @click=${this.#take}>${say('bench.learnTake', {count: offers})}</button>` : ''}</s-say>
      <p class="quiet">${say('bench.learnHint')}</p>
      ${lessons.length > 0 ? html`<s-table label=${say('bench.learnt')} .rows=${lessons} .columns=${[
        {name: 'what', label: say('bench.learnWhat'), show: one => one.what},
        {name: 'book', label: say('bench.learnBook'), number: true, show: one => amount(one.unit, one.book)},
        {name: 'records', label: say('bench.learnRecords'), number: true, show: one => say('bench.band', {likely: amount(one.unit, one.estimate), low: amount(one.unit, one.low), high: amount(one.unit, one.high)})},
        {name: 'from', label: say('bench.learnFrom'), number: true, show: one => one.records},
        {name: 'offer', label: say('bench.learnOffer'), number: true, show: one => (one.offer === undefined ? '–' : amount(one.unit, one.offer))},
      ]}></s-table>` : ''}`;
  }

  #take = async () => {
    this.busy = true;
    try {
      await studio.act('/api/learn/take', {});
      tell(say('bench.learnTaken'), true);
    } catch (refused) {
      this.trouble = refused;
    } finally {
      this.busy = false;
    }
  };
}

const amount = (unit, value) => (unit === 'percent' ? showPercent(value) : say('bench.minutes', {minutes: showNumber(value, 1)}));

customElements.define('s-bench-learnt', BenchLearnt);
