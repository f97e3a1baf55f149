import {LitElement, css, html} from 'lit';
import {sheet} from './sheet.js';
import {say} from '../app/words.js';
import {Problem} from '../app/problem.js';
import {faultInWords, inWords} from '../app/refused.js';

/** Something is on its way: says so only when it takes a while, in a space that is kept free. */
export class Busy extends LitElement {

  static properties = {label: {}};

  connectedCallback() {
    super.connectedCallback();
    this.setAttribute('aria-busy', 'true');
  }

  static styles = [sheet, css`
    :host { min-height: 6rem; padding: var(--s4) 0; color: var(--slate-2); }
    p { animation: come 0s 0.4s backwards; }
    @keyframes come { from { visibility: hidden; } }
  `];

  render() {
    return html`<p role="status">${this.label || say('parts.busy')}</p>`;
  }
}

/** Nothing is here yet: says what would be, and what to do first. */
export class Empty extends LitElement {

  static properties = {heading: {}};

  static styles = [sheet, css`
    :host { padding: var(--s5) var(--s4); border: var(--border) dashed var(--edge); border-radius: var(--corner); max-width: 48rem; }
    h2 { font-size: var(--t3); margin-block-end: var(--s2); }
    .out { display: flex; flex-wrap: wrap; gap: var(--s3); margin-block-start: var(--s3); }
  `];

  render() {
    return html`<h2>${this.heading}</h2><slot></slot><div class="out"><slot name="out"></slot></div>`;
  }
}

/** Something went wrong: the service's own sentences, and a way to try again ("again" event). */
export class Trouble extends LitElement {

  static properties = {problem: {attribute: false}, heading: {}};

  static styles = [sheet, css`
    :host { margin-block: var(--s3); padding: var(--s3) var(--s4); border-inline-start: var(--post) solid var(--oxide); background: var(--oxide-wash); max-width: 60rem; }
    h2 { font-size: var(--t3); margin-block-end: var(--s2); }
    code { font: inherit; font-weight: 600; }
  `];

  render() {
    const {problem} = this;
    if (problem instanceof Problem && problem.isOfOlderPlan) {
      return this.#older();
    }
    const faults = problem instanceof Problem ? problem.faults : [];
    return html`<div role="alert">
      <h2>${this.heading || (problem instanceof Problem && problem.title) || say('parts.failed')}</h2>
      ${faults.length > 1
        ? html`<ul>${faults.map(fault => html`<li><code>${fault.path}</code> ${say('parts.found', faultInWords(fault))}</li>`)}</ul>`
        : html`<p>${inWords(problem?.message)}</p>`}
      <button @click=${() => this.dispatchEvent(new CustomEvent('again'))}>${say('parts.again')}</button>
    </div>`;
  }

  // In which places the two differ is for programs; a reader only needs the way out.
  #older() {
    return html`<div role="alert"><h2>${say('parts.olderPlan')}</h2><p>${say('parts.olderPlanText')} <a href="/week">${say('parts.toWeek')}</a></p></div>`;
  }
}

customElements.define('s-busy', Busy);
customElements.define('s-empty', Empty);
customElements.define('s-trouble', Trouble);
