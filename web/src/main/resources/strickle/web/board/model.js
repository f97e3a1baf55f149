/** The board as it stands: rows, axis and the places of everything, reckoned when asked for and kept until something changes. */

import {axis} from './scale.js';
import {flagItems, itemsOf, topsOf, tiesOf, FLAG_HEIGHT} from './places.js';
import {flagRow, rowsOf} from './rows.js';
import {labelOf} from './names.js';

/** About how wide a letter of a flag is, in pixels, and what stands around its words. */
const LETTER = 7.4;
const AROUND = 18;

export class Board {
  #items = new Map();
  #ties = null;

  /**
   * @param {object} week as readWeek gives it
   * @param {{by: string, days: number, trueTime: boolean, viewWidth: number}} how days: how many a view shows
   */
  constructor(week, {by, days, trueTime, viewWidth}) {
    this.week = week;
    this.by = by;
    this.rows = [flagRow(week), ...rowsOf(week, by)];
    this.tops = topsOf(this.rows, by);
    const to = Math.max(week.to, week.from + days * 24 * 60);
    this.axis = axis({from: week.from, to, open: week.open, trueTime, days, viewWidth});
    const flags = flagItems(this.rows[0].bars, this.axis, bar => labelOf(bar, week).length * LETTER + AROUND);
    this.flagLines = flags.lines;
    this.#items.set(0, flags.items);
  }

  /** How tall all rows are together. */
  get height() {
    return this.tops.at(-1);
  }

  get flagHeight() {
    return this.flagLines * FLAG_HEIGHT + 2;
  }

  /** The items of a row with their places. */
  items(at) {
    if (!this.#items.has(at)) this.#items.set(at, itemsOf(this.rows[at], this.axis));
    return this.#items.get(at);
  }

  get ties() {
    this.#ties ??= tiesOf(this.rows, this.tops, this.axis);
    return this.#ties;
  }

  /** Where a bar is, in its own item or in a group; null when it is nowhere. */
  placeOf(test) {
    for (let row = 0; row < this.rows.length; row++) {
      const bar = this.rows[row].bars.find(test);
      if (!bar) continue;
      const item = this.items(row).findIndex(each => each.bar === bar || each.bar.bars?.includes(bar));
      return {row, item, minute: bar.from};
    }
    return null;
  }

  /** Where the focus begins: the first row with something in it, at what goes on at a minute. */
  beginning(minute, nearest) {
    const row = Math.max(1, this.rows.findIndex((each, at) => at > 0 && each.bars.length > 0));
    return {row: Math.min(row, this.rows.length - 1), item: row < this.rows.length ? nearest(this.items(row), minute) : -1, minute};
  }
}
