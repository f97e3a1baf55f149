/** Sends changes that wait, each so that it cannot be made twice nor write over somebody else's. */

import {ask} from './service.js';
import {connection} from './connection.js';
import {outbox} from './outbox.js';
import {same} from './same.js';
import {Conflict, Problem, Unreachable} from './problem.js';

/**
 * Sends one.
 *
 * @param {import('./outbox.js').Waiting} waiting
 * @param {{hold?: boolean}} [how] hold: what is refused goes on waiting, for somebody to decide
 * @returns {Promise<"sent"|"kept">} kept when the service is away
 * @throws {Problem} when it is refused
 * @throws {Conflict} when somebody else was there first
 */
export async function sendNow(waiting, {hold = false} = {}) {
  if (!connection.isUp) {
    return 'kept';
  }
  try {
    await deliver(waiting);
  } catch (failed) {
    if (failed instanceof Unreachable || (failed instanceof Problem && failed.status === 503)) {
      connection.back();
      return 'kept';
    }
    if (!hold) {
      outbox.forget(waiting.key);
    }
    throw failed;
  }
  outbox.forget(waiting.key);
  return 'sent';
}

/**
 * Sends all that waits for a studio, oldest first; one window at a time where the browser can see to
 * that. What is refused goes on waiting.
 *
 * @returns {Promise<{waiting: object, problem: Error}[]>} what was refused
 */
export function sendAll(studio) {
  const send = async () => {
    const refused = [];
    for (const waiting of outbox.of(studio)) {
      try {
        if (await sendNow(waiting, {hold: true}) === 'kept') {
          break;
        }
      } catch (problem) {
        refused.push({waiting, problem});
      }
    }
    return refused;
  };
  return navigator.locks ? navigator.locks.request('strickle-sending', send) : send();
}

async function deliver(waiting) {
  const {collection, key} = waiting;
  const [base, mine] = [waiting.base, waiting.mine].map(thing => asKept(collection, thing));
  if (base === null) {
    await ask('POST', `/api/${collection}`, {body: mine, key});
    return;
  }
  const id = waiting.id || (collection === 'progress' ? await idOfNote(base) : '');
  const path = collection === 'studio' ? '/api/studio' : `/api/${collection}/${encodeURIComponent(id)}`;
  const {theirs, tag} = await present(path);
  if (same(theirs, mine)) {
    return; // it has arrived before, only its answer was lost
  }
  if (!same(theirs, base)) {
    throw new Conflict(base, theirs, mine);
  }
  try {
    await ask(mine === null ? 'DELETE' : 'PUT', path, {body: mine ?? undefined, tag});
  } catch (failed) {
    await settle(failed, {base, mine, path});
  }
}

// A note that was changed while it still waited itself: by now it has arrived, and has an id. Where it has
// not, no id is its own.
async function idOfNote(base) {
  const {body} = await ask('GET', '/api/progress?limit=1000');
  return withIds(body).find(note => same(asKept('progress', note), base))?.id ?? 'none';
}

/** What has happened, of a page of it: with the id of its address, since it has none of its own. */
export const withIds = page => (page?.items ?? []).map((item, at) => ({...item, id: page.ids[at]}));

// As the service keeps it, without that id.
function asKept(collection, thing) {
  if (collection !== 'progress' || !thing) {
    return thing ?? null;
  }
  const {id, ...kept} = thing;
  return kept;
}

// Another window of the same reader may have sent the same change a moment before.
async function settle(failed, {base, mine, path}) {
  if (!(failed instanceof Problem && (failed.isStale || failed.status === 404))) {
    throw failed;
  }
  const {theirs} = await present(path);
  if (!same(theirs, mine)) {
    throw failed.isStale ? new Conflict(base, theirs, mine, failed.changed) : failed;
  }
}

async function present(path) {
  try {
    const {body, tag} = await ask('GET', path);
    return {theirs: body, tag};
  } catch (failed) {
    if (failed instanceof Problem && failed.status === 404) {
      return {theirs: null, tag: ''};
    }
    throw failed;
  }
}
