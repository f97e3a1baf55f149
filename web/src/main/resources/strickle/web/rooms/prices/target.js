import {LitElement, css, html} from 'lit';
import {sheet} from '../../parts/sheet.js';
import {address} from '../../app/address.js';
import {say} from '../../app/words.js';
import {showMoney} from '../../app/money.js';
import {showPercent} from '../../app/numbers.js';
import {Asking} from './asking.js';
import {showMeasure} from './measure.js';
import '../../parts/field.js';
import '../../parts/say.js';
import '../../parts/states.js';

/** Whether the price holds the margin, and for every lever alone what would close the gap. */
class Target extends LitElement {

  static properties = {piece: {attribute: false}, asked: {attribute: false}, price: {type: Number}};

  static styles = [sheet, css`
    .holds { background: var(--moss-wash); }
    .beside { max-width: 15rem; margin-block: var(--s3); }
    .answer { min-height: 18rem; }
    h3 { margin-block: var(--s4) var(--s2); }
  `];

  #asking = new Asking(this, '/api/target');

  get #reference() {
    const value = Number(address.state.beside ?? NaN);
    return Number.isFinite(value) && value > 0 ? value : undefined;
  }

  render() {
    const {channel, margin} = this.asked;
    this.#asking.want({piece: this.piece.id, channel: channel.id, price: this.price, marginPercent: margin, referencePrice: this.#reference});
    return html`<s-field class="beside screen" plain short kind="money" label=${say('prices.beside')} hint=${say('prices.besideHint')} .value=${this.#reference ?? null}
        @value=${event => address.setState({beside: event.detail ?? undefined})}></s-field>
      <div class="answer">${this.#answer()}</div>`;
  }

  #answer() {
    const {answer, trouble} = this.#asking;
    if (trouble) {
      return html`<s-trouble .problem=${trouble} @again=${() => this.#asking.again()}></s-trouble>`;
    }
    return answer ? html`${this.#sentence(answer)}${this.#levers(answer)}${this.#table(answer.table)}` : html`<s-busy></s-busy>`;
  }

  #sentence(answer) {
    const words = {price: showMoney(answer.price), wanted: showPercent(answer.wantedPercent), margin: showPercent(answer.marginPercent), gap: showMoney(Math.abs(answer.gap)), most: showMoney(answer.mostCost)};
    return html`<s-say kind=${answer.holds ? 'ready' : 'care'}>${say(answer.holds ? 'prices.holds' : 'prices.fails', words)}
      ${say('prices.largest', {lines: answer.largest.map(line => `${line.what} ${showMoney(line.amount)}`).join(', ')})}
      ${this.#ratio(answer)}</s-say>`;
  }

  #ratio({reference}) {
    return reference ? say('prices.ratio', {price: showMoney(reference.price), share: showPercent(reference.costPercent)}) : '';
  }

  #levers({levers}) {
    return html`<div class="scroll" tabindex="0" role="region" aria-label=${say('prices.levers')}><table><caption class="unseen">${say('prices.levers')}</caption>
      <thead><tr><th scope="col">${say('prices.lever')}</th><th scope="col" class="number">${say('prices.now')}</th><th scope="col" class="number">${say('prices.closes')}</th></tr></thead>
      <tbody>${levers.map(lever => html`<tr><th scope="row">${say(`prices.lever_${lever.kind}`)}</th><td class="number">${showMeasure(lever.unit, lever.present)}</td>
        <td class="number">${this.#closing(lever)}</td></tr>`)}</tbody></table></div>`;
  }

  #closing(lever) {
    if (lever.closing !== undefined) {
      return html`<strong>${showMeasure(lever.unit, lever.closing)}</strong>`;
    }
    if (lever.note) {
      return html`<span class="quiet">${lever.note}</span>`;
    }
    const margin = showPercent(lever.marginAtLimitPercent);
    return lever.limit === undefined
      ? html`<span class="quiet">${say('prices.cannotEver', {margin})}</span>`
      : html`<span class="quiet">${say('prices.cannotEven', {value: showMeasure(lever.unit, lever.limit), margin})}</span>`;
  }

  #table({minutesLessPercent, rows}) {
    return html`<h3>${say('prices.two')}</h3><div class="scroll" tabindex="0" role="region" aria-label=${say('prices.two')}><table><caption class="unseen">${say('prices.two')}</caption>
      <thead><tr><th scope="col">${say('prices.run')}</th>${minutesLessPercent.map(less => html`<th scope="col" class="number">${less === 0 ? say('prices.asNow') : say('prices.less', {share: showPercent(less)})}</th>`)}</tr></thead>
      <tbody>${rows.map(row => html`<tr><th scope="row">${say('prices.castings', {count: row.castings})}</th>${row.cells.map(cell => html`<td class="number ${cell.holds ? 'holds' : ''}">
        ${cell.holds ? say('prices.holdsAt', {margin: showPercent(cell.marginPercent)}) : showPercent(cell.marginPercent)}</td>`)}</tr>`)}</tbody></table></div>`;
  }
}

customElements.define('s-price-target', Target);
