import {LitElement, css, html} from 'lit';
import {sheet} from '../../parts/sheet.js';
import {say} from '../../app/words.js';
import {showMoney} from '../../app/money.js';
import {showMinutes} from '../../app/times.js';

/** What a piece costs by its typical run and by the lots of the plan, with why they differ. */
class Comparison extends LitElement {

  static properties = {cost: {attribute: false}};

  static styles = [sheet, css`ul { margin-block-end: var(--s3); }`];

  render() {
    const {comparison, full, minutes} = this.cost;
    const less = comparison.difference < 0;
    return html`<p>${say(comparison.difference === 0 ? 'prices.same' : less ? 'prices.cheaper' : 'prices.dearer', {
      amount: showMoney(Math.abs(comparison.difference)), planned: showMoney(full), standard: showMoney(comparison.standardFull),
    })}</p>
    ${comparison.reasons.length > 0 ? html`<ul>${comparison.reasons.map(reason => html`<li>${reason.why}: ${showMoney(reason.amount, {sign: true})}</li>`)}</ul>` : ''}
    <table><caption class="unseen">${say('prices.compared')}</caption>
      <thead><tr><th scope="col">${say('prices.what')}</th><th scope="col" class="number">${say('prices.standard')}</th><th scope="col" class="number">${say('prices.planned')}</th></tr></thead>
      <tbody><tr><th scope="row">${say('prices.hands')}</th><td class="number">${showMinutes(comparison.standardMinutes)}</td><td class="number">${showMinutes(minutes)}</td></tr>
      ${comparison.lines.filter(line => line.difference !== 0).map(line => html`<tr><th scope="row">${line.what}</th><td class="number">${showMoney(line.standard)}</td><td class="number">${showMoney(line.planned)}</td></tr>`)}
      <tr><th scope="row">${say('prices.full')}</th><td class="number">${showMoney(comparison.standardFull)}</td><td class="number">${showMoney(full)}</td></tr></tbody></table>`;
  }
}

customElements.define('s-price-comparison', Comparison);
