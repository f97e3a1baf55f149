import {LitElement, css, html} from 'lit';
import {sheet} from '../../parts/sheet.js';
import {question} from '../../app/service.js';
import {link} from '../../app/address.js';
import {say} from '../../app/words.js';
import {cleaned} from './fields.js';

const WAIT = 700;

/** What would come of a thing if it were saved, while it is typed. */
class ShelfCheck extends LitElement {

  static properties = {collection: {}, thing: {attribute: false}, base: {attribute: false}, found: {state: true}};

  static styles = [sheet, css`:host { min-height: 3rem; } ul { padding-inline-start: 1.1em; } li { margin-block-end: var(--s1); }`];

  #asked = '';
  #timer = 0;
  #abort = null;

  constructor() {
    super();
    this.found = null;
  }

  disconnectedCallback() {
    clearTimeout(this.#timer);
    this.#abort?.abort();
    super.disconnectedCallback();
  }

  willUpdate() {
    const asked = JSON.stringify([this.collection, cleaned(this.thing)]);
    if (asked !== this.#asked) {
      this.#asked = asked;
      clearTimeout(this.#timer);
      this.#timer = setTimeout(() => this.#ask(), WAIT);
    }
  }

  async #ask() {
    this.#abort?.abort();
    const abort = new AbortController();
    this.#abort = abort;
    const id = this.base && this.collection !== 'studio' ? {id: this.base.id} : {};
    try {
      this.found = await question(link(`/api/check/${this.collection}`, id), cleaned(this.thing), {signal: abort.signal});
    } catch (failed) {
      if (failed.name !== 'AbortError') {
        this.found = null; // not yet a whole thing: its form says what is missing
      }
    }
  }

  render() {
    const {found} = this;
    if (!found?.good) {
      return html`<p class="quiet">${say('shelf.checkLater')}</p>`;
    }
    const {hindrances = [], advice = [], notJudged = []} = found;
    return hindrances.length + advice.length === 0
      ? html`<p class="ready">${say('shelf.checkFine')}</p>${notJudged.length > 0 ? html`<p class="quiet">${say('shelf.notJudged', {steps: notJudged.join(', ')})}</p>` : ''}`
      : html`${hindrances.length > 0 ? html`<p class="care">${say('shelf.hindered')}</p><ul>${hindrances.map(one => html`<li>${say('parts.found', one)}</li>`)}</ul>` : ''}
        ${advice.length > 0 ? html`<p class="care">${say('shelf.advice')}</p><ul>${advice.map(one => html`<li>${one.said} ${one.because} ${one.rather} <small>${one.basis}</small></li>`)}</ul>` : ''}`;
  }
}

customElements.define('s-shelf-check', ShelfCheck);
