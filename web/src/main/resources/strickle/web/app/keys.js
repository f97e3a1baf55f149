/** Names that nobody else has chosen: for creations that may be asked for twice, and for new things. */

/** A random name of 32 hexadecimal digits; works without a secure context too. */
export function randomKey() {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return [...bytes].map(byte => byte.toString(16).padStart(2, '0')).join('');
}

/**
 * An id for a new thing, made from its name: "Deep planter" is "deep-planter", or "deep-planter-2"
 * when that is taken.
 *
 * @param {string} name
 * @param {Iterable<string>} taken ids that are there
 */
export function idFor(name, taken) {
  const plain = name.normalize('NFKD').replace(/[\u0300-\u036f]/g, '').toLowerCase()
    .replace(/[^a-z0-9]+/g, '-').replace(/^-+|-+$/g, '').slice(0, 40) || 'new';
  const there = new Set(taken);
  let id = plain;
  for (let number = 2; there.has(id); number++) {
    id = `${plain}-${number}`;
  }
  return id;
}
