import {LitElement, css, html} from 'lit';
import {sheet} from '../../parts/sheet.js';
import {studio} from '../../app/studio.js';
import {question} from '../../app/service.js';
import {say, nameOf} from '../../app/words.js';
import {showAmount, showMass, showWeighed} from '../../app/units.js';
import {showPercent} from '../../app/numbers.js';
import {cleaned} from './fields.js';

const WAIT = 350;

/** What the mix that is being typed weighs out for one casting of a mould that uses it: grams, density, pigment. */
class Mixing extends LitElement {

  static properties = {mix: {attribute: false}, answer: {state: true}};

  static styles = [sheet, css`table { margin-block: var(--s2); }`];

  #asked = '';
  #timer = 0;

  constructor() {
    super();
    this.answer = null;
  }

  disconnectedCallback() {
    clearTimeout(this.#timer);
    super.disconnectedCallback();
  }

  get #mould() {
    const piece = studio.book.pieces.find(({mix}) => mix === this.mix.id);
    return studio.find('moulds', piece?.mould) ?? studio.book.moulds[0];
  }

  // As it is typed, saved or not; one that has no name yet is asked about all the same.
  willUpdate() {
    const recipe = {...cleaned(this.mix), id: this.mix.id || 'new', name: this.mix.name || 'new'};
    const asked = JSON.stringify({recipe, fillings: [{mould: this.#mould?.id, castings: 1}]});
    if (asked !== this.#asked && this.#mould) {
      const wait = this.#asked ? WAIT : 0;
      this.#asked = asked;
      clearTimeout(this.#timer);
      this.#timer = setTimeout(() => this.#read(asked), wait);
    }
  }

  async #read(asked) {
    let answer = null;
    try {
      answer = await question('/api/batch', JSON.parse(asked));
    } catch {
      // not yet a whole mix: its form says what is missing
    }
    this.answer = asked === this.#asked ? answer : this.answer;
  }

  render() {
    if (!this.answer) {
      return html`<p class="quiet">${say('shelf.mixLater')}</p>`;
    }
    const {batch} = this.answer;
    const {verdict, total, limit} = batch.pigment;
    const name = material => (material === 'water' ? say('shelf.water') : nameOf(studio.book.materials, material));
    return html`<p>${say('shelf.weighs', {mould: this.#mould.name, mass: showMass(batch.wetGrams), density: showAmount('density', batch.wetDensityKgPerM3)})}</p>
      <table><caption class="unseen">${say('shelf.weighOut')}</caption><tbody>${batch.lines.map(line => html`<tr><th scope="row">${name(line.material)}</th><td class="number">${showWeighed(line.grams)}</td></tr>`)}</tbody></table>
      ${verdict === 'none' ? '' : html`<p class=${verdict === 'within' ? '' : 'care'}>${say(`shelf.pigment.${verdict}`, {share: showPercent(total.percentOfCement), most: showPercent(limit.percentOfCement), unknown: (limit.unknown ?? []).map(name).join(', ')})}</p>`}`;
  }
}

customElements.define('s-shelf-mixing', Mixing);
