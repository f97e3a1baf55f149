/** The sentence before the board: what a maker would ask first. */

import {html} from '../../parts/room.js';
import {say} from '../../app/words.js';
import {address, link} from '../../app/address.js';
import {studio} from '../../app/studio.js';
import {showMinutes} from '../../app/times.js';
import {isUnderWay} from './outcome.js';
import '../../parts/say.js';

const called = order => (order.for ? say('week.orderFor', {order: order.id, for: order.for}) : order.id);

function lateSentence(late, all, because) {
  const worst = [...late].sort((a, b) => b.lateMinutes * b.weight - a.lateMinutes * a.weight)[0];
  const reasons = because[worst.id] ?? worst.because;
  const why = say('week.lateWhy', {order: called(worst), late: showMinutes(worst.lateMinutes), because: reasonIn(reasons)});
  return html`<s-say kind="late"><b>${say('week.late', {count: late.length, all})}</b> ${why}
    <a slot="out" href=${link('/what-if', {order: worst.id})}>${say('week.whatWould')}</a></s-say>`;
}

/** Of the reasons the first says which pieces come late; the second what holds them. */
function reasonIn(reasons) {
  const reason = reasons[1] ?? reasons[0] ?? '';
  return reason === '' || /[.!?]$/.test(reason) ? reason : `${reason}.`;
}

/**
 * Says how the orders of a week stand.
 * @param {object} week
 * @param {Object<string, string[]>} because reasons by order, where the service has newer ones
 */
export function sentence(week, because) {
  const orders = week.orders.filter(order => order.planned);
  const late = orders.filter(order => order.lateMinutes > 0);
  if (late.length > 0) return lateSentence(late, orders.length, because);
  if (orders.length === 0) return html`<s-say>${say('week.noOrders')}</s-say>`;
  const tight = [...orders].sort((a, b) => (a.due - a.ready) - (b.due - b.ready))[0];
  const spare = say('week.tightest', {order: called(tight), spare: showMinutes(tight.due - tight.ready)});
  return html`<s-say kind="ready"><b>${say('week.onTime', {count: orders.length})}</b> ${spare}</s-say>`;
}

/** What the book has that this plan does not know, if anything. */
export function changed(week) {
  const orders = week.orders.filter(order => !order.planned).length;
  const pins = week.pins.filter(pin => !pin.lot).length;
  const what = [
    orders > 0 ? say('week.changedOrders', {count: orders}) : '',
    pins > 0 ? say('week.changedPins', {count: pins}) : '',
  ].filter(text => text !== '').join(', ');
  return what === '' ? '' : html`<s-say kind="care">${say('week.changed', {what})}</s-say>`;
}

/** Whoever comes from the shopping list wants a week that waits for its materials. */
export function waiting() {
  if (address.state.wait !== 'materials') return '';
  const words = isUnderWay(studio.plan, studio.progress) ? 'week.waitNot' : 'week.wait';
  return html`<s-say kind="care">${say(words)} <a slot="out" href="/shopping">${say('rooms.shopping')}</a></s-say>`;
}
