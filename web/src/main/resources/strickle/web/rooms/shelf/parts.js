import {LitElement, css, html, nothing} from 'lit';
import {sheet} from '../../parts/sheet.js';
import {studio} from '../../app/studio.js';
import {hasWord, say} from '../../app/words.js';
import {MATERIAL_KINDS, showTemperature} from '../../app/units.js';
import {filled} from './fields.js';
import {Piecewise} from '../../parts/piecewise.js';
import '../../parts/field.js';

/**
 * The fields of a thing, each with its path in it; tells every change as "value" with the whole thing.
 *
 * `<s-shelf-fields .fields=${FIELDS.forms} .value=${draft} path="" @value=${…}></s-shelf-fields>`
 */
class ShelfFields extends LitElement {

  static properties = {fields: {attribute: false}, value: {attribute: false}, path: {}, settled: {type: Boolean}, whole: {attribute: false}};

  static styles = [sheet, css`
    .fields { display: grid; grid-template-columns: repeat(auto-fill, minmax(min(13rem, 100%), 1fr)); gap: var(--s3) var(--s4); align-items: start; }
    .wide, fieldset { grid-column: 1 / -1; }
    @media (min-width: 62rem) { .fields > [path="name"] { grid-column: span 2; } }
    fieldset { border: var(--border) solid var(--line); padding: var(--s3); margin: 0; display: grid; gap: var(--s3); min-width: 0; border-radius: var(--corner); }
    legend { font-weight: 600; padding: 0 var(--s2); }
    .one { display: grid; grid-template-columns: minmax(0, 1fr) auto; gap: var(--s3); align-items: end; padding-block-end: var(--s3); border-block-end: var(--border) solid var(--line); }
    .one > div { display: flex; flex-wrap: wrap; gap: var(--s2); }
    input[type="color"] { width: 4.5rem; height: 38px; padding: 2px; border: var(--border) solid var(--edge); background: var(--lime); }
    .checks { display: flex; flex-wrap: wrap; gap: var(--s2) var(--s4); align-items: center; }
    @media (max-width: 34rem) { .one { grid-template-columns: minmax(0, 1fr); } }
  `];

  #pieces = new Piecewise(this, {first: 7, step: 4});
  #members = new Piecewise(this, {first: 1, step: 1});

  constructor() {
    super();
    this.path = '';
    this.settled = false;
    this.whole = null;
  }

  render() {
    const fields = this.fields.slice(0, this.#pieces.drawn(this.fields, this.fields.length));
    const members = this.#members.drawn(this.fields, Math.max(0, ...fields.map(({name, each}) => (each ? this.value?.[name]?.length ?? 0 : 0))));
    const isWhole = this.#pieces.isWhole && this.#members.isWhole;
    return html`<div class="fields" aria-busy=${isWhole ? nothing : 'true'}>${fields.map(field => this.#field(field, members))}</div>`;
  }

  #place(name) {
    return this.path ? `${this.path}.${name}` : name;
  }

  #set(part) {
    this.value = {...this.value, ...part};
    this.dispatchEvent(new CustomEvent('value', {detail: this.value}));
    this.dispatchEvent(new CustomEvent('s-changed', {bubbles: true, composed: true}));
  }

  #label(name) {
    return say(`shelf.f.${name}`);
  }

  #hint(field) {
    return field.hint && hasWord(`shelf.h.${field.name}`) ? say(`shelf.h.${field.name}`, {warm: showTemperature(20)}) : '';
  }

  #field(field, members) {
    if (field.own) {
      return html`<div class="wide">${this.#own(field)}</div>`;
    }
    if (field.each) {
      return this.#list(field, members);
    }
    if (field.part) {
      return this.#part(field);
    }
    if (field.several) {
      return this.#several(field);
    }
    return field.kind === 'colour' ? this.#colour(field) : this.#plain(field);
  }

  #plain(field) {
    const windows = field.kind === 'windows';
    const value = this.value?.[field.name];
    return html`<s-field path=${this.#place(field.name)} label=${this.#label(field.name)} kind=${windows ? 'text' : this.#kind(field)} ?needed=${field.needed}
      .least=${field.least} .most=${field.most} unit=${this.#unit(field)} hint=${this.#hint(field)} ?disabled=${Boolean(field.once && this.settled)}
      .options=${this.#options(field)} .list=${field.list} .value=${windows ? (value ?? []).join(', ') : value ?? null}
      @value=${event => this.#set({[field.name]: windows ? windowsOf(event.detail) : event.detail})}></s-field>`;
  }

  #unit({unitOf}) {
    if (!unitOf) {
      return '';
    }
    const given = this.value?.[unitOf] ?? this.whole?.[unitOf];
    return unitOf === 'unit' ? given ?? '' : studio.find('materials', given)?.unit ?? '';
  }

  // What is counted in grams or millilitres is read and written in the reader's units.
  #kind(field) {
    return MATERIAL_KINDS[this.#unit(field)] ?? field.kind ?? 'text';
  }

  #options({from, choice}) {
    if (choice) {
      return choice.map(value => ({value, label: say(`shelf.c.${value}`)}));
    }
    return from ? studio.book[from].map(({id, name}) => ({value: id, label: name})) : undefined;
  }

  #colour(field) {
    const value = this.value?.[field.name] ?? '#8a8378';
    return html`<div><label for="colour">${this.#label(field.name)}</label><br>
      <input id="colour" type="color" .value=${value} @change=${event => this.#set({[field.name]: event.target.value})}></div>`;
  }

  #several(field) {
    const chosen = this.value?.[field.name] ?? [];
    return html`<fieldset><legend>${this.#label(field.name)}</legend><div class="checks">${studio.book[field.several].map(({id, name}) => html`
      <s-field kind="check" label=${name} .value=${chosen.includes(id)} @value=${event => this.#set({[field.name]: event.detail ? [...chosen, id] : chosen.filter(other => other !== id)})}></s-field>`)}</div>
      <small>${say('shelf.h.by')}</small></fieldset>`;
  }

  #part(field) {
    const value = this.value?.[field.name];
    const there = value !== undefined && value !== null;
    return html`<fieldset><legend>${this.#label(field.name)}</legend>
      ${field.optional ? html`<s-field kind="check" label=${say(`shelf.has.${field.name}`)} .value=${there} @value=${event => this.#set({[field.name]: event.detail ? filled(field.part, studio.book) : null})}></s-field>` : ''}
      ${there || !field.optional ? html`<s-shelf-fields .fields=${field.part} .value=${value ?? {}} .whole=${this.value} path=${this.#place(field.name)} @value=${event => this.#set({[field.name]: event.detail})}></s-shelf-fields>` : ''}</fieldset>`;
  }

  #list(field, members) {
    const list = this.value?.[field.name] ?? [];
    const put = changed => this.#set({[field.name]: changed});
    return html`<fieldset><legend>${this.#label(field.name)}</legend>
      ${list.slice(0, members).map((one, at) => html`<div class="one" role="group" aria-label=${say('shelf.numbered', {what: this.#label(field.name), count: at + 1})}>
        <s-shelf-fields .fields=${field.each} .value=${one} .whole=${this.value} path="${this.#place(field.name)}[${at}]" @value=${event => put(list.map((other, index) => (index === at ? event.detail : other)))}></s-shelf-fields>
        <div>${field.moves ? html`<button type="button" ?disabled=${at === 0} aria-label=${say('shelf.earlierOf', {count: at + 1})} @click=${() => put(swapped(list, at - 1))}>${say('shelf.earlier')}</button>` : ''}
          <button type="button" aria-label=${say('shelf.dropOf', {what: this.#label(field.name), count: at + 1})} @click=${() => put(list.filter((_, index) => index !== at))}>${say('parts.remove')}</button></div></div>`)}
      <button type="button" @click=${() => put([...list, field.fresh(studio.book)])}>${say(`shelf.add.${field.name}`)}</button></fieldset>`;
  }

  #own(field) {
    const told = event => this.#set(event.detail);
    return field.own === 's-shelf-hours'
      ? html`<s-shelf-hours .value=${this.value?.hours ?? {}} @value=${event => told({detail: {hours: event.detail}})}></s-shelf-hours>`
      : html`<s-shelf-volume .mould=${this.value} @value=${told}></s-shelf-volume>`;
  }
}

/** "09:00-12:00, 13:00-17:00" as the book's list of windows. */
export function windowsOf(text) {
  return (text ?? '').split(/[,;]/).map(window => window.trim().replace(/\s*[–-]\s*/, '-')).filter(window => window);
}

function swapped(list, at) {
  const changed = [...list];
  [changed[at], changed[at + 1]] = [changed[at + 1], changed[at]];
  return changed;
}

customElements.define('s-shelf-fields', ShelfFields);
