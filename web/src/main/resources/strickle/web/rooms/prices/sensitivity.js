import {LitElement, css, html} from 'lit';
import {styled} from '../../parts/styled.js';
import {sheet} from '../../parts/sheet.js';
import {say, nameOf} from '../../app/words.js';
import {studio} from '../../app/studio.js';
import {showMoney} from '../../app/money.js';
import {showPercent} from '../../app/numbers.js';
import {Asking} from './asking.js';
import {showMeasures} from './measure.js';
import '../../parts/states.js';

const BY_PERCENT = 10;
const MOST = 5;

/** Which numbers of the book move what is left most, as bars on one scale. */
class Moves extends LitElement {

  static properties = {piece: {attribute: false}, asked: {attribute: false}, price: {type: Number}};

  static styles = [sheet, css`
    :host { min-height: 15rem; }
    .bars { display: grid; grid-template-columns: minmax(8rem, 14rem) minmax(10rem, 1fr) auto; gap: var(--s2) var(--s3); align-items: center; }
    .track { position: relative; height: 24px; background: var(--lime-2); border-inline-start: 0; }
    .track::before { content: ""; position: absolute; inset-block: -4px; inset-inline-start: 50%; border-inline-start: var(--border) solid var(--slate-2); }
    .track i { position: absolute; inset-block: 3px; }
    .less { background: repeating-linear-gradient(45deg, var(--oxide) 0 3px, transparent 3px 6px); }
    .more { background: var(--moss); }
    .number { font-variant-numeric: var(--figures); text-align: end; }
    @media (max-width: 40rem) {
      .bars { grid-template-columns: minmax(0, 1fr); gap: var(--s1); }
      .number { text-align: start; margin-block-end: var(--s3); }
    }
  `];

  #asking = new Asking(this, '/api/sensitivity');

  render() {
    this.#asking.want({piece: this.piece.id, channel: this.asked.channel.id, price: this.price, byPercent: BY_PERCENT, most: MOST});
    const {answer, trouble} = this.#asking;
    if (trouble) {
      return html`<s-trouble .problem=${trouble} @again=${() => this.#asking.again()}></s-trouble>`;
    }
    return answer ? this.#shown(answer) : html`<s-busy></s-busy>`;
  }

  #shown({numbers, profit}) {
    const most = Math.max(...numbers.flatMap(one => [one.profitAtLow, one.profitAtHigh].map(at => Math.abs(at - profit))), 1e-9);
    return html`<p>${say('prices.movesText', {share: showPercent(BY_PERCENT), profit: showMoney(profit)})}</p>
      <div class="bars">${numbers.map(number => html`
        <span>${this.#named(number)} <small>${showMeasures(number.unit, number.low, number.high)}</small></span>
        <span class="track" aria-hidden="true">${[number.profitAtLow, number.profitAtHigh].map(at => this.#bar(at - profit, most))}</span>
        <span class="number">${showMoney(Math.min(number.profitAtLow, number.profitAtHigh))} … ${showMoney(Math.max(number.profitAtLow, number.profitAtHigh))}</span>`)}</div>`;
  }

  #named({what, material}) {
    return material ? `${what}: ${nameOf(studio.book.materials, material)}` : what;
  }

  #bar(by, most) {
    const width = (Math.abs(by) / most) * 50;
    return html`<i class=${by < 0 ? 'less' : 'more'} style=${styled({width: `${width}%`, left: `${by < 0 ? 50 - width : 50}%`})}></i>`;
  }
}

customElements.define('s-price-sensitivity', Moves);
