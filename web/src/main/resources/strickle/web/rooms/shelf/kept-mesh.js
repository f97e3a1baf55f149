/** The STL files a studio keeps, which its moulds name. */

import {ask} from '../../app/service.js';
import {studio} from '../../app/studio.js';

/** The name of the file a mould is measured by, if it is. */
export function meshOf(mould) {
  const {mesh} = mould ?? {};
  return typeof mesh === 'string' ? mesh : mesh?.file;
}

/**
 * Keeps a file under its name, or under its name with a number when a saved mould is measured by
 * another file of that name: what that one holds must not change by it.
 *
 * @param {string} name
 * @param {ArrayBuffer} bytes
 * @returns {Promise<string>} the name it is kept by
 */
export async function keepMesh(name, bytes) {
  const kept = (await ask('GET', '/api/meshes')).body.items.map(({file}) => file);
  const inUse = studio.book.moulds.map(meshOf);
  for (let number = 1; ; number++) {
    const file = number === 1 ? name : name.replace(/(\.[^.]*)?$/, `-${number}$1`);
    const {body, tag} = kept.includes(file) ? await ask('GET', pathOf(file), {as: 'blob'}) : {};
    if (body && isSame(bytes, await body.arrayBuffer())) {
      return file;
    }
    if (!body || !inUse.includes(file)) {
      await ask('PUT', pathOf(file), {body: bytes, type: 'model/stl', tag});
      return file;
    }
  }
}

const pathOf = file => `/api/meshes/${encodeURIComponent(file)}`;

function isSame(one, other) {
  const [mine, theirs] = [new Uint8Array(one), new Uint8Array(other)];
  return mine.length === theirs.length && mine.every((byte, at) => byte === theirs[at]);
}
