/**
 * Which runs serve which order: by due, then larger weight, then id; from stock first, then from the runs
 * in the order they become ready, each counted with the good pieces it brings on average.
 */

const TOLERANCE = 1e-9;

function byServing(a, b) {
  return a.due - b.due || b.weight - a.weight || (a.id < b.id ? -1 : 1);
}

/** What there is of one piece, first come first: stock, then runs. */
function supplyOf(piece, runs) {
  const ready = runs.filter((run) => run.piece.id === piece.id).sort((a, b) => a.ready - b.ready || (a.id < b.id ? -1 : 1));
  const good = (run) => Math.max(0, run.pieces * ((piece.goodPercent ?? 100) / 100) - (run.scrapped ?? 0));
  return [{run: null, left: piece.onHand ?? 0}, ...ready.map((run) => ({run, left: good(run)}))];
}

/** Takes a quantity off a supply, and says which runs it came from. */
function take(supply, quantity) {
  const from = [];
  let wanted = quantity;
  for (const part of supply) {
    if (wanted <= TOLERANCE) break;
    const taken = Math.min(part.left, wanted);
    if (taken <= TOLERANCE) continue;
    part.left -= taken;
    wanted -= taken;
    if (part.run) from.push(part.run);
 }
  return from;
}

/**
 * Notes in every run the orders it serves, and in every order the runs that serve it.
 * @param {object[]} orders with id, due (minutes), weight, lines, and an empty list of runs
 * @param {object[]} runs with piece, pieces, ready (minutes), and an empty list of orders
 */
export function serve(orders, runs) {
  const supplies = new Map();
  for (const order of [...orders].sort(byServing)) {
    for (const line of order.lines) {
      const piece = line.of;
      if (!supplies.has(piece.id)) supplies.set(piece.id, supplyOf(piece, runs));
      for (const run of take(supplies.get(piece.id), line.quantity)) {
        if (!order.runs.includes(run)) order.runs.push(run);
        if (!run.orders.includes(order)) run.orders.push(order);
     }
   }
 }
}
