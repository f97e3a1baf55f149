/**
 * Changes that have not reached the service yet. They are kept on this machine until they have, so
 * that a dropped connection, a reload or a closed window loses nothing.
 */

const KEY = 'strickle.unsent';

/**
 * A change that waits.
 *
 * @typedef {{key: string, studio: string, collection: string, id: string, base: object|null,
 *   mine: object|null, at: string}} Waiting base: what it was, null for a new thing; mine: what it
 *   shall be, null for none
 */

function read() {
  try {
    return JSON.parse(localStorage.getItem(KEY) ?? '[]');
  } catch {
    return [];
  }
}

function write(waiting) {
  try {
    localStorage.setItem(KEY, JSON.stringify(waiting));
  } catch {
    // no room, or nothing is kept here: the change lives as long as this page does
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
