import {LitElement, css, html, nothing} from 'lit';
import {live} from 'lit/directives/live.js';
import {sheet} from './sheet.js';
import {fieldSheet} from './field-sheet.js';
import {KIND, faultOf} from './field-kinds.js';
import {settings} from '../app/settings.js';
import {say} from '../app/words.js';

const LEFT_MS = 300;

/**
 * A box with its label, unit, hint and fault.
 *
 * `<s-field label="Volume" kind="volume" path="volumeMl" .value=${mould.volumeMl} needed least="1"
 *   @value=${event => this.change({volumeMl: event.detail})}></s-field>`
 *
 * Kinds: text, note, number, whole, percent, money, minutes, hours, clock, date, moment, mass, volume,
 * length, area, density, temperature; with `.options=${[{value, label}]}` a choice; kind "check" is a
 * box to tick. "bare" hides the label from the eye, "plain" leaves out that it is not needed. Values are in base units. The event "value" has the new value, null for nothing;
 * while what is typed is no value, there is no event but the fault stands beside it. Inside an s-form
 * the field reports itself, and faults of the service find it by its path.
 */
export class Field extends LitElement {

  static properties = {
    label: {}, kind: {}, path: {}, hint: {}, unit: {},
    value: {attribute: false}, options: {attribute: false}, size: {type: Number},
    needed: {type: Boolean}, least: {type: Number}, most: {type: Number},
    disabled: {type: Boolean}, short: {type: Boolean, reflect: true}, bare: {type: Boolean, reflect: true}, plain: {type: Boolean},
    list: {attribute: false},
    fault: {state: true}, typed: {state: true},
  };

  static styles = [sheet, fieldSheet];

  static shadowRootOptions = {...LitElement.shadowRootOptions, delegatesFocus: true};

  #leave = null;
  #leaving = 0;

  constructor() {
    super();
    this.kind = 'text';
    this.label = '';
    this.path = '';
    this.fault = '';
    this.typed = null;
    this.redraw = () => {
      this.typed = null;
      this.requestUpdate();
    };
  }

  connectedCallback() {
    super.connectedCallback();
    settings.addEventListener('change', this.redraw);
    const here = new CustomEvent('s-field-here', {bubbles: true, composed: true, detail: {field: this}});
    this.dispatchEvent(here);
    this.#leave = here.detail.leave ?? null;
  }

  disconnectedCallback() {
    settings.removeEventListener('change', this.redraw);
    this.#leave?.();
    super.disconnectedCallback();
  }

  willUpdate(changed) {
    // A value from outside takes the place of what was typed, unless it is what was typed.
    if (changed.has('value') && this.typed !== null && this.#read(this.typed) !== (this.value ?? null)) {
      this.typed = null;
      this.fault = '';
      clearTimeout(this.#leaving);
    }
    // The unit stays what it was when the thing was first shown, so that it does not jump while typing.
    if (this.size === undefined && Number.isFinite(this.value)) {
      this.size = this.value;
    }
  }

  get #kind() {
    return KIND[this.kind] ?? KIND.text;
  }

  get #text() {
    return this.typed ?? this.#kind.write(this.value, this);
  }

  #read(typed) {
    if (typed.trim() === '') {
      return null;
    }
    const value = this.#kind.read(typed, this);
    return typeof value === 'number' && !Number.isFinite(value) ? undefined : value;
  }

  render() {
    if (this.kind === 'check') {
      return this.#check();
    }
    return html`
      <label for="box">${this.label}${this.needed || this.bare || this.plain ? '' : html` <small>${say('parts.optional')}</small>`}</label>
      <div class="box">${this.#box()}${this.#unit()}</div>
      ${this.hint ? html`<small id="hint" class="hint">${this.hint}</small>` : ''}
      ${this.#faultLine()}`;
  }

  #unit() {
    const unit = this.options ? '' : this.#kind.unit(this);
    return unit ? html`<span class="unit" id="unit">${unit}</span>` : '';
  }

  #described() {
    return [this.unit || this.#kind.isNumber ? 'unit' : '', this.hint ? 'hint' : '', this.fault ? 'fault' : '']
      .filter(id => id).join(' ') || nothing;
  }

  #box() {
    const invalid = this.fault ? 'true' : nothing;
    if (this.options) {
      return html`<select id="box" ?disabled=${this.disabled} aria-required=${this.needed ? 'true' : nothing} aria-invalid=${invalid}
        aria-describedby=${this.#described()} @change=${this.#chosen}>
        ${this.value === null || this.value === undefined || !this.needed
          ? html`<option value="" .selected=${this.value === null || this.value === undefined}>${this.needed ? say('parts.choose') : '–'}</option>` : ''}
        ${this.options.map(({value, label}, number) => html`<option value=${number} .selected=${value === this.value}>${label}</option>`)}
      </select>`;
    }
    if (this.kind === 'note') {
      return html`<textarea id="box" rows="3" ?disabled=${this.disabled} aria-required=${this.needed ? 'true' : nothing} aria-invalid=${invalid}
        aria-describedby=${this.#described()} .value=${live(this.#text)} @input=${this.#input} @blur=${this.#left}></textarea>`;
    }
    return html`<input id="box" type=${this.#kind.type ?? 'text'} inputmode=${this.#kind.isNumber ? (this.#kind.whole ? 'numeric' : 'decimal') : nothing}
      autocomplete="off" ?disabled=${this.disabled} aria-required=${this.needed ? 'true' : nothing} aria-invalid=${invalid}
      aria-describedby=${this.#described()} list=${this.list ? 'list' : nothing}
      .value=${live(this.#text)} @input=${this.#input} @blur=${this.#left}>
      ${this.list ? html`<datalist id="list">${this.list.map(entry => html`<option value=${entry}></option>`)}</datalist>` : ''}`;
  }

  #check() {
    return html`<label class="tick"><input id="box" type="checkbox" ?disabled=${this.disabled} .checked=${live(Boolean(this.value))}
      aria-describedby=${this.#described()} @change=${event => this.#tell(event.target.checked)}> <span>${this.label}</span></label>
      ${this.hint ? html`<small id="hint" class="hint">${this.hint}</small>` : ''}${this.#faultLine()}`;
  }

  #faultLine() {
    return this.fault ? html`<p class="fault" id="fault">${this.fault}</p>` : '';
  }

  // What is wrong is told a moment after the box is left: a line that appears at once would push away
  // the button that is just being pressed.
  #left() {
    clearTimeout(this.#leaving);
    this.#leaving = setTimeout(() => this.isConnected && this.check(), LEFT_MS);
  }

  #chosen(event) {
    this.#tell(event.target.value === '' ? null : this.options[Number(event.target.value)].value);
  }

  #input(event) {
    this.typed = event.target.value;
    const value = this.#read(this.typed);
    if (this.fault) {
      this.fault = faultOf(this.typed, this);
    }
    if (value !== undefined && (value === null || faultOf(this.typed, this) === '')) {
      this.#tell(value);
    }
  }

  #tell(value) {
    this.value = value;
    if (this.fault && value !== null) {
      this.fault = '';
    }
    this.dispatchEvent(new CustomEvent('value', {detail: value}));
    this.dispatchEvent(new CustomEvent('s-changed', {bubbles: true, composed: true}));
  }

  /**
   * Looks whether what stands in it can be taken; says beside it when not.
   *
   * @returns {boolean}
   */
  check() {
    if (this.kind !== 'check') {
      this.fault = this.options
        ? (this.needed && (this.value === null || this.value === undefined) ? say('parts.needed') : '')
        : faultOf(this.#text, this);
    }
    return !this.fault;
  }
}

customElements.define('s-field', Field);
