import {LitElement, css, html} from 'lit';
import {sheet} from '../parts/sheet.js';
import {studio} from './studio.js';
import {Conflict} from './problem.js';
import {say} from './words.js';
import {tell} from '../parts/undo.js';
import '../parts/conflict.js';

/** A change that was made while the service was away and is refused now: it waits for a decision. */
class Refusal extends LitElement {

  static properties = {refusal: {attribute: false}, choosing: {state: true}};

  static styles = [sheet, css`
    .line { display: flex; flex-wrap: wrap; align-items: center; gap: var(--s2) var(--s4); padding: var(--s2) var(--s4); background: var(--oxide-wash); border-block-end: var(--border) solid var(--line); }
    p { margin: 0; flex: 1 1 20rem; }
    @media print { :host { display: none; } }
  `];

  constructor() {
    super();
    this.choosing = false;
  }

  render() {
    const {waiting, problem} = this.refusal;
    const both = problem instanceof Conflict;
    return html`<div class="line" role="alert"><p>${say('shell.refused', {what: say(`trade.${waiting.collection}`), id: waiting.mine?.name ?? waiting.id})}: ${problem.message}</p>
        ${both ? html`<button @click=${() => (this.choosing = true)}>${say('shell.look')}</button>` : ''}
        <button @click=${() => this.#settle()}>${say('shell.giveUp')}</button></div>
      ${both && this.choosing ? html`<s-conflict .conflict=${problem} @choice=${this.#choice} @close=${() => (this.choosing = false)}></s-conflict>` : ''}`;
  }

  #choice(event) {
    const {base, mine} = event.detail;
    this.#settle(mine === undefined ? undefined : {base, mine});
  }

  async #settle(choice) {
    this.choosing = false;
    try {
      await studio.settleRefusal(choice);
    } catch (problem) {
      tell(problem.message);
    }
  }
}

customElements.define('s-refusal', Refusal);
