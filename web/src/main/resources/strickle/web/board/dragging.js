/** Moving a pour by hand: dragging it, or Shift with the arrows; where it is dropped it is pinned. */

import {say} from '../app/words.js';
import {at, personName} from './names.js';
import {movable, placeFor, STEP} from './pinning.js';

const BEGINS_AFTER = 5;
const EDGE = 36;
const EDGE_SPEED = 14;
const KEY_STEP = 3 * STEP;

/** What can be taken hold of: a run from its pour on, and a pour among somebody's hands. */
const lotOf = bar => (bar.kind === 'stay' || (bar.kind === 'task' && bar.task.kind !== 'pour') ? null : bar.lot ?? null);

export class Dragging {
  #moving = null;

  constructor(host) {
    this.host = host;
    this.justDropped = false;
  }

  /** A pointer comes down: it may become a drag. Fingers scroll; for them there is the card. */
  down(event) {
    const node = event.target.closest('.bar');
    this.justDropped = false;
    if (!node || event.button !== 0 || event.pointerType === 'touch' || !movable(lotOf(node.item.bar))) return;
    const end = new AbortController();
    const from = {x: event.clientX, y: event.clientY, scroll: this.host.viewNode.scrollLeft};
    const {signal} = end;
    addEventListener('pointermove', move => this.#drag(move, node, from), {signal});
    addEventListener('pointerup', () => this.#drop(end), {signal});
    addEventListener('pointercancel', () => this.#leave(end), {signal});
    addEventListener('keydown', key => key.key === 'Escape' && this.#leave(end), {signal, capture: true});
  }

  #drag(event, node, from) {
    if (!this.#moving && Math.abs(event.clientX - from.x) < BEGINS_AFTER && Math.abs(event.clientY - from.y) < BEGINS_AFTER) return;
    event.preventDefault();
    this.#moving ??= this.#begin(node);
    this.#moving.pointer = {x: event.clientX, y: event.clientY};
    this.#moving.from = from;
    this.#moving.frame ||= requestAnimationFrame(() => this.#follow());
  }

  #begin(node) {
    const {bar, width} = node.item;
    const lot = lotOf(bar);
    this.host.peeking.out();
    const ghost = node.cloneNode(true);
    ghost.classList.add('dragged');
    ghost.removeAttribute('id');
    ghost.setAttribute('aria-hidden', 'true');
    node.parentElement.append(ghost);
    return {node, ghost, lot, x: this.host.board.axis.xOf(lot.pour.from), width, person: lot.pour.person, frame: 0, place: null};
  }

  /** Once a frame: the ghost goes to the nearest place there is for it. */
  #follow() {
    const moving = this.#moving;
    if (!moving) return;
    moving.frame = 0;
    const {host} = this;
    const edge = this.#atEdge(moving.pointer.x);
    host.viewNode.scrollLeft += edge;
    const moved = moving.pointer.x - moving.from.x + host.viewNode.scrollLeft - moving.from.scroll;
    const wanted = host.board.axis.minuteAt(moving.x + moved);
    this.#put(placeFor(host.week, moving.lot, wanted, this.#personUnder(moving.pointer) ?? moving.person));
    if (edge !== 0) moving.frame = requestAnimationFrame(() => this.#follow());
  }

  #atEdge(x) {
    const box = this.host.viewNode.getBoundingClientRect();
    if (x > box.right - EDGE) return EDGE_SPEED;
    return x < box.left + this.host.nameWidth + EDGE ? -EDGE_SPEED : 0;
  }

  /** Over somebody's hands it is theirs. */
  #personUnder({x, y}) {
    const row = this.host.renderRoot.elementFromPoint?.(x, y)?.closest('.row');
    return row?.at > 0 ? this.host.board.rows[row.at].person?.id : undefined;
  }

  #put(place) {
    const moving = this.#moving;
    moving.place = place;
    moving.ghost.style.left = `${this.host.board.axis.xOf(place.start)}px`;
    moving.ghost.classList.toggle('nowhere', !place.fits);
    const person = personName(this.host.week, place.person);
    this.host.tellLine(say(place.fits ? 'board.drag.here' : 'board.drag.nowhere', {at: at(place.start), person}));
  }

  #drop(end) {
    const moving = this.#moving;
    this.#leave(end);
    if (!moving?.place) return;
    this.justDropped = true;
    this.#pin(moving);
  }

  #pin({lot, place}) {
    if (place?.fits) this.host.dispatchEvent(new CustomEvent('pin', {detail: {lot, start: place.start, person: place.person}}));
  }

  #leave(end) {
    end?.abort();
    if (!this.#moving) return;
    cancelAnimationFrame(this.#moving.frame);
    this.#moving.ghost.remove();
    this.#moving = null;
    this.host.tellLine('');
  }

  /**
   * Keys that move a pour: Shift with left or right; Enter pins it there, Escape leaves it.
   * @returns {boolean} whether the key was for this
   */
  key(event, node) {
    const step = event.shiftKey && {ArrowLeft: -KEY_STEP, ArrowRight: KEY_STEP}[event.key];
    if (step && node && movable(lotOf(node.item.bar))) this.#shift(node, step);
    else if (this.#moving && (event.key === 'Enter' || event.key === ' ')) this.#keyDrop();
    else if (this.#moving && event.key !== 'Shift') {
      this.#leave();
      if (event.key !== 'Escape') return false;
    } else return false;
    event.preventDefault();
    return true;
  }

  #shift(node, step) {
    this.#moving ??= this.#begin(node);
    const {lot, place, person} = this.#moving;
    const start = place?.start ?? lot.pour.from;
    let next = placeFor(this.host.week, lot, start + step, person);
    // A closed stretch is stepped over rather than stuck at.
    for (let far = 2; next.start === start && next.fits && far < 600; far++) next = placeFor(this.host.week, lot, start + far * step, person);
    this.#put(next);
  }

  #keyDrop() {
    const moving = this.#moving;
    this.#leave();
    this.#pin(moving);
  }
}
