/** Where rows and bars lie on the board, in pixels. Pure reckoning: the same input gives the same places. */

/** The least width of anything that can be pointed at (WCAG 2.2, 2.5.8). */
export const TARGET = 24;
export const HEADING_HEIGHT = 28;
export const ROW_HEIGHT = 32;
export const TALL_HEIGHT = 46;
export const FLAG_HEIGHT = 26;
/** Flags stand in so many lines; what finds no room in them is told as one flag of several orders. */
const FLAG_LINES = 3;

/** How tall a row is. */
export function heightOf(row, by) {
  if (row.band === 'flags') return 0; // they fly in the head
  if (row.heading) return HEADING_HEIGHT;
  return by === 'person' && row.band === 'hands' ? TALL_HEIGHT : ROW_HEIGHT;
}

/**
 * The tops of rows, and after the last the height of all.
 * @param {object[]} rows
 * @param {string} by
 * @returns {number[]} one more than rows
 */
export function topsOf(rows, by) {
  const tops = [0];
  for (const row of rows) tops.push(tops.at(-1) + heightOf(row, by));
  return tops;
}

/**
 * The rows that can be seen between two heights.
 * @param {number[]} tops as topsOf gives them
 * @param {number} from pixels
 * @param {number} to pixels
 * @returns {{first: number, end: number}} end is one after the last
 */
export function rowsBetween(tops, from, to) {
  let first = 0;
  while (first < tops.length - 2 && tops[first + 1] <= from) first++;
  let end = first;
  while (end < tops.length - 1 && tops[end] < to) end++;
  return {first, end};
}

/** Bars that lie too near each other to be pointed at one by one, as one item. */
function grouped(bars) {
  return bars.length === 1 ? bars[0] : {id: `${bars[0].id}+${bars.length - 1}`, kind: 'group', bars, from: bars[0].from, to: Math.max(...bars.map((bar) => bar.to)), parts: []};
}

/**
 * The bars of a row as items with their places; neighbours that would be narrower than a target become one.
 * @param {object} row
 * @param {{xOf: (minute: number) => number}} axis
 * @returns {{bar: object, x: number, width: number, room?: number}[]} in order, none over the next; room: for
 *   hands, what is free behind it
 */
export function itemsOf(row, axis) {
  const items = [];
  let open = null;
  const close = () => open && items.push({bar: grouped(open.bars), x: open.x, width: Math.max(TARGET, open.right - open.x)});
  for (const bar of row.bars) {
    const x = axis.xOf(bar.from);
    const right = axis.xOf(bar.to);
    if (open && x < Math.max(open.right, open.x + TARGET) - 0.5) {
      open.bars.push(bar);
      open.right = Math.max(open.right, right);
   } else {
      close();
      open = {bars: [bar], x, right};
   }
 }
  close();
  return row.band === 'hands' ? withRoom(items) : items;
}

/** Notes beside each item how far it is from its end to the next. */
function withRoom(items) {
  return items.map((item, at) => ({...item, room: (items[at + 1]?.x ?? Infinity) - item.x - item.width}));
}

/**
 * Flags in lines, none over another.
 * @param {object[]} bars flags in order of time
 * @param {{xOf: (minute: number) => number, width: number}} axis
 * @param {(bar: object) => number} widthOf how wide a flag's words are
 * @returns {{lines: number, items: {bar: object, x: number, width: number, line: number}[]}}
 */
export function flagItems(bars, axis, widthOf) {
  const items = [];
  const ends = [];
  for (const bar of bars) {
    const width = Math.max(TARGET, widthOf(bar));
    const x = Math.max(0, Math.min(axis.xOf(bar.from), axis.width - width));
    let line = ends.findIndex((end) => end <= x);
    if (line < 0 && ends.length < FLAG_LINES) line = ends.length;
    if (line >= 0) {
      items.push({bar, x, width, line});
      ends[line] = x + width + 3;
   } else {
      gather(items, bar, ends, widthOf);
   }
 }
  return {lines: Math.max(1, ends.length), items};
}

/** Puts a flag that has no room together with the last one of the lowest line. */
function gather(items, bar, ends, widthOf) {
  const line = FLAG_LINES - 1;
  const item = items.findLast((each) => each.line === line);
  const bars = item.bar.kind === 'group' ? [...item.bar.bars, bar] : [item.bar, bar];
  item.bar = {...grouped(bars), flags: true};
  item.width = Math.max(TARGET, widthOf(item.bar));
  ends[line] = item.x + item.width + 3;
}

/** The items that reach into a stretch of pixels. */
export function itemsBetween(items, from, to) {
  return items.filter((item) => item.x < to && item.x + item.width > from);
}

/**
 * The lines that tie the rows of a run which holds several units or forms.
 * @param {object[]} rows
 * @param {number[]} tops
 * @param {{xOf: (minute: number) => number}} axis
 * @returns {{run: string, x: number, top: number, bottom: number}[]} from the middle of the first row to the middle of the last
 */
export function tiesOf(rows, tops, axis) {
  const spans = new Map();
  rows.forEach((row, at) => {
    if (row.band !== 'forms') return;
    const middle = (tops[at] + tops[at + 1]) / 2;
    for (const {run, from} of row.bars) {
      const span = spans.get(run.id);
      if (span) span.bottom = middle;
      else spans.set(run.id, {run: run.id, x: axis.xOf(from) + 3, top: middle, bottom: middle});
   }
 });
  return [...spans.values()].filter((span) => span.bottom > span.top);
}
