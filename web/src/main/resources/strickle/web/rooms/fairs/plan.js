import {LitElement, css, html} from 'lit';
import {sheet} from '../../parts/sheet.js';
import {studio} from '../../app/studio.js';
import {address} from '../../app/address.js';
import {question} from '../../app/service.js';
import {say, nameOf} from '../../app/words.js';
import {showMoney} from '../../app/money.js';
import {showNumber, showPercent} from '../../app/numbers.js';
import {showMinutes, showMoment} from '../../app/times.js';
import {tell} from '../../parts/undo.js';
import {bring, ownOrders} from './build.js';
import '../../parts/field.js';
import '../../parts/say.js';
import '../../parts/states.js';
import '../../parts/table.js';

const answers = new Map();

/** What to bring to a fair, what it would earn, and what one more of anything would add. */
class FairPlan extends LitElement {

  static properties = {fair: {attribute: false}, budget: {state: true}, busy: {state: true}, trouble: {state: true}};

  static styles = [sheet, css`
    .ask { display: flex; flex-wrap: wrap; gap: var(--s3) var(--s4); align-items: end; margin-block: var(--s4); }
    .ask s-field { max-width: 15rem; }
    section { margin-block-start: var(--s5); }
    section > h2 { margin-block-end: var(--s2); }
    .answer { min-height: 16rem; }
  `];

  constructor() {
    super();
    this.budget = null;
    this.busy = false;
    this.trouble = null;
  }

  get #key() {
    return JSON.stringify([this.fair, this.budget]);
  }

  // An answer holds as long as the book it was made for.
  get #answer() {
    const kept = answers.get(this.#key);
    return kept?.book === studio.book ? kept.answer : null;
  }

  async #work() {
    const [key, {book}] = [this.#key, studio];
    this.busy = true;
    this.trouble = null;
    try {
      const answer = await question('/api/fair', {fair: this.fair.id, ...(this.budget === null ? {} : {budget: this.budget})});
      answers.set(key, {book, answer});
    } catch (refused) {
      this.trouble = refused;
    } finally {
      this.busy = false;
    }
  }

  render() {
    return html`<div class="ask screen"><s-field plain kind="money" least="0" label=${say('fairs.budget')} hint=${say('fairs.budgetHint')} .value=${this.budget} @value=${event => (this.budget = event.detail)}></s-field>
      <button class="do" ?disabled=${this.busy} @click=${this.#work}>${say(this.busy ? 'fairs.working' : 'fairs.work')}</button></div>
      <div class="answer" aria-busy=${this.busy ? 'true' : 'false'}>${this.#shown()}</div>`;
  }

  #shown() {
    if (this.trouble) {
      return html`<s-trouble .problem=${this.trouble} @again=${this.#work}></s-trouble>`;
    }
    const answer = this.#answer;
    if (!answer) {
      return html`<p class="quiet" role="status">${say(this.busy ? 'fairs.workingText' : 'fairs.notYet')}</p>`;
    }
    return html`${this.#sentence(answer)}${this.#bring(answer)}${this.#bound(answer)}${this.#worths(answer)}`;
  }

  #sentence(answer) {
    const count = answer.pieces.reduce((sum, one) => sum + one.bring, 0);
    const words = {count, profit: showMoney(answer.profit), table: showMoney(answer.tableCost), ready: answer.ready ? showMoment(answer.ready) : '', most: showMoney(answer.profitAtMost)};
    return html`<s-say kind=${answer.profit < 0 ? 'late' : 'ready'}>${say(answer.profit < 0 ? 'fairs.loses' : 'fairs.earns', words)}
      ${answer.ready ? say('fairs.readyAt', words) : ''}
      <button slot="out" class="do" ?disabled=${count === 0} @click=${() => this.#put(answer)}>${say('fairs.put')}</button></s-say>
      ${ownOrders(this.fair, studio.book.orders).length > 0 ? html`<p class="quiet">${say('fairs.inPlan')}</p>` : ''}`;
  }

  async #put(answer) {
    try {
      const count = await bring(this.fair, answer.pieces);
      tell(say('fairs.isPut', {count}), true);
      address.go('/week');
    } catch (refused) {
      this.trouble = refused;
    }
  }

  #bring({pieces}) {
    const number = (name, show) => ({name, label: say(`fairs.${name}`), number: true, by: one => one[name], show: one => show(one[name])});
    return html`<section aria-labelledby="bring"><h2 id="bring">${say('fairs.whatToBring')}</h2>
      <s-table label=${say('fairs.whatToBring')} .rows=${pieces} .columns=${[
        {name: 'piece', label: say('fairs.piece'), by: one => nameOf(studio.book.pieces, one.piece), show: one => nameOf(studio.book.pieces, one.piece)},
        number('bring', showNumber), number('stock', showNumber), number('make', showNumber), number('castings', showNumber),
        number('sold', value => showNumber(value, 1)), number('left', value => showNumber(value, 1)),
        number('sellsOutPercent', value => showPercent(value)), number('net', showMoney), number('cost', showMoney), number('profit', showMoney),
      ]}></s-table></section>`;
  }

  #bound({tightened, pieces, hoursLate}) {
    const held = pieces.filter(one => one.allowed < one.wanted);
    return held.length === 0 && !tightened?.length && !hoursLate ? '' : html`<section aria-labelledby="bound"><h2 id="bound">${say('fairs.bound')}</h2><ul>
      ${held.map(one => html`<li>${say('fairs.held', {piece: nameOf(studio.book.pieces, one.piece), wanted: one.wanted, allowed: one.allowed})}</li>`)}
      ${(tightened ?? []).map(one => html`<li>${say('fairs.tightened', {piece: nameOf(studio.book.pieces, one.piece), asked: one.asked, most: one.atMost})}
        ${one.because?.length ? html`<ul>${one.because.map(reason => html`<li>${reason}</li>`)}</ul>` : ''}</li>`)}
      ${hoursLate > 0 ? html`<li>${say('fairs.stillLate', {by: showMinutes(hoursLate * 60)})}</li>` : ''}</ul></section>`;
  }

  #worths({worths}) {
    const telling = worths.filter(worth => worth.gain > 0).sort((one, other) => other.gain - one.gain);
    return html`<section aria-labelledby="worth"><h2 id="worth">${say('fairs.worth')}</h2>${telling.length === 0
      ? html`<p>${say('fairs.nothingMore')}</p>`
      : html`<ul>${telling.map(worth => html`<li>${say(`fairs.worth_${worth.what}`, {of: this.#named(worth), gain: showMoney(worth.gain)})}</li>`)}</ul>`}</section>`;
  }

  #named({what, of}) {
    return {form: () => nameOf(studio.book.forms, of), mould: () => nameOf(studio.book.moulds, of)}[what]?.() ?? of;
  }
}

customElements.define('s-fair-plan', FairPlan);
