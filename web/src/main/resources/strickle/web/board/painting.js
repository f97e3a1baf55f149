/**
 * What of the board is drawn, and when. Laid anew it is drawn at once where it is seen; what lies beyond,
 * and lets it be scrolled smoothly, comes once that is on the screen. Until then the board says that it is busy.
 */

import {Frame} from './frame.js';
import {Maker, Paints, View} from './view.js';
import {rowsBetween} from './places.js';

/** How far the bars reach beyond what is seen before they are made anew, in pixels. */
const BEYOND = 400;
const NOWHERE = {left: 0, right: 0};

export class Painting {
  #pane = NOWHERE;
  #rest = 0;

  /** @param {LitElement} host the board's element, once it is drawn */
  constructor(host) {
    this.host = host;
    this.frame = new Frame(host);
    this.view = null;
    this.seenWidth = 0;
    this.left = 0;
  }

  /** Reads how wide the view is, and the colours it stands in. */
  measure() {
    this.frame.measure();
    this.seenWidth = this.frame.seenWidth;
  }

  /** Whether the view is as wide as when it was measured. */
  get isStillAsWide() {
    return this.frame.widthNow() === this.seenWidth;
  }

  /** From now on this board is drawn. */
  take(board) {
    this.view?.clear();
    this.board = board;
    this.maker = new Maker(board, new Paints(this.frame.ground));
    this.view = new View(this.frame.body, this.maker);
    this.frame.size(board);
    this.#pane = NOWHERE;
  }

  /**
   * Draws what is seen, and after the next frame the rest.
   * @param {() => void} rest draws once more
   */
  begin(rest) {
    this.leave();
    this.frame.view.setAttribute('aria-busy', 'true');
    this.#rest = requestAnimationFrame(() => setTimeout(() => this.#end(rest)));
  }

  #end(rest) {
    if (this.#rest === 0) return;
    this.leave();
    this.#pane = NOWHERE;
    rest();
    this.frame.view.removeAttribute('aria-busy');
  }

  /** The rest is not waited for any more. */
  leave() {
    cancelAnimationFrame(this.#rest);
    this.#rest = 0;
  }

  /**
   * Draws what can be seen now.
   * @param {{row: number, item: number}} active what stays, wherever it is
   */
  paint(active) {
    const {board, frame, view} = this;
    const {scrollLeft, scrollTop, clientHeight} = frame.view;
    this.left = scrollLeft;
    const isFirst = this.#rest !== 0;
    this.#widen(scrollLeft, isFirst ? 0 : BEYOND);
    const seen = {...this.#pane, ...rowsBetween(board.tops, ...View.edges(scrollTop, clientHeight, isFirst))};
    view.show({...seen, first: Math.max(1, seen.first), isFirst}, active);
    view.lead(scrollLeft);
    frame.lead(scrollLeft);
    frame.ties(board, this.#pane, seen);
  }

  #widen(scrollLeft, beyond) {
    const right = scrollLeft + this.seenWidth;
    if (this.#pane.right !== 0 && scrollLeft >= this.#pane.left && right <= this.#pane.right) return;
    this.#pane = {left: Math.max(0, scrollLeft - beyond), right: right + beyond};
    this.frame.pane(this.board, this.#pane, this.maker);
  }

  /**
   * The days that are seen: those with a quarter of themselves, or of the view, in it.
   * @returns {{days: object[], isCut: boolean}} isCut: a good part of the last lies beyond the right edge
   */
  get seen() {
    const {axis, week} = this.board;
    const [left, right] = [this.left, this.left + this.seenWidth];
    const placed = week.days.map(day => ({day, x: axis.xOf(day.from), end: axis.xOf(day.to)}));
    const found = placed.filter(({x, end}) => Math.min(end, right) - Math.max(x, left) >= Math.min(end - x, right - left) / 4);
    // Where the board has no width, as in a room that is being left, or stands between two days.
    const seen = found.length > 0 ? found : [placed.findLast(({x}) => x <= left) ?? placed[0]];
    const {x, end} = seen.at(-1);
    return {days: seen.map(({day}) => day), isCut: end - right > (end - x) / 4};
  }

  /** The node of a place, whether a row's name, a bar or a flag. */
  nodeAt({row, item}) {
    return row === 0 ? this.frame.flagNode(item) : this.view.nodeOf(row, item);
  }

  /** All bars and flags in the document. */
  get nodes() {
    return [...this.view.bars(), ...this.frame.flagNodes()];
  }
}
