/**
 * What one sale brings, by the definitions of the program ("Cost and price"): sold at a list price P
 * through a channel with discount d, percent fee f and fixed fee k, net is P(1−d)(1−f) − k. The page
 * works these few lines out itself so that every figure follows the slider in the same frame; all else
 * is the service's.
 */

/** What a channel takes, as shares of 1 and money. */
export function taken(channel) {
  return {
    discount: (channel.discountPercent ?? 0) / 100,
    fee: (channel.percentFee ?? 0) / 100,
    fixed: channel.fixedFee ?? 0,
  };
}

/**
 * A sale of one good piece.
 *
 * @param {object} cost of the prices: material, wear, overhead, full, minutes
 * @param {object} channel of the book
 * @param {number} price the list price
 * @returns {{paid: number, net: number, takes: number, profit: number, marginPercent: number,
 *   earnedPerHour: number}} paid: what the buyer, or the shop, pays; takes: what the channel keeps
 */
export function sale(cost, channel, price) {
  const {discount, fee, fixed} = taken(channel);
  const paid = price * (1 - discount);
  const net = paid * (1 - fee) - fixed;
  const profit = net - cost.full;
  return {
    paid,
    net,
    takes: price - net,
    profit,
    marginPercent: paid > 0 ? (profit / paid) * 100 : NaN,
    earnedPerHour: cost.minutes > 0 ? (net - cost.material - cost.wear - cost.overhead) / (cost.minutes / 60) : NaN,
  };
}

/** The least list price at which nothing is lost; none when the channel takes all there is. */
export function breakEven(cost, channel) {
  return priceFor(cost, channel, 0);
}

/** The list price that leaves a margin of so many percent of what is paid; NaN when none does. */
export function priceFor(cost, channel, marginPercent) {
  const {discount, fee, fixed} = taken(channel);
  const left = (1 - discount) * (1 - fee - marginPercent / 100);
  return left > 0 ? (cost.full + fixed) / left : NaN;
}

/** Groups the lines of a cost by what they are for, in the order of the stack. */
export function byKind(cost) {
  return ['material', 'labour', 'wear', 'overhead'].map(kind => ({kind, amount: cost[kind]}));
}
