/** The board's frame: sizes, the head with days and flags, the ground, the ties and the line of now. */

import {dayGradient, openGradient} from './ground.js';
import {HOUR_WIDTH, marksOf} from './head.js';
import {say} from '../app/words.js';
import {rowName} from './names.js';
import {FLAG_HEIGHT} from './places.js';

const NOW_WIDTH = 40;

function made(classes, text, x) {
  const node = document.createElement('div');
  node.className = classes;
  node.textContent = text;
  node.style.left = `${x}px`;
  return node;
}

/** Whether the word at now would stand over an hour behind it, and over none before. */
function besideHour(now, hours) {
  const isCovered = (from, to) => hours.some(({x, isEnd}) => (isEnd ? x - HOUR_WIDTH < to && x > from : x < to && x + HOUR_WIDTH > from));
  return now > NOW_WIDTH && isCovered(now, now + NOW_WIDTH) && !isCovered(now - NOW_WIDTH, now);
}

export class Frame {
  #flags = [];

  constructor(host) {
    this.host = host;
    const find = name => host.renderRoot.querySelector(name);
    Object.assign(this, {view: find('.view'), canvas: find('.canvas'), head: find('.head'), days: find('.days'), body: find('.body'), back: find('.ground'), path: find('.ties path'), line: find('.line')});
    this.svg = find('.ties');
  }

  /** Reads the sizes and colours the board stands in. */
  measure() {
    const style = getComputedStyle(this.host);
    const rem = Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
    this.nameWidth = Number.parseFloat(style.getPropertyValue('--name')) * rem;
    this.seenWidth = this.widthNow();
    this.ground = style.getPropertyValue('--lime').trim() || '#ffffff';
  }

  widthNow() {
    return Math.max(100, this.view.clientWidth - this.nameWidth);
  }

  get headHeight() {
    return this.head.offsetHeight;
  }

  /** Gives the canvas the size of a board. */
  size(board) {
    const all = `${this.nameWidth + board.axis.width}px`;
    this.canvas.style.width = all;
    this.body.style.height = `${board.height}px`;
    this.view.setAttribute('aria-rowcount', String(board.rows.length));
    this.#flagRow(board);
    const {now} = this.host;
    const seen = now !== undefined && now >= board.axis.from && now <= board.axis.to;
    this.line.hidden = !seen;
    if (seen) this.line.style.left = `${this.nameWidth + board.axis.xOf(now)}px`;
  }

  #flagRow(board) {
    this.row?.remove();
    this.row = document.createElement('div');
    this.row.className = 'row flags';
    this.row.setAttribute('role', 'row');
    this.row.setAttribute('aria-rowindex', '1');
    this.row.style.height = `${board.flagHeight}px`;
    this.row.at = 0;
    const name = made('name', say('board.bands.flags'), 0);
    name.style.left = '';
    name.setAttribute('role', 'rowheader');
    name.setAttribute('aria-label', rowName(board.rows[0]));
    name.tabIndex = -1;
    this.row.append(name);
    this.head.append(this.row);
  }

  /** Draws what does not change while the board is scrolled a little. */
  pane(board, {left, right}, maker) {
    const {axis, week} = board;
    const {style} = this.back;
    style.left = `${this.nameWidth + left}px`;
    style.width = `${Math.min(right, axis.width) - left}px`;
    style.background = `${dayGradient(week.days, axis, left, right)}, ${openGradient(axis, left, right)}, var(--closed)`;
    this.#marks(board, left, right);
    this.#fly(board, left, right, maker);
  }

  #marks({axis, week}, left, right) {
    const marks = marksOf(week.days, axis, left, right);
    const corner = made('corner', '', 0);
    corner.style.left = '';
    const nodes = marks.days.map(({x, width, words}) => {
      const day = made('day', words, this.nameWidth + x);
      day.style.width = `${width}px`;
      return day;
    });
    const lower = marks.lower.map(({x, words, isEnd}) => made(isEnd ? 'lower end' : 'lower', words, this.nameWidth + x));
    const {now} = this.host;
    const word = this.line.hidden ? [] : [made(besideHour(axis.xOf(now), marks.lower) ? 'now before' : 'now', say('board.now'), this.nameWidth + axis.xOf(now))];
    this.dayNodes = marks.days.map(({x, width}, at) => ({x, width, node: nodes[at]}));
    this.led = null;
    this.days.replaceChildren(corner, ...nodes, ...lower, ...word);
  }

  /** The day at the left edge keeps its name in sight. */
  lead(scrollLeft) {
    if (this.led) this.led.style.paddingInlineStart = '';
    const first = this.dayNodes.find(({x, width}) => x < scrollLeft && x + width > scrollLeft + 40);
    this.led = first?.node ?? null;
    if (first) first.node.style.paddingInlineStart = `${scrollLeft - first.x + 4}px`;
  }

  #fly(board, left, right, maker) {
    const focused = this.#flags.findIndex(node => node !== null && node === this.host.renderRoot.activeElement);
    for (const node of this.#flags) node?.remove();
    this.#flags = board.items(0).map((item, at) => {
      if ((item.x > right || item.x + item.width < left) && at !== focused) return null;
      const node = maker.bar(item, FLAG_HEIGHT - 2);
      node.style.top = `${item.line * FLAG_HEIGHT + 1}px`;
      return node;
    });
    this.row.append(...this.flagNodes());
    if (focused >= 0) this.#flags[focused]?.focus({preventScroll: true});
  }

  flagNodes() {
    return this.#flags.filter(Boolean);
  }

  flagNode(item) {
    if (item < 0) return this.row.firstElementChild;
    return this.#flags[item] ?? null;
  }

  /** Ties of the runs that can be seen, as one path. */
  ties(board, {left, right}, {first, end}) {
    const [top, bottom] = [board.tops[first], board.tops[end]];
    const seen = board.ties.filter(tie => tie.x >= left && tie.x <= right && tie.bottom >= top && tie.top <= bottom);
    const path = seen.map(tie => `M${(tie.x - left).toFixed(1)} ${tie.top}V${tie.bottom}`).join('');
    if (path === this.tied) return;
    this.tied = path;
    this.path.setAttribute('d', path);
    this.svg.style.left = `${this.nameWidth + left}px`;
    this.svg.style.width = `${right - left}px`;
  }
}
