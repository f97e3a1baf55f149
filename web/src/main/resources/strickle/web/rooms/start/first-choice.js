import {LitElement, css, html} from 'lit';
import {sheet} from '../../parts/sheet.js';
import {studio} from '../../app/studio.js';
import {address} from '../../app/address.js';
import {currencies, hereCurrency, hereZone, zones} from '../../app/lists.js';
import {say} from '../../app/words.js';
import '../../parts/field.js';
import '../../parts/form.js';

/** The very first choice: look around in a made-up studio, or begin one's own. */
class FirstChoice extends LitElement {

  static properties = {name: {state: true}, currency: {state: true}, timeZone: {state: true}, busy: {state: true}, problem: {state: true}};

  static styles = [sheet, css`
    .ways { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(17rem, 100%), 1fr)); gap: var(--s4); align-items: start; margin-block-start: var(--s4); }
    .card { padding: var(--s4); }
    h2 { margin-block-end: var(--s2); font-size: var(--t3); }
  `];

  constructor() {
    super();
    this.name = '';
    this.currency = hereCurrency();
    this.timeZone = hereZone();
    this.busy = false;
    this.problem = null;
  }

  render() {
    return html`<div class="ways">
      <section class="card" aria-labelledby="look"><h2 id="look">${say('start.look')}</h2><p>${say('start.lookText')}</p>
        ${this.problem ? html`<s-trouble .problem=${this.problem} @again=${this.#look}></s-trouble>` : ''}
        <button class="do" ?disabled=${this.busy} @click=${this.#look}>${say('start.lookDo')}</button></section>
      <section class="card" aria-labelledby="own"><h2 id="own">${say('start.own')}</h2><p>${say('start.ownText')}</p>
        <s-form label=${say('start.ownDo')} .save=${() => this.#own()} @saved=${() => address.go('/start')}>
          <s-field needed path="name" label=${say('start.name')} .value=${this.name} @value=${event => (this.name = event.detail ?? '')}></s-field>
          <s-field needed path="currency" label=${say('start.currency')} .options=${currencies(this.currency)} .value=${this.currency} @value=${event => (this.currency = event.detail)}></s-field>
          <s-field needed path="timeZone" label=${say('start.timeZone')} .options=${zones(this.timeZone)} .value=${this.timeZone} @value=${event => (this.timeZone = event.detail)}></s-field>
        </s-form></section></div>`;
  }

  async #look() {
    this.busy = true;
    this.problem = null;
    try {
      await studio.create('demo', say('start.demoName'));
      address.go('/today');
    } catch (problem) {
      this.problem = problem;
    } finally {
      this.busy = false;
    }
  }

  #own() {
    return studio.create('empty', this.name, {currency: this.currency, timeZone: this.timeZone});
  }
}

customElements.define('s-first-choice', FirstChoice);
