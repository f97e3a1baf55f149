/**
 * Everything the page asks of the service goes through here. Reading waits for a service that is away
 * and goes on when it is back; changing tells the caller, who knows what can be asked for twice.
 */

import {takeAsked} from './asked.js';
import {Problem, Unreachable} from './problem.js';
import {connection} from './connection.js';
import {settings} from './settings.js';

const JSON_TYPE = /[/+]json/;
const UNREACHED = [502, 503, 504];

/**
 * An answer of the service.
 *
 * @typedef {{status: number, body: any, tag: string, location: string}} Answer
 */

/**
 * Asks once.
 *
 * @param {string} method
 * @param {string} path as "/api/orders/O-12"
 * @param {{body?: any, tag?: string, known?: string, key?: string, type?: string, as?: string, signal?: AbortSignal}} [how]
 *   body: JSON unless a type is given; tag: for If-Match; known: for If-None-Match; key: for
 *   Idempotency-Key; as: "blob" or "text" in place of JSON
 * @returns {Promise<Answer>}
 * @throws {Problem} when it is refused
 * @throws {Unreachable} when there was no answer
 */
export async function ask(method, path, how = {}) {
  let response;
  let body;
  try {
    response = (method === 'GET' && !how.known && await takeAsked(path))
      || await fetch(path, {method, headers: headers(how), body: sent(how), signal: how.signal, cache: 'no-store'});
    body = await read(response, how.as);
  } catch (failed) {
    if (failed.name === 'AbortError') {
      throw failed;
    }
    throw new Unreachable(failed);
  }
  if (response.status >= 400) {
    if (UNREACHED.includes(response.status) && !body?.title) {
      throw new Unreachable();
    }
    throw new Problem(response.status, typeof body === 'object' && body !== null ? body : {});
  }
  return {
    status: response.status,
    body,
    tag: response.headers.get('ETag') ?? '',
    location: response.headers.get('Location') ?? '',
  };
}

function headers({body, tag, known, key, type}) {
  const given = {
    'Content-Type': body === undefined ? undefined : type ?? 'application/json',
    'If-Match': tag,
    'If-None-Match': known,
    'Idempotency-Key': key,
    // A header holds no letters beyond Latin.
    'Strickle-Who': encodeURIComponent(settings.who.toWellFormed()),
  };
  return Object.fromEntries(Object.entries(given).filter(([, value]) => value));
}

function sent({body, type}) {
  return body === undefined || type ? body : JSON.stringify(body);
}

async function read(response, as) {
  if (response.status === 204 || response.status === 304) {
    return null;
  }
  if (JSON_TYPE.test(response.headers.get('Content-Type') ?? '') && as !== 'text' && !(as === 'blob' && response.ok)) {
    return response.json();
  }
  return as === 'blob' ? response.blob() : response.text();
}

/**
 * Reads; waits while the service is away.
 *
 * @param {string} path
 * @param {{known?: string, as?: string, signal?: AbortSignal}} [how]
 * @returns {Promise<Answer>}
 * @throws {Problem} when it is refused
 */
export async function get(path, how = {}) {
  for (;;) {
    try {
      return await ask('GET', path, how);
    } catch (failed) {
      if (!(failed instanceof Unreachable)) {
        throw failed;
      }
      await connection.back();
      how.signal?.throwIfAborted();
    }
  }
}

/**
 * Asks a question that changes nothing, however often it is asked (a promise, a what-if, a batch);
 * waits while the service is away.
 *
 * @returns {Promise<any>} the answer's body
 */
export async function question(path, body, {signal} = {}) {
  for (;;) {
    try {
      return (await ask('POST', path, {body, signal})).body;
    } catch (failed) {
      if (!(failed instanceof Unreachable)) {
        throw failed;
      }
      await connection.back();
      signal?.throwIfAborted();
    }
  }
}

/** Creates, or does something once: give a key to be able to ask again. */
export const post = (path, body, how = {}) => ask('POST', path, {...how, body});

/** Puts in place of what has the tag. */
export const put = (path, body, tag, how = {}) => ask('PUT', path, {...how, body, tag});

/** Removes what has the tag. */
export const remove = (path, tag) => ask('DELETE', path, {tag});

/** All things of a list, page after page. */
export async function all(path, how = {}) {
  return (await pages(path, {...how, least: Infinity})).items;
}

/**
 * So many things of a list, or all it has, page after page.
 *
 * @param {string} path
 * @param {{least: number, after?: string, keeps?: function(object): boolean}} how least: how many of those
 *   that are kept; after: the "next" of the page before; keeps: which are; all without it
 * @returns {Promise<{items: object[], next: string, last: object}>} items: no fewer, as far as there are
 *   any; next: empty when there are no more; last: the last page
 */
export async function pages(path, {least, after = '', keeps = () => true, ...how}) {
  const items = [];
  let last;
  let next = after;
  do {
    const query = `${path.includes('?') ? '&' : '?'}limit=${Math.min(Math.max(least, 20), 200)}${next && `&after=${encodeURIComponent(next)}`}`;
    last = (await get(path + query, how)).body;
    items.push(...last.items.filter(keeps));
    next = last.next ?? '';
  } while (next && items.length < least);
  return {items, next, last};
}

/**
 * Listens to what becomes of a plan, until it is over or nobody listens any more; a stream that
 * breaks off is taken up again by the browser.
 *
 * @param {string} path as "/api/plans/ID/events"
 * @param {{progress?: function(object): void, done?: function(object): void, lost?: function(): void}} hear
 * @returns {function(): void} ends listening
 */
export function listen(path, {progress = () => {}, done = () => {}, lost = () => {}}) {
  let source;
  let ended = false;
  const open = () => {
    source = new EventSource(path);
    source.addEventListener('progress', event => progress(JSON.parse(event.data)));
    source.addEventListener('done', event => {
      close();
      done(JSON.parse(event.data));
    });
    source.addEventListener('error', async () => {
      if (source.readyState === EventSource.CLOSED && !ended) {
        lost();
        await connection.back();
        if (!ended) {
          open();
        }
      }
    });
  };
  const close = () => {
    ended = true;
    source.close();
  };
  open();
  return close;
}

/** Gives a file to the reader, as a download of a name. */
export function saveAs(blob, name) {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(blob);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
