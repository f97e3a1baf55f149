/**
 * Changes that have not reached the service yet. They are kept on this machine until they have, so
 * that a dropped connection, a reload or a closed window loses nothing.
 */

import {same} from './same.js';

const KEY = 'strickle.unsent';

/**
 * A change that waits.
 *
 * @typedef {{key: string, studio: string, collection: string, id: string, base: object|null,
 *   mine: object|null, at: string}} Waiting base: what it was, null for a new thing; mine: what it
 *   shall be, null for none
 */

// What finds no room on this machine lives as long as this page does; null when there is room.
let here = null;

function read() {
  if (here !== null) {
    return here;
  }
  try {
    return JSON.parse(localStorage.getItem(KEY) ?? '[]');
  } catch {
    return [];
  }
}

function write(waiting) {
  try {
    localStorage.setItem(KEY, JSON.stringify(waiting));
    here = null;
  } catch {
    here = waiting;
  }
}

export const outbox = {

  /** What waits for a studio, oldest first. */
  of(studio) {
    return read().filter(waiting => waiting.studio === studio);
  },

  /** Keeps one more, or another in place of one with its key. */
  keep(waiting) {
    write([...read().filter(other => other.key !== waiting.key), waiting]);
  },

  /** Forgets one: it has arrived, or was refused. */
  forget(key) {
    write(read().filter(waiting => waiting.key !== key));
  },
};

/**
 * The book and what has happened, with changes that wait as if they were there.
 *
 * @param {{book: object, progress: object[]}} there
 * @param {Waiting[]} waiting
 */
export function withWaiting({book, progress}, waiting) {
  // What has happened and has no id waits itself, and is put in anew.
  progress = progress.filter(({id}) => id);
  for (const {collection, id, base, mine} of waiting) {
    if (collection === 'studio') {
      book = {...book, studio: mine};
    } else if (book?.[collection]) {
      book = {...book, [collection]: replaced(book[collection], id, mine)};
    } else if (collection === 'progress') {
      progress = replaced(progress, id, mine, base);
    }
  }
  return {book, progress};
}

// What has happened has no id until it has arrived: then it is known by what it says.
function replaced(list, id, mine, base = null) {
  const at = list.findIndex(item => (id !== '' ? item.id === id : base !== null && same(item, base)));
  if (mine === null) {
    return list.filter((item, place) => place !== at);
  }
  return at < 0 ? [...list, mine] : list.with(at, mine);
}
