/**
 * What asking.js has asked for before any module was there. An answer may be taken once, and only while
 * the page begins: later it would be an old one.
 */

/**
 * The answer to a path.
 *
 * @param {string} path
 * @returns {Promise<?Response>} null when it was not asked for, is taken already, or could not be had
 */
export async function takeAsked(path) {
  const asked = globalThis.strickleAsked?.[path];
  if (!asked) {
    return null;
  }
  delete globalThis.strickleAsked[path];
  return asked;
}

/** From here on everything is asked anew. */
export function forgetAsked() {
  delete globalThis.strickleAsked;
}
