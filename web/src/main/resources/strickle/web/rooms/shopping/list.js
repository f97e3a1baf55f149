/** The shopping list of the plan in use; where the book has moved on, as of when that was laid out. */

import {isAhead, newerOrders} from '../../app/ahead.js';
import {get} from '../../app/service.js';
import {studio} from '../../app/studio.js';

/**
 * @param {string} counted when the shelf was counted, local; empty when it was not
 * @returns {Promise<{list?: object, older?: {at: string, orders: number}, trouble?: Error}>} older: when the
 *   plan was asked for of which the list is, empty where that is not known and there is no list; and how
 *   many orders are newer
 */
export async function shoppingList(counted) {
  try {
    if (!isAhead()) {
      return {list: await listOf('in-use', counted)};
    }
  } catch (trouble) {
    if (!trouble.isOfOlderPlan) {
      return {trouble};
    }
  }
  return olderList(counted).catch(trouble => ({trouble}));
}

async function olderList(counted) {
  const {planInUse} = studio;
  const orders = newerOrders();
  if (!planInUse) {
    return {list: null, older: {at: '', orders}};
  }
  const [list, plan] = await Promise.all([listOf(planInUse, counted), get(`/api/plans/${planInUse}`)]);
  return {list, older: {at: plan.body.createdAt, orders}};
}

async function listOf(plan, counted) {
  const when = counted ? `&counted=${encodeURIComponent(counted)}` : '';
  return (await get(`/api/shopping?plan=${plan}${when}`)).body;
}
