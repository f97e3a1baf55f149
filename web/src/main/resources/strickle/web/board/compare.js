/**
 * What differs between two plans in the eyes of a maker: pours that are elsewhere, new or gone. Lots are
 * numbered anew in each plan, so that pours are matched by their pieces: first those that stand the same,
 * then the others in order of time.
 */

/** One entry for each casting of a plan, by piece. */
function castingsOf(week) {
  const byPiece = new Map();
  for (const run of week.runs.values()) {
    const pour = run.lot.pour;
    const list = byPiece.get(run.piece.id) ?? byPiece.set(run.piece.id, []).get(run.piece.id);
    for (let n = 0; n < run.castings; n++) list.push({piece: run.piece, from: pour.from, person: pour.person, cavities: run.mould?.cavities ?? 1});
  }
  return byPiece;
}

const same = (a, b) => a.from === b.from && a.person === b.person;

/** Pairs of one piece's castings before and after, without those that stand the same. */
function pairsOf(before, after) {
  const left = [...before].sort((a, b) => a.from - b.from);
  const rest = [...after].sort((a, b) => a.from - b.from).filter(casting => {
    const at = left.findIndex(each => same(each, casting));
    if (at >= 0) left.splice(at, 1);
    return at < 0;
  });
  return Array.from({length: Math.max(left.length, rest.length)}, (_, at) => ({before: left[at] ?? null, after: rest[at] ?? null}));
}

/** Castings that move together are told together. */
function together(pairs) {
  const all = new Map();
  for (const pair of pairs) {
    const key = [pair.before?.from, pair.before?.person, pair.after?.from, pair.after?.person].join(' ');
    const one = all.get(key);
    const pieces = (pair.after ?? pair.before).cavities;
    if (one) one.pieces += pieces;
    else all.set(key, {...pair, piece: (pair.after ?? pair.before).piece, pieces});
  }
  return [...all.values()];
}

/**
 * The pours that differ.
 * @param {object} before a week as readWeek gives it
 * @param {object} after
 * @returns {{piece: object, pieces: number, before: object|null, after: object|null}[]} in order of time
 */
export function poursMoved(before, after) {
  const [old, next] = [castingsOf(before), castingsOf(after)];
  const ids = new Set([...old.keys(), ...next.keys()]);
  const moved = [...ids].flatMap(id => together(pairsOf(old.get(id) ?? [], next.get(id) ?? [])));
  const when = ({before: was, after: is}) => (is ?? was).from;
  return moved.sort((a, b) => when(a) - when(b));
}
