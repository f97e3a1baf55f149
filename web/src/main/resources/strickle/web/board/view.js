/**
 * What of the board is in the document: the rows and bars that can be seen, and a little around them. Rows
 * are made and taken away while the board is scrolled; the row that has the focus always stays.
 */

import {labelOn, inkOn, swatchOf} from './colours.js';
import {awayGradient} from './ground.js';
import {gradientOf, lay, layersOf, pixels} from './layers.js';
import {labelOf, nameOf, pinOf, lateFor, rowName, rowTitle, span} from './names.js';
import {heightOf, itemsBetween} from './places.js';

/** How far beyond the edges rows and bars are kept, in pixels. */
const BEYOND_ROWS = 120;
const BEYOND_BARS = 300;
/** A narrower bar has no words on it. */
const WORDS_FROM = 34;
/** What somebody does and when stands on a bar that holds more of it than a letter or two. */
const TASK_WORDS_FROM = 60;
/** Words behind a bar want at least this much room, and about so much for each letter. */
const WORDS_BEHIND = 52;
const LETTER = 6.4;

function node(name, classes, role) {
  const made = document.createElement(name);
  made.className = classes;
  if (role) made.setAttribute('role', role);
  return made;
}

/** So many letters of a text, with a sign where something is left out. */
const cut = (text, letters) => (text.length <= letters ? text : `${text.slice(0, letters - 1).trimEnd()}…`);

/** The colours of a mix against a ground, reckoned once for each. */
export class Paints {
  #kept = new Map();

  constructor(ground) {
    this.ground = ground;
  }

  of(mix) {
    const fill = swatchOf(mix);
    if (!this.#kept.has(fill)) this.#kept.set(fill, {fill, label: labelOn(fill), ink: inkOn(fill, this.ground)});
    return this.#kept.get(fill);
  }
}

/** Makes the nodes of bars and rows. */
export class Maker {
  /**
   * @param {object} board week, rows, tops, by, axis and items(row)
   * @param {Paints} paints
   * @param {(length: number) => string} [along] how lengths along the axis are written
   */
  constructor(board, paints, along = pixels) {
    this.board = board;
    this.paints = paints;
    this.along = along;
  }

  bar(item, height) {
    const {bar} = item;
    const {week, axis} = this.board;
    const made = node('div', `bar ${bar.kind}`, 'gridcell');
    made.tabIndex = -1;
    made.setAttribute('aria-label', nameOf(bar, week));
    made.style.left = this.along(item.x);
    made.style.width = this.along(item.width);
    this.#colour(made, bar);
    lay(made, layersOf(bar, axis, item.x, height, each => this.#fill(each)), this.along);
    this.#write(made, item, height);
    made.item = item;
    return made;
  }

  /** Words stand on a bar, or behind it where hands were busy for too short to hold them. */
  #write(made, {bar, width, room}, height) {
    const words = this.#words(bar, height);
    const widest = Math.max(...words.split('\n').map(line => line.length)) * LETTER + 10;
    if (room === undefined || width >= widest || room < Math.min(widest, WORDS_BEHIND)) {
      const covered = bar.kind === 'group' && !bar.flags; // by its members
      if (width >= (bar.kind === 'task' ? Math.min(TASK_WORDS_FROM, widest) : WORDS_FROM) && !covered) made.textContent = words;
      return;
    }
    made.classList.add('behind');
    made.textContent = cut(words.replace('\n', ' · '), Math.floor((room - 4) / LETTER));
    made.style.setProperty('--beside', this.along(width));
  }

  #words(bar, height) {
    const label = labelOf(bar, this.board.week);
    return height > 30 && bar.kind === 'task' ? `${label}\n${span(bar.from, bar.to)}` : label;
  }

  #fill(bar) {
    return bar.kind === 'task' || bar.kind === 'pin' ? 'var(--slate)' : this.paints.of(bar.run.mix).fill;
  }

  #colour(made, bar) {
    const mix = bar.run?.mix ?? bar.lot?.mix;
    if (mix) for (const [name, value] of Object.entries(this.paints.of(mix))) made.style.setProperty(`--${name}`, value);
    const late = bar.order ? bar.order.lateMinutes > 0 : bar.run ? lateFor(bar.run) !== undefined : bar.flags && bar.bars.some(each => each.order.lateMinutes > 0);
    made.classList.toggle('behind-time', Boolean(late));
    made.classList.toggle('pinned', Boolean(bar.lot && pinOf(this.board.week, bar.lot)));
    made.classList.toggle('done', Boolean(bar.task?.done));
  }

  /** Somebody's own closed hours, over the whole axis. */
  #away(made, person) {
    const {axis, week} = this.board;
    made.style.backgroundImage = awayGradient(week.windows.get(person.id) ?? [], axis, 0, axis.width);
  }

  /** A post where an order is due, through all its rows. */
  #due(made, order) {
    const x = this.board.axis.xOf(order.due);
    const paint = order.lateMinutes > 0 ? 'var(--oxide)' : 'var(--moss)';
    made.style.backgroundImage = gradientOf([{x, width: 3, paint}]);
  }

  row(at) {
    const {rows, tops, by} = this.board;
    const row = rows[at];
    const made = node('div', row.heading ? 'row heading' : `row ${row.band}`, 'row');
    made.setAttribute('aria-rowindex', at + 2);
    made.style.top = `${tops[at]}px`;
    made.style.height = `${heightOf(row, by)}px`;
    const name = node('div', 'name', 'rowheader');
    name.textContent = rowTitle(row);
    if (!row.heading) {
      name.tabIndex = -1;
      name.setAttribute('aria-label', rowName(row));
    }
    if (row.person) this.#away(made, row.person);
    if (row.order) this.#due(made, row.order);
    made.append(name);
    made.at = at;
    made.bars = new Map();
    return made;
  }
}

/** Keeps the rows of the document in step with what can be seen. */
export class View {
  #rows = new Map();
  #led = [];

  constructor(body, maker) {
    this.body = body;
    this.maker = maker;
  }

  /** Forgets all rows, as when the axis or the rows are others. */
  clear() {
    for (const row of this.#rows.values()) row.remove();
    this.#rows.clear();
  }

  /**
   * Shows what lies between edges, and one row whatever they are.
   * @param {{left: number, right: number, first: number, end: number, isFirst: boolean}} seen pixels of the axis,
   *   places of rows, and whether what lies beyond can wait
   * @param {{row: number, item: number}} active
   */
  show(seen, active) {
    for (const [at, row] of this.#rows) if ((at < seen.first || at >= seen.end) && at !== active.row) this.#drop(at, row);
    const made = [];
    for (let at = seen.first; at < seen.end; at++) if (!this.#rows.has(at)) made.push(this.#make(at));
    if (active.row >= 0 && !this.#rows.has(active.row)) made.push(this.#make(active.row));
    this.#insert(made);
    for (const row of this.#rows.values()) this.#bars(row, seen, row.at === active.row ? active.item : -1);
  }

  #make(at) {
    const row = this.maker.row(at);
    this.#rows.set(at, row);
    return row;
  }

  /** In the document rows stand in their order, so that who reads the document reads them so. */
  #insert(made) {
    for (const row of made) {
      const next = [...this.body.children].find(each => each.at > row.at);
      this.body.insertBefore(row, next ?? null);
    }
  }

  #drop(at, row) {
    row.remove();
    this.#rows.delete(at);
  }

  #bars(row, {left, right, isFirst}, keep) {
    const {board} = this.maker;
    const items = board.items(row.at);
    const beyond = isFirst ? 0 : BEYOND_BARS;
    const wanted = new Map(itemsBetween(items, left - beyond, right + beyond).map(item => [item.bar.id, item]));
    if (keep >= 0 && items[keep]) wanted.set(items[keep].bar.id, items[keep]);
    for (const [id, bar] of row.bars) {
      if (wanted.has(id)) continue;
      bar.remove();
      row.bars.delete(id);
    }
    const height = heightOf(board.rows[row.at], board.by) - 8;
    for (const [id, item] of wanted) if (!row.bars.has(id)) this.#add(row, id, this.maker.bar(item, height));
  }

  #add(row, id, bar) {
    const next = [...row.children].find(each => each.item && each.item.x > bar.item.x);
    row.insertBefore(bar, next ?? null);
    row.bars.set(id, bar);
  }

  /** Bars that begin before the left edge keep their words in sight; words behind a bar go with it. */
  lead(scrollLeft) {
    for (const node of this.#led) node.style.textIndent = '';
    this.#led = [...this.bars()].filter(({item: {x}}) => x < scrollLeft);
    for (const node of this.#led) {
      const {x, width} = node.item;
      const seen = x + width - scrollLeft;
      if (node.classList.contains('behind')) node.style.textIndent = seen > 0 ? '' : '-200vw';
      else if (seen >= WORDS_FROM) node.style.textIndent = `${scrollLeft - x}px`;
    }
  }

  /** The node of a row's item, or of its name for -1. */
  nodeOf(at, item) {
    const row = this.#rows.get(at);
    if (!row) return null;
    return item < 0 ? row.firstElementChild : row.bars.get(this.maker.board.items(at)[item]?.bar.id) ?? null;
  }

  /** All bars in the document. */
  *bars() {
    for (const row of this.#rows.values()) yield* row.bars.values();
  }

  /** The rows that can be seen from a place; with those beyond, except at first. */
  static edges(top, height, isFirst) {
    const more = isFirst ? 0 : BEYOND_ROWS;
    return [top - more, top + height + more];
  }
}
