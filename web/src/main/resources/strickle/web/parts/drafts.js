/** What was typed into a form and not saved, kept on this machine by studio and name. */

import {studio} from '../app/studio.js';

const PREFIX = 'strickle.draft.';

function key(name) {
  return `${PREFIX}${studio.studio?.id ?? ''}/${name}`;
}

export const drafts = {

  /** What was kept under a name; null for nothing. */
  read(name) {
    try {
      return JSON.parse(localStorage.getItem(key(name)));
    } catch {
      return null;
    }
  },

  /** Keeps a value under a name. */
  keep(name, value) {
    try {
      localStorage.setItem(key(name), JSON.stringify(value));
    } catch {
      // no room: what is typed lives as long as the page does
    }
  },

  /** Forgets what was kept under a name. */
  forget(name) {
    if (name) {
      try {
        localStorage.removeItem(key(name));
      } catch {
        // nothing is kept here
      }
    }
  },
};
