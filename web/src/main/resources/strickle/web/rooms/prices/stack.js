import {LitElement, css, html} from 'lit';
import {styled} from '../../parts/styled.js';
import {sheet} from '../../parts/sheet.js';
import {say} from '../../app/words.js';
import {showMoney} from '../../app/money.js';
import {showPercent} from '../../app/numbers.js';

/**
 * What becomes of a price, as a stack that is read from the left: material, hands, wear, overhead, what
 * the channel takes, what is left. Each has its own pattern as well as its colour, and its amount in
 * words below.
 *
 * `<s-price-stack .parts=${[{kind: 'material', amount: 6.73}, …]} .whole=${84}></s-price-stack>`
 */
class Stack extends LitElement {

  static properties = {parts: {attribute: false}, whole: {type: Number}};

  static styles = [sheet, css`
    .bar { display: flex; height: 44px; border: var(--border) solid var(--edge); background: var(--lime); overflow: hidden; }
    .bar i { flex: none; border-inline-end: 2px solid var(--lime); }
    .material, .labour, .wear, .overhead, .takes, .left { background-color: var(--ink); background-size: 8px 8px; }
    .material { --ink: var(--slate-2); }
    .labour { --ink: var(--terracotta); background-image: repeating-linear-gradient(135deg, transparent 0 5px, rgb(255 255 255 / 0.28) 5px 7px); }
    .wear { --ink: var(--ochre); background-image: repeating-linear-gradient(0deg, transparent 0 4px, rgb(255 255 255 / 0.35) 4px 6px); }
    .overhead { --ink: var(--edge); background-image: repeating-linear-gradient(90deg, transparent 0 4px, rgb(255 255 255 / 0.3) 4px 6px); }
    .takes { --ink: var(--closed); background-image: radial-gradient(var(--slate-2) 1px, transparent 1.4px); }
    .left { --ink: var(--moss); }
    .short { --ink: var(--oxide-wash); background-color: var(--ink); background-image: repeating-linear-gradient(45deg, var(--oxide) 0 2px, transparent 2px 8px); }
    dl { display: grid; grid-template-columns: repeat(auto-fit, minmax(9.5rem, 1fr)); gap: var(--s2) var(--s3); margin-block-start: var(--s3); }
    dl div { display: grid; grid-template-columns: 16px 1fr; gap: 0 var(--s2); align-items: center; }
    dl i { width: 16px; height: 16px; border: var(--border) solid var(--edge); }
    dt { font-size: var(--t1); color: var(--slate-2); }
    dd { grid-column: 2; margin: 0; font-variant-numeric: var(--figures); }
  `];

  render() {
    const short = Math.max(0, -(this.parts.find(part => part.kind === 'left')?.amount ?? 0));
    const width = this.whole + short;
    return html`
      <div class="bar" aria-hidden="true">${this.parts.filter(part => part.amount > 0).map(part => html`<i class=${part.kind} style=${styled({width: `${(part.amount / (width || 1)) * 100}%`})}></i>`)}</div>
      <dl>${this.parts.map(part => this.#line(part))}</dl>`;
  }

  #line({kind, amount}) {
    const lost = kind === 'left' && amount < 0;
    return html`<div><i class=${lost ? 'short' : kind} aria-hidden="true"></i><dt>${say(lost ? 'prices.parts.short' : `prices.parts.${kind}`)}</dt>
      <dd class=${lost ? 'late' : ''}>${showMoney(Math.abs(amount))} <small>${this.whole > 0 ? showPercent((Math.abs(amount) / this.whole) * 100) : ''}</small></dd></div>`;
  }
}

customElements.define('s-price-stack', Stack);
