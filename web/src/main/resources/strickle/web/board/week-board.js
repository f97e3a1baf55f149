import {LitElement, html, svg} from 'lit';
import {sheet} from '../parts/sheet.js';
import {say} from '../app/words.js';
import {boardSheet, paperSheet} from './board-sheet.js';
import {Board} from './model.js';
import {Dragging} from './dragging.js';
import {mark} from './marking.js';
import {moved, nearest} from './moves.js';
import {Painting} from './painting.js';
import {Paper} from './paper.js';
import {Peeking} from './peeking.js';
import {found} from './search.js';
import {movable, pinsKept} from './pinning.js';
import {weekOf} from './week.js';

const SETTLED_MS = 350;
/** How much of a bar must be seen, in pixels. */
const TASTE = 60;

/**
 * The week board: a plan as rows of bars over time, with one tab stop.
 *
 * Properties: book, plan; by ("form", "person" or "order"); days (3 to 56) in a view; trueTime; now (minute);
 * at (minute at the left edge); chosen (id of a run, lot or order that is to stand out); find (text).
 * Events: "open" and "peek" {bar, node}, "unpeek", "pin" {lot, start, person}, "unpin" {lot}, "view" {at},
 * "seen" {days, isCut}, "zoom" {step}, "search".
 */
export class WeekBoard extends LitElement {

  static properties = {
    book: {attribute: false}, plan: {attribute: false}, by: {}, days: {type: Number}, trueTime: {type: Boolean},
    now: {type: Number}, at: {type: Number}, chosen: {}, find: {},
  };

  static styles = [sheet, boardSheet, paperSheet];

  #active = {row: 1, item: -1, minute: 0};
  #painting = null;
  #settled = 0;
  #sizes = new ResizeObserver(() => this.#resized());
  #dark = matchMedia('(prefers-color-scheme: dark)');

  constructor() {
    super();
    Object.assign(this, {book: null, plan: null, by: 'form', days: 7, trueTime: false, now: undefined, at: undefined, chosen: '', find: ''});
    this.dragging = new Dragging(this);
    this.peeking = new Peeking(this);
    this.paper = new Paper(this);
  }

  connectedCallback() {
    super.connectedCallback();
    this.#dark.addEventListener('change', this.#repaint);
    this.#sizes.observe(this);
  }

  disconnectedCallback() {
    this.#dark.removeEventListener('change', this.#repaint);
    this.#sizes.disconnect();
    clearTimeout(this.#settled); // whoever has left is told no more
    this.#painting?.leave();
    super.disconnectedCallback();
  }

  render() {
    return html`
      <div class="view" role="grid" aria-label=${say('board.board')} aria-describedby="how" aria-readonly="true"
        @scroll=${this.#scrolled} @keydown=${this.#key} @focusin=${this.#focused} @click=${this.#clicked}
        @pointerdown=${event => this.dragging.down(event)} @pointerover=${event => this.peeking.over(event)} @pointerout=${() => this.peeking.out()}>
        <div class="canvas" role="presentation">
          <div class="head" role="rowgroup"><div class="days" aria-hidden="true"></div></div>
          <div class="body" role="rowgroup">
            <div class="ground" aria-hidden="true"></div>
            <svg class="ties" aria-hidden="true">${svg`<path></path>`}</svg>
            <div class="line" aria-hidden="true" hidden></div>
          </div>
        </div>
      </div>
      <p id="how" class="unseen">${say('board.how')}</p>
      <div class="told" role="status"></div>
      <div class="paper" aria-hidden="true"></div>`;
  }

  updated(changed) {
    if (!this.book || !this.plan) return;
    const other = ['book', 'plan', 'now'].some(name => changed.has(name));
    if (other) this.week = weekOf(this.book, this.plan, this.now);
    if (other || ['by', 'days', 'trueTime'].some(name => changed.has(name)) || !this.board) this.#lay();
    else if (changed.has('at') && this.at !== undefined) this.goTo(this.at);
    this.#mark();
  }

  get viewNode() {
    return this.renderRoot.querySelector('.view');
  }

  /** What makes the nodes of its bars. */
  get maker() {
    return this.#painting.maker;
  }

  get nameWidth() {
    return this.#painting?.frame.nameWidth ?? 0;
  }

  /** The minute at the left edge of what is seen. */
  get leftMinute() {
    return this.#minuteAtLeft(1); // a browser scrolls by whole pixels: a midnight is not to become the day before
  }

  #minuteAtLeft(into) {
    return this.board.axis.minuteAt(this.viewNode.scrollLeft + into);
  }

  /** Lays everything anew, with the same minute at the left edge. */
  #lay() {
    const kept = this.board ? this.#minuteAtLeft(0) : this.at ?? this.now ?? this.week.starts;
    const focused = this.viewNode.contains(this.renderRoot.activeElement);
    const last = this.board ? this.#activeBar() : null;
    this.#painting ??= new Painting(this);
    this.#painting.measure();
    this.board = new Board(this.week, {by: this.by, days: this.days, trueTime: this.trueTime, viewWidth: this.#painting.seenWidth});
    this.#painting.take(this.board);
    this.#active = (last && this.board.placeOf(bar => bar.id === last)) ?? this.board.beginning(kept, nearest);
    this.viewNode.scrollLeft = this.board.axis.xOf(kept);
    this.#painting.begin(() => {
      this.#paint();
      this.#mark();
    });
    this.#paint();
    this.#tellSeen();
    if (focused) this.focusAt(this.#active);
  }

  /** The id of the bar that is to keep the focus when all is laid anew. */
  #activeBar() {
    const {bar} = this.board.items(this.#active.row)[this.#active.item] ?? {};
    return bar?.bars?.[0].id ?? bar?.id ?? null;
  }

  #paint() {
    this.#painting.paint(this.#active);
    this.#tab();
  }

  #repaint = () => this.board && this.#lay();

  #resized() {
    if (!this.board) return;
    if (this.#painting.isStillAsWide) this.#paint();
    else this.#lay();
  }

  #scrolled() {
    if (!this.board) return;
    this.#paint();
    this.#mark();
    this.peeking.out();
    clearTimeout(this.#settled);
    this.#settled = setTimeout(() => {
      this.#tellSeen();
      this.#tell('view', {at: this.leftMinute});
    }, SETTLED_MS);
  }

  /** The days that are seen now. */
  get seen() {
    return this.#painting.seen;
  }

  #tellSeen() {
    this.#tell('seen', this.seen);
  }

  /** Shows a minute at the left edge. */
  goTo(minute) {
    const x = this.board.axis.xOf(minute);
    if (Math.abs(this.board.axis.xOf(this.leftMinute) - x) <= 1) return;
    this.viewNode.scrollLeft = x;
    this.#paint();
    this.#tellSeen();
  }

  #tab() {
    const node = this.#painting.nodeAt(this.#active);
    if (node === this.tabbed && node?.tabIndex === 0) return;
    if (this.tabbed) this.tabbed.tabIndex = -1;
    this.tabbed = node;
    if (node) node.tabIndex = 0;
  }

  /** Moves the focus, and the board with it. */
  focusAt(place) {
    this.#active = place;
    this.#reveal(place);
    this.#paint();
    this.#painting.nodeAt(place)?.focus({preventScroll: true});
    this.#mark();
  }

  #reveal({row, item}) {
    const view = this.viewNode;
    const top = this.board.tops[row];
    const bottom = this.board.tops[row + 1];
    const room = view.clientHeight - this.#painting.frame.headHeight;
    if (row > 0 && top < view.scrollTop) view.scrollTop = top;
    if (row > 0 && bottom > view.scrollTop + room) view.scrollTop = bottom - room;
    const place = item >= 0 ? this.board.items(row)[item] : null;
    if (!place) return;
    const {seenWidth} = this.#painting;
    const seen = place.x + Math.min(place.width, TASTE) > view.scrollLeft && place.x < view.scrollLeft + seenWidth - TASTE;
    if (!seen || place.x < view.scrollLeft) view.scrollLeft = Math.max(0, place.x - seenWidth / 3);
  }

  /**
   * Shows and focuses what a test holds for.
   * @param {(bar: object) => boolean} test
   * @returns {boolean} whether there is such a bar
   */
  show(test) {
    const place = this.board.placeOf(test);
    if (place) this.focusAt(place);
    return place !== null;
  }

  /** Every bar the search finds, in order of time. */
  get finds() {
    return this.board ? found(this.board.rows, this.week, this.find) : [];
  }

  /** What stands out: the kin of what is chosen, and what the search finds. */
  #mark() {
    if (this.board) mark(this.#painting.nodes, this.chosen, this.finds.map(({bar}) => bar));
  }

  #focused(event) {
    const place = this.#placeOf(event);
    if (place) {
      this.#active = place;
      this.#tab();
    }
  }

  #placeOf(event) {
    const node = event.target.closest('.bar, .name');
    const row = node?.closest('.row');
    if (!row || row.at === undefined) return null;
    const item = node.item ? this.board.items(row.at).indexOf(node.item) : -1;
    return {row: row.at, item, minute: node.item?.bar.from ?? this.#active.minute};
  }

  #clicked(event) {
    const node = event.target.closest('.bar');
    if (!node || this.dragging.justDropped) return;
    node.focus({preventScroll: true});
    this.openNode(node);
  }

  /** Tells that a bar is to be opened. */
  openNode(node) {
    this.#tell('open', {bar: node.item.bar, node});
  }

  #key(event) {
    const node = event.target.closest('.bar');
    if (this.dragging.key(event, node)) return;
    const page = Math.max(1, Math.floor(this.viewNode.clientHeight / 40) - 2);
    const place = event.shiftKey || event.altKey ? null : moved({rows: this.board.rows, items: row => this.board.items(row), page}, this.#active, event);
    if (place) this.focusAt(place);
    else if (!this.#command(event, node)) return;
    event.preventDefault();
  }

  #command({key, ctrlKey, metaKey, altKey}, node) {
    if (ctrlKey || metaKey || altKey) return false;
    if (node && (key === 'Enter' || key === ' ')) this.openNode(node);
    else if (node && key.toLowerCase() === 'p') this.#togglePin(node.item.bar);
    else if (key === '/') this.#tell('search');
    else if (key === '+' || key === '-') this.#tell('zoom', {step: key === '+' ? -1 : 1});
    else return false;
    return true;
  }

  #togglePin({lot}) {
    if (!movable(lot)) return;
    if (pinsKept(this.week, lot).length > 0) this.#tell('unpin', {lot});
    else this.#tell('pin', {lot, start: lot.pour.from, person: lot.pour.person});
  }

  /** Says something in a line over the board, and to those who cannot see it. */
  tellLine(text) {
    this.renderRoot.querySelector('.told').textContent = text;
  }

  #tell(name, detail = {}) {
    this.dispatchEvent(new CustomEvent(name, {detail, bubbles: true, composed: true}));
  }
}

customElements.define('s-week-board', WeekBoard);
