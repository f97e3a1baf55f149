/** Finding bars by what they are called. */

/** Text as it is compared: without case and accents. */
const plain = (text) => text.normalize('NFD').replace(/\p{M}/gu, '').toLocaleLowerCase();

function wordsOfRun(run) {
  return [run.id, run.piece.name, run.mix.name, run.mould?.name ?? '', ...run.orders.flatMap((order) => [order.id, order.for])];
}

/** Everything a bar can be found by. */
function wordsOf(bar, week) {
  if (bar.order) return [bar.order.id, bar.order.for, ...bar.order.lines.map((line) => line.of.name)];
  if (bar.pin) return [bar.pin.piece.name];
  const runs = bar.run ? [bar.run] : (bar.lot?.runs ?? []);
  const task = bar.task;
  const step = task?.kind === 'step' ? (task.run.piece.route?.[task.step - 1]?.step ?? '') : (task?.kind ?? '');
  return [step, task ? (week.names.people.get(task.person)?.name ?? task.person) : '', bar.lot?.id ?? '', ...runs.flatMap(wordsOfRun)];
}

const kept = new WeakMap();
const texts = new WeakMap();

/**
 * The bars that hold all words of a text, in order of time. Looked for once, because a board that is
 * scrolled asks again with every frame.
 * @param {object[]} rows
 * @param {object} week
 * @param {string} text
 * @returns {{row: number, bar: object}[]} empty for an empty text
 */
export function found(rows, week, text) {
  const known = kept.get(rows);
  if (known?.text === text) return known.hits;
  const hits = look(rows, week, text);
  kept.set(rows, {text, hits});
  return hits;
}

function look(rows, week, text) {
  const wanted = plain(text).split(/\s+/).filter((word) => word !== '');
  if (wanted.length === 0) return [];
  const hits = rows.flatMap((row, at) => row.bars.map((bar) => ({row: at, bar})));
  const holds = ({row, bar}) => wanted.every((word) => textOf(bar, rows[row], week).includes(word));
  return hits.filter(holds).sort((a, b) => a.bar.from - b.bar.from || a.row - b.row);
}

/** Kept with the bar, because every letter that is typed asks for all of them. */
function textOf(bar, row, week) {
  if (!texts.has(bar)) texts.set(bar, plain([rowName(row), ...wordsOf(bar, week)].join(' ')));
  return texts.get(bar);
}

const rowName = (row) => row.form?.name ?? row.person?.name ?? row.order?.id ?? '';
