/** What stands out on the board: the kin of what is chosen, and what the search finds. */

/** Whether a bar belongs to a run, lot or order. */
function isKin({run, lot, order}, id) {
  const served = run?.orders.some(each => each.id === id) ?? false;
  const holds = lot && !run ? lot.runs.some(each => each.id === id) : false;
  return [run?.id, lot?.id, order?.id].includes(id) || served || holds;
}

/**
 * Marks the nodes of bars.
 * @param {Iterable<HTMLElement>} nodes each with its item
 * @param {string} chosen id of a run, lot or order; empty for none
 * @param {object[]} finds bars that the search finds
 */
export function mark(nodes, chosen, finds) {
  const hits = new Set(finds);
  for (const node of nodes) {
    const {bar} = node.item;
    const bars = bar.bars ?? [bar];
    node.classList.toggle('kin', chosen !== '' && bars.some(each => isKin(each, chosen)));
    node.classList.toggle('found', bars.some(each => hits.has(each)));
  }
}
