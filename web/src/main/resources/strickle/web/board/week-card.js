import {LitElement, css, html, nothing} from 'lit';
import {sheet} from '../parts/sheet.js';
import {say} from '../app/words.js';
import {link} from '../app/address.js';
import {localText} from './clock.js';
import {cardText, memberLine} from './card-text.js';
import {freeing} from './reasons.js';

const GAP = 6;
const NARROW = 640;

/**
 * What a bar is, why it stands there and what would move it. While a pointer only rests on the bar it is
 * shown beside it and takes no focus; opened, it takes focus, Escape closes it and gives focus back. On a
 * narrow screen it stands at the foot.
 *
 * Properties: week, because ({order id: sentences} as the service gives them).
 * Events: "pin" {lot, start, person}, "unpin" {lot}, "move" {lot}, "held" (the pointer is on it), "left",
 * "chosen" {id}, "closed".
 */
export class WeekCard extends LitElement {

  static properties = {week: {attribute: false}, because: {attribute: false}, bar: {state: true}, opened: {state: true}, trail: {state: true}};

  static styles = [sheet, css`
    :host { display: contents; }
    .card {
      position: fixed; inset: auto; margin: 0; width: min(30rem, calc(100vw - 16px)); max-height: min(30rem, calc(100dvh - 16px)); overflow: hidden;
      padding: 0; background: var(--lime); color: var(--slate); border: var(--border) solid var(--edge); border-radius: var(--corner);
    }
    .card:popover-open { display: flex; flex-direction: column; }
    .in { overflow: auto; padding: var(--s3) var(--s4); }
    .foot { padding: var(--s2) var(--s4); border-block-start: var(--border) solid var(--line); background: var(--lime-2); }
    h2 { font-size: var(--t3); margin-inline-end: auto; }
    h3 { font-size: var(--t2); margin-block: var(--s3) 2px; }
    h2:focus { outline: none; }
    header { display: flex; gap: var(--s3); align-items: flex-start; }
    header > div { flex: 1; }
    ul { list-style: none; padding: 0; }
    li { margin-block: 2px; max-width: 60ch; }
    .members button { width: 100%; justify-content: flex-start; text-align: start; min-height: 30px; padding-block: var(--s1); margin-block-end: 2px; }
    @media (pointer: coarse) { .members button { min-height: var(--touch); } }
    .late { margin-block-start: var(--s2); }
    details summary { cursor: pointer; min-height: 24px; color: var(--slate-2); }
    @media (max-width: 640px) { .card { inset: auto 0 0; width: 100vw; max-width: none; max-height: 80dvh; border-inline: 0; border-block-end: 0; } }
    @media print { .card { display: none; } }
  `];

  #from = null;
  #box = null;

  constructor() {
    super();
    Object.assign(this, {week: null, because: {}, bar: null, opened: false, trail: []});
  }

  render() {
    return html`<div class="card" id="card" popover="manual" role="dialog" aria-modal="false" aria-labelledby="title"
      @keydown=${this.#key} @pointerenter=${() => this.#tell('held')} @pointerleave=${() => this.opened || this.#tell('left')}>
      ${this.bar && this.week ? this.#body(cardText(this.bar, this.week)) : nothing}</div>`;
  }

  #body(text) {
    return html`<div class="in" tabindex=${this.opened ? 0 : -1}><header><div><h2 id="title" tabindex="-1">${text.title}</h2>${text.sub ? html`<small>${text.sub}</small>` : nothing}</div>
        ${this.opened ? html`<button @click=${() => this.close()}>${say('parts.close')}</button>` : nothing}</header>
      ${this.#list('', text.what)}
      ${text.members.length > 0 ? this.#members(text.members) : nothing}
      ${this.#list('board.card.why', text.why)}
      ${this.#because(text)}
      ${this.#list('board.card.moves', text.moves)}
      ${text.way.length > 0 && this.opened ? html`<details><summary>${say('board.card.steps')}</summary>${this.#list('', text.way)}</details>` : nothing}</div>
      ${this.opened ? this.#foot(text) : nothing}`;
  }

  #list(heading, lines) {
    if (lines.length === 0) return nothing;
    return html`${heading ? html`<h3>${say(heading)}</h3>` : nothing}<ul>${lines.map(line => html`<li>${line}</li>`)}</ul>`;
  }

  #because({lateOrder, because}) {
    if (!lateOrder) return nothing;
    const lines = this.because[lateOrder.id] ?? because;
    return lines.length > 0 ? html`<div class="late-why">${this.#list('board.why.late', lines)}</div>` : nothing;
  }

  #members(members) {
    return html`<div class="members">${members.map(bar => (this.opened
      ? html`<button @click=${() => this.#enter(bar)}>${memberLine(bar, this.week)}</button>` : html`<div>${memberLine(bar, this.week)}</div>`))}</div>`;
  }

  #enter(bar) {
    this.trail = [...this.trail, this.bar];
    this.bar = bar;
    this.#chosen();
    this.updateComplete.then(() => this.renderRoot.querySelector('h2').focus());
  }

  #foot(text) {
    const {lot, task} = text;
    const free = task ? freeing(this.week, task) : undefined;
    if (!this.trail.length && !lot && !task && !text.pinned && !text.order) return nothing; // several bars at once
    const pin = () => this.#tell('pin', {lot, start: lot.pour.from, person: lot.pour.person});
    return html`<div class="foot row" role="group" aria-labelledby="title">
      ${this.trail.length > 0 ? html`<button @click=${this.#back}>${say('board.card.back')}</button>` : nothing}
      ${text.pinned ? html`<button @click=${() => this.#tell('unpin', {lot, pin: text.pin})}>${say('board.card.unpin')}</button>` : nothing}
      ${text.movable && !text.pinned ? html`<button @click=${pin}>${say('board.card.pin')}</button>` : nothing}
      ${text.movable ? html`<button @click=${() => this.#tell('move', {lot})}>${say('board.card.move')}</button>` : nothing}
      ${text.lateOrder || free ? html`<a href=${link('/what-if', {order: text.lateOrder?.id, ...free})}>${say('board.card.whatIf')}</a>` : nothing}
      ${text.order ? html`<a href=${link(['orders', text.order.id])}>${say('board.card.toOrder')}</a>` : nothing}
      ${task ? html`<a href=${link('/today', {day: localText(task.from, this.week.zone).slice(0, 10)})}>${say('board.card.showDay')}</a>` : nothing}
    </div>`;
  }

  #back() {
    this.bar = this.trail.at(-1);
    this.trail = this.trail.slice(0, -1);
    this.#chosen();
    this.updateComplete.then(() => this.renderRoot.querySelector('h2').focus());
  }

  /** Shows a bar beside its node without taking focus. */
  async peek(bar, node) {
    if (this.opened) return;
    await this.#show(bar, node);
  }

  /** Opens a bar's card and moves focus into it. */
  async open(bar, node) {
    this.#from = node;
    this.opened = true;
    this.trail = [];
    await this.#show(bar, node);
    this.#chosen();
    this.renderRoot.querySelector('h2')?.focus({preventScroll: true});
  }

  async #show(bar, node) {
    this.bar = bar;
    this.#box = node?.getBoundingClientRect() ?? null;
    await this.updateComplete;
    const card = this.renderRoot.querySelector('.card');
    if (!card.matches(':popover-open')) card.showPopover();
    card.firstElementChild.scrollTop = 0;
    this.#place(card);
  }

  /** Below its bar, or above where there is more room; never over it. */
  #place(card) {
    const {style} = card;
    if (innerWidth <= NARROW || !this.#box) {
      Object.assign(style, {left: '', top: '', maxHeight: ''});
      return;
    }
    const below = innerHeight - this.#box.bottom - 2 * GAP;
    const above = this.#box.top - 2 * GAP;
    style.maxHeight = `${Math.max(160, Math.min(480, Math.max(below, above)))}px`;
    const {width, height} = card.getBoundingClientRect();
    const under = below >= height || below >= above;
    style.left = `${Math.max(8, Math.min(this.#box.left, innerWidth - width - 8))}px`;
    style.top = `${under ? this.#box.bottom + GAP : this.#box.top - height - GAP}px`;
  }

  /** Ends a peek; an opened card stays. */
  unpeek() {
    if (!this.opened) this.#hide();
  }

  /** Closes the card and gives focus back. */
  close() {
    this.opened = false;
    this.#hide();
    if (this.#from?.isConnected) this.#from.focus({preventScroll: true});
    this.#from = null;
    this.#tell('closed');
  }

  #hide() {
    const card = this.renderRoot.querySelector('.card');
    if (card?.matches(':popover-open')) card.hidePopover();
    this.bar = null;
  }

  #key(event) {
    if (event.key !== 'Escape') return;
    event.stopPropagation();
    this.close();
  }

  /** A card that came by itself goes with Escape, wherever the focus is. */
  #dismiss = event => {
    if (event.key === 'Escape' && !this.opened) this.#hide();
  };

  connectedCallback() {
    super.connectedCallback();
    addEventListener('keydown', this.#dismiss);
  }

  disconnectedCallback() {
    removeEventListener('keydown', this.#dismiss);
    super.disconnectedCallback();
  }

  #chosen() {
    const {bar} = this;
    this.#tell('chosen', {id: bar?.run?.id ?? bar?.order?.id ?? bar?.lot?.id ?? ''});
  }

  #tell(name, detail = {}) {
    this.dispatchEvent(new CustomEvent(name, {detail}));
  }
}

customElements.define('s-week-card', WeekCard);
