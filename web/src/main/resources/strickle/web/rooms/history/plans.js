import {LitElement, html, nothing} from 'lit';
import {sheet} from '../../parts/sheet.js';
import {link} from '../../app/address.js';
import {asking} from '../../app/latest.js';
import {laying} from '../../app/laying.js';
import {pages, remove} from '../../app/service.js';
import {studio} from '../../app/studio.js';
import {showMoment, showWork} from '../../app/times.js';
import {say} from '../../app/words.js';
import {tell} from '../../parts/undo.js';
import {keptSheet} from './kept-sheet.js';
import '../../parts/dialog.js';
import '../../parts/states.js';

const PAGE = 20;

/** The plans that were laid out, taken or not: looking at one, and removing one for good. */
class Plans extends LitElement {

  static properties = {items: {state: true}, next: {state: true}, inUse: {state: true}, chosen: {state: true}, problem: {state: true}};

  static styles = [sheet, keptSheet];

  #asks = asking();

  constructor() {
    super();
    Object.assign(this, {items: null, next: '', inUse: '', chosen: null, problem: null});
    this.again = () => this.#read();
  }

  connectedCallback() {
    super.connectedCallback();
    studio.addEventListener('change', this.again);
    this.#read();
  }

  disconnectedCallback() {
    studio.removeEventListener('change', this.again);
    super.disconnectedCallback();
  }

  // As many as were opened, all where all were, or with some more behind them.
  async #read(after = '') {
    const isLast = this.#asks();
    const least = after ? PAGE : this.items && !this.next ? Infinity : Math.max(PAGE, this.items?.length ?? 0);
    try {
      const {items, next, last} = await pages('/api/plans', {least, after, keeps: plan => studio.owns(plan)});
      if (!isLast()) return;
      this.items = after ? [...this.items, ...items] : items;
      this.next = next;
      this.inUse = last.inUse ?? '';
      this.problem = null;
    } catch (problem) {
      if (isLast()) this.problem = problem;
    }
  }

  render() {
    return html`<h2 tabindex="-1">${say('history.plans')}</h2><p>${say('history.plansText')}</p>
      ${this.problem ? html`<s-trouble .problem=${this.problem} @again=${this.again}></s-trouble>` : this.#list()}
      ${this.next ? html`<p><button @click=${() => this.#read(this.next)}>${say('history.olderPlans')}</button></p>` : nothing}
      ${this.#asking()}`;
  }

  #list() {
    if (this.items === null) {
      return html`<s-busy></s-busy>`;
    }
    return this.items.length === 0 ? html`<p class="quiet">${say('history.noPlans')}</p>` : html`<ul>${this.items.map(plan => this.#row(plan))}</ul>`;
  }

  #row(plan) {
    const at = showMoment(plan.createdAt);
    const isInUse = plan.id === this.inUse;
    const stays = isInUse || plan.state === 'running';
    return html`<li><span><b>${at}</b> ${came(plan)}${isInUse ? html` <small>${say('history.planInUse')}</small>` : nothing}</span>
      ${plan.totals && !isInUse ? html`<a class="button" href=${link('/week', {plan: plan.id})} aria-label=${say('history.lookOf', {at})}>${say('history.look')}</a>` : nothing}
      ${stays ? nothing : html`<button aria-label=${say('history.removePlanOf', {at})} @click=${() => (this.chosen = plan)}>${say('parts.remove')}</button>`}</li>`;
  }

  #asking() {
    const at = this.chosen ? showMoment(this.chosen.createdAt) : '';
    return html`<s-dialog .open=${this.chosen !== null} heading=${say('history.removePlanHeading', {at})} @close=${() => (this.chosen = null)}>
      <p>${say('history.removePlanText')}</p>
      <button slot="foot" class="do" @click=${this.#remove}>${say('history.removePlan')}</button></s-dialog>`;
  }

  async #remove() {
    const {id, createdAt} = this.chosen;
    this.chosen = null;
    try {
      await remove(`/api/plans/${id}`);
      if (laying.plan?.id === id) {
        laying.leave();
      }
      tell(say('history.planRemoved', {at: showMoment(createdAt)}));
      await this.#read();
      await this.updateComplete;
      this.renderRoot.querySelector('h2').focus(); // the button that was pressed is gone
      await studio.refresh();
    } catch (problem) {
      tell(problem.message);
      await this.#read();
    }
  }
}

/** What has come of a plan, in a few words. */
function came({state, totals}) {
  if (!totals) {
    return say(`history.planStates.${state}`);
  }
  const late = totals.lateOrders > 0 ? say('history.planLate', {count: totals.lateOrders}) : say('history.planOnTime');
  return say('history.planCame', {late, hands: showWork(totals.attendedMinutes)});
}

customElements.define('s-plans', Plans);
