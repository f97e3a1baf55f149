/** Where the arrows lead on the board: one tab stop, everything else by keys. Pure functions on rows and items. */

/** A place on the board: a row, and an item in it; item -1 is the row's own name. */

/** The item of a row that is nearest in time to a minute, or -1 where there is none. */
export function nearest(items, minute) {
  let best = -1;
  let least = Infinity;
  items.forEach(({bar}, at) => {
    const away = minute < bar.from ? bar.from - minute : Math.max(0, minute - bar.to);
    if (away < least) [best, least] = [at, away];
 });
  return best;
}

/** The next row in a direction that is no heading, or the same when there is none. */
function rowBeyond(rows, row, step) {
  for (let at = row + step; at >= 0 && at < rows.length; at += step) if (!rows[at].heading) return at;
  return row;
}

/** So many rows on, over the headings. */
function rowsOn(rows, row, step, count) {
  let at = row;
  for (let n = 0; n < count; n++) at = rowBeyond(rows, at, step);
  return at;
}

/** From a row's name up and down to names, from a bar to what is nearest in time. */
function inRow(board, row, {row: from, item, minute}) {
  const named = item < 0 && board.items(from).length > 0;
  return {row, item: named ? -1 : nearest(board.items(row), minute), minute};
}

/**
 * The place a key leads to.
 * @param {{rows: object[], items: (row: number) => object[], page: number}} board page: how many rows a view shows
 * @param {{row: number, item: number, minute: number}} at minute: the time that moving up and down keeps to
 * @param {{key: string, ctrlKey?: boolean}} press
 * @returns {{row: number, item: number, minute: number}|null} null when the key moves nothing
 */
export function moved(board, at, {key, ctrlKey = false}) {
  const {rows} = board;
  switch (key) {
    case 'ArrowUp': return inRow(board, rowBeyond(rows, at.row, -1), at);
    case 'ArrowDown': return inRow(board, rowBeyond(rows, at.row, 1), at);
    case 'PageUp': return inRow(board, rowsOn(rows, at.row, -1, board.page), at);
    case 'PageDown': return inRow(board, rowsOn(rows, at.row, 1, board.page), at);
    case 'ArrowLeft': return alongRow(board, at, at.item - 1);
    case 'ArrowRight': return alongRow(board, at, at.item + 1);
    case 'Home': return alongRow(board, ctrlKey ? {...at, row: rowBeyond(rows, -1, 1)} : at, -1);
    case 'End': return alongRow(board, ctrlKey ? {...at, row: rowBeyond(rows, rows.length, -1)} : at, Infinity);
    default: return null;
 }
}

function alongRow(board, at, wanted) {
  const items = board.items(at.row);
  const item = Math.max(-1, Math.min(items.length - 1, wanted));
  return {row: at.row, item, minute: item >= 0 ? items[item].bar.from : at.minute};
}
