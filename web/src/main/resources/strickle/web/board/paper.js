/** The board on paper: before printing every row is there, on as wide a track as the paper gives. */

import {say} from '../app/words.js';
import {axis} from './scale.js';
import {Board} from './model.js';
import {dayGradient, openGradient} from './ground.js';
import {marksOf} from './head.js';
import {labelOf, rowTitle} from './names.js';
import {flagItems, heightOf, itemsBetween} from './places.js';
import {Maker} from './view.js';

/** How wide the track is reckoned to be; bars are placed in parts of what it really is. */
const TRACK = 900;
const ROWS_ON_A_SHEET = 12;
const FLAG_LINE = 17;
/** A letter of a flag takes more of the narrower paper. */
const FLAG_LETTER = 8.6;
const HATCH = 'repeating-linear-gradient(135deg, #9a9a9a 0 0.6px, transparent 0.6px 4px)';

function node(classes, text = '') {
  const made = document.createElement('div');
  made.className = classes;
  made.textContent = text;
  return made;
}

export class Paper {
  #before = () => this.make();
  #after = () => this.host.renderRoot.querySelector('.paper').replaceChildren();

  constructor(host) {
    this.host = host;
    host.addController(this);
  }

  hostConnected() {
    addEventListener('beforeprint', this.#before);
    addEventListener('afterprint', this.#after);
  }

  hostDisconnected() {
    removeEventListener('beforeprint', this.#before);
    removeEventListener('afterprint', this.#after);
  }

  /** Makes all rows, for the days that the board shows now. */
  make() {
    const {host} = this;
    if (!host.board) return;
    const board = this.#board();
    const along = length => `${((length / board.axis.width) * 100).toFixed(3)}cqw`;
    const maker = new Maker(board, host.maker.paints, along);
    const sheets = [];
    for (let first = 1; first < board.rows.length; first += ROWS_ON_A_SHEET) sheets.push(this.#sheet(board, maker, along, first));
    host.renderRoot.querySelector('.paper').replaceChildren(...sheets);
  }

  /** The same rows on an axis that holds the days seen and no others. */
  #board() {
    const {host} = this;
    const {week, seen: {days}} = host;
    const [day, {to}] = [days[0], days.at(-1)];
    const board = new Board(week, {by: host.by, days: host.days, trueTime: host.trueTime, viewWidth: TRACK});
    board.axis = axis({from: day.from, to, open: week.open, trueTime: host.trueTime, days: (to - day.from) / (24 * 60), viewWidth: TRACK});
    const flags = flagItems(board.rows[0].bars.filter(bar => bar.from >= day.from && bar.from < to), board.axis, bar => labelOf(bar, week).length * FLAG_LETTER + 16);
    board.flagLines = flags.lines;
    board.items = at => (at === 0 ? flags.items : null) ?? board.rows[at].bars.filter(bar => bar.to > day.from && bar.from < to).map(bar => {
      const x = board.axis.xOf(bar.from);
      return {bar, x, width: Math.max(3, board.axis.xOf(bar.to) - x)};
    });
    return board;
  }

  #sheet(board, maker, along, first) {
    const sheet = node('sheet');
    sheet.append(this.#days(board, along));
    if (first === 1) sheet.append(this.#flags(board, maker, along));
    for (let at = first; at < Math.min(board.rows.length, first + ROWS_ON_A_SHEET); at++) {
      const row = board.rows[at];
      sheet.append(this.#line(board, maker, along, at, rowTitle(row), row.heading ? 18 : Math.min(26, heightOf(row, board.by))));
    }
    return sheet;
  }

  #days({week, axis: time}, along) {
    const line = node('line-of days-of');
    const track = node('track days');
    for (const {x, width, words} of marksOf(week.days, time, 0, time.width).days) {
      if (x + width <= 0 || x >= time.width) continue;
      const day = node('day', words);
      day.style.left = along(x);
      day.style.width = along(width);
      track.append(day);
    }
    line.append(node('name'), track);
    return line;
  }

  #flags(board, maker, along) {
    const line = this.#line(board, maker, along, 0, say('board.bands.flags'), board.flagLines * FLAG_LINE + 2);
    for (const flag of line.querySelectorAll('.bar')) flag.style.top = `${flag.item.line * FLAG_LINE + 1}px`;
    return line;
  }

  #line(board, maker, along, at, title, height) {
    const row = board.rows[at];
    const line = node(row.heading ? 'line-of row-of heading' : 'line-of row-of');
    const track = node('track');
    track.style.height = `${height}px`;
    if (!row.heading) {
      const ground = node('closed');
      const {axis: time, week} = board;
      ground.style.background = `${dayGradient(week.days, time, 0, time.width, along)}, ${openGradient(time, 0, time.width, along)}, ${HATCH}`;
      track.append(ground, ...itemsBetween(board.items(at), 0, time.width).map(item => maker.bar(item, height - 4)));
    }
    line.append(node('name', title), track);
    return line;
  }
}
