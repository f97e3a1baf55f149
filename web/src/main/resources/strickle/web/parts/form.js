import {LitElement, css, html} from 'lit';
import {sheet} from './sheet.js';
import {drafts} from './drafts.js';
import {say} from '../app/words.js';
import {Conflict, Problem} from '../app/problem.js';
import {faultInWords} from '../app/refused.js';
import './conflict.js';

/**
 * A form: its fields, what is wrong with them, and saving.
 *
 * `<s-form .save=${() => studio.put('orders', this.draft, this.base)} .value=${this.draft} .base=${this.base}
 *   draft="orders/O-12" @saved=${…} @restore=${({detail}) => this.take(detail.value, detail.base)}> <s-field …> … </s-form>`
 *
 * Saving asks every field first. What a field or the service finds wrong is told in one summary that
 * takes focus and leads to the fields; the service's faults find their field by its path. With a name
 * for its draft, what was typed is kept on this machine until it is saved or dropped, with what it began
 * from: "restore" gives both back after a reload, so that a change that somebody else has made meanwhile
 * is seen when it is saved. When somebody else has changed the thing, both are shown to choose from;
 * "resolved" then has {base, mine} to save again, which the form does by `.save(mine, base)`.
 */
export class Form extends LitElement {

  static properties = {
    save: {attribute: false}, value: {attribute: false}, base: {attribute: false}, names: {attribute: false},
    draft: {}, label: {}, cancel: {type: Boolean}, busy: {state: true}, faults: {state: true},
    problem: {state: true}, conflict: {state: true}, restored: {state: true},
  };

  static styles = [sheet, css`
    form { display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--s4); }
    .summary { padding: var(--s3) var(--s4); border: 2px solid var(--oxide); background: var(--oxide-wash); border-radius: var(--corner); }
    .summary:focus { outline: var(--ring) solid var(--slate); outline-offset: 2px; }
    .summary h2 { font-size: var(--t3); margin-block-end: var(--s2); }
    .summary a { color: var(--oxide); }
    .restored { padding: var(--s2) var(--s3); border-inline-start: var(--post) solid var(--ochre); background: var(--ochre-wash); }
    .foot { display: flex; flex-wrap: wrap; gap: var(--s3); align-items: center; }
  `];

  #fields = new Set();

  constructor() {
    super();
    this.busy = false;
    this.faults = [];
    this.problem = null;
    this.conflict = null;
    this.restored = false;
    this.addEventListener('s-field-here', event => this.#register(event));
    this.addEventListener('s-changed', () => this.#keep());
  }

  #register(event) {
    event.stopPropagation();
    const {field} = event.detail;
    this.#fields.add(field);
    event.detail.leave = () => this.#fields.delete(field);
  }

  connectedCallback() {
    super.connectedCallback();
    queueMicrotask(() => this.#restore());
  }

  #restore() {
    const kept = this.draft ? drafts.read(this.draft) : null;
    if (kept?.value) {
      this.restored = true;
      this.dispatchEvent(new CustomEvent('restore', {detail: kept}));
    }
  }

  // After the room has taken the change over into the value.
  #keep() {
    setTimeout(() => this.draft && this.value && !this.busy && drafts.keep(this.draft, {value: this.value, base: this.base ?? null}));
  }

  /** Forgets what was typed and not saved. */
  drop() {
    drafts.forget(this.draft);
    this.restored = false;
  }

  render() {
    return html`<form novalidate @submit=${this.#submit}>
      ${this.restored ? html`<div class="restored row"><span>${say('parts.draft')}</span>
        <button type="button" @click=${this.#startOver}>${say('parts.startOver')}</button></div>` : ''}
      ${this.#summary()}
      <slot></slot>
      <div class="foot">
        <button class="do" type="submit" ?disabled=${this.busy}>${this.busy ? say('parts.saving') : this.label || say('parts.save')}</button>
        ${this.cancel ? html`<button type="button" @click=${this.#cancel}>${say('parts.cancel')}</button>` : ''}
        <slot name="foot"></slot>
      </div>
    </form>
    ${this.conflict ? html`<s-conflict .conflict=${this.conflict} .names=${this.names} @choice=${this.#choice} @close=${() => (this.conflict = null)}></s-conflict>` : ''}`;
  }

  #summary() {
    if (this.faults.length === 0 && !this.problem) {
      return '';
    }
    const heading = this.faults.length > 0 ? say('parts.faults', {count: this.faults.length}) : this.problem.title || say('parts.failed');
    return html`<div class="summary" role="group" tabindex="-1" aria-labelledby="wrong"><h2 id="wrong">${heading}</h2>
      ${this.faults.length > 0
        ? html`<ul>${this.faults.map(fault => html`<li>${fault.field
            ? html`<a href="#" @click=${event => this.#lead(event, fault.field)}>${fault.field.label}</a>: ` : ''}${fault.text}</li>`)}</ul>`
        : html`<p>${this.problem.message}</p>`}</div>`;
  }

  #lead(event, field) {
    event.preventDefault();
    field.scrollIntoView({block: 'center'});
    field.focus();
  }

  #cancel() {
    this.drop();
    this.dispatchEvent(new CustomEvent('cancel'));
  }

  #startOver() {
    this.drop();
    this.dispatchEvent(new CustomEvent('restart'));
  }

  #inOrder() {
    return [...this.#fields].sort((one, other) => {
      const [a, b] = [one.getBoundingClientRect(), other.getBoundingClientRect()];
      return a.top - b.top || a.left - b.left;
    });
  }

  async #submit(event) {
    event.preventDefault();
    const wrong = this.#inOrder().filter(field => !field.check());
    this.problem = null;
    this.faults = wrong.map(field => ({field, text: field.fault}));
    if (wrong.length > 0) {
      await this.#tellFaults();
      return;
    }
    await this.submit();
  }

  /**
   * Saves what it holds, or what was chosen after a conflict.
   *
   * @param {...any} chosen given on to `save`
   */
  async submit(...chosen) {
    this.busy = true;
    try {
      const how = await this.save(...chosen);
      this.drop();
      this.dispatchEvent(new CustomEvent('saved', {detail: how}));
    } catch (failed) {
      await this.#refused(failed);
    } finally {
      this.busy = false;
    }
  }

  async #refused(failed) {
    if (failed instanceof Conflict) {
      this.conflict = failed;
      return;
    }
    if (!(failed instanceof Problem)) {
      console.error(failed);
    }
    this.problem = failed;
    this.faults = (failed.faults ?? []).map(fault => this.#placed(fault));
    await this.#tellFaults();
  }

  // The field whose path is the fault's, or holds it.
  #placed(fault) {
    const place = plain(fault.path);
    const field = this.#inOrder()
      .filter(candidate => candidate.path && within(place, plain(candidate.path)))
      .sort((one, other) => other.path.length - one.path.length)[0];
    const told = say('parts.found', faultInWords(fault));
    if (field) {
      field.fault = told;
    }
    return {field, text: field ? told : `${fault.path}: ${told}`};
  }

  async #tellFaults() {
    await this.updateComplete;
    this.renderRoot.querySelector('.summary')?.focus();
  }

  #choice(event) {
    const {base, mine} = event.detail;
    this.conflict = null;
    this.dispatchEvent(new CustomEvent('resolved', {detail: event.detail}));
    if (mine) {
      this.submit(mine, base);
    } else {
      this.#startOver(); // theirs stands, and what was typed gives way to it
    }
  }
}

function plain(path) {
  return path.replace(/^\$?\.?/, '');
}

function within(place, path) {
  return place === path || place.startsWith(`${path}.`) || place.startsWith(`${path}[`);
}

customElements.define('s-form', Form);
