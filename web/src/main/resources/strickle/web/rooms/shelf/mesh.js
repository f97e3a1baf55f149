/** Reading an STL file, to draw it: what it holds is measured by the service. */

const HEAD = 84;
const FACET = 50;

/**
 * The corners of every triangle, nine numbers each.
 *
 * @param {ArrayBuffer} stl text or binary
 * @returns {Float32Array} empty when it is no STL file
 */
export function triangles(stl) {
  const view = new DataView(stl);
  const count = stl.byteLength >= HEAD ? view.getUint32(HEAD - 4, true) : 0;
  return count > 0 && stl.byteLength === HEAD + FACET * count ? binary(view, count) : text(new TextDecoder().decode(stl));
}

// A facet is its normal, three corners and two bytes of no meaning; the normal follows from the corners.
function binary(view, count) {
  const corners = new Float32Array(count * 9);
  for (let facet = 0; facet < count; facet++) {
    for (let part = 0; part < 9; part++) {
      corners[facet * 9 + part] = view.getFloat32(HEAD + facet * FACET + 12 + part * 4, true);
    }
  }
  return corners;
}

function text(stl) {
  const numbers = [...stl.matchAll(/vertex\s+(\S+)\s+(\S+)\s+(\S+)/g)].flatMap(([, x, y, z]) => [Number(x), Number(y), Number(z)]);
  return Float32Array.from(numbers.slice(0, numbers.length - (numbers.length % 9)));
}

/** The middle of the corners, and how far the farthest is from it. */
export function extent(corners) {
  const low = [Infinity, Infinity, Infinity];
  const high = [-Infinity, -Infinity, -Infinity];
  corners.forEach((value, at) => {
    low[at % 3] = Math.min(low[at % 3], value);
    high[at % 3] = Math.max(high[at % 3], value);
  });
  const middle = low.map((value, axis) => (value + high[axis]) / 2);
  return {middle, radius: Math.max(1e-6, Math.hypot(...high.map((value, axis) => (value - low[axis]) / 2)))};
}

/**
 * The triangles that face the eye when the mesh is turned, the farthest first.
 *
 * @param {Float32Array} corners
 * @param {{middle: number[], radius: number}} extent
 * @param {number} turn about the upright axis, in radians
 * @param {number} tilt towards the eye, in radians
 * @param {number} step every so many triangles, for meshes too fine to be drawn at once
 * @returns {{points: number[], depth: number, light: number}[]} points: x and y of three corners, from -1 to 1; light: 0 to 1
 */
export function facing(corners, {middle, radius}, turn, tilt, step = 1) {
  const [sin, cos, sinTilt, cosTilt] = [Math.sin(turn), Math.cos(turn), Math.sin(tilt), Math.cos(tilt)];
  const place = at => {
    const [x, y, z] = [corners[at] - middle[0], corners[at + 1] - middle[1], corners[at + 2] - middle[2]];
    const [across, deep] = [x * cos - y * sin, x * sin + y * cos];
    return [across / radius, (z * cosTilt + deep * sinTilt) / radius, (deep * cosTilt - z * sinTilt) / radius];
  };
  const seen = [];
  for (let at = 0; at < corners.length; at += 9 * step) {
    const [a, b, c] = [place(at), place(at + 3), place(at + 6)];
    const [nx, ny, nz] = cross(minus(b, a), minus(c, a));
    const length = Math.hypot(nx, ny, nz);
    if (nz > 0 && length > 0) { // upright before deep: these axes are a mirror of the mesh's own
      seen.push({points: [a[0], a[1], b[0], b[1], c[0], c[1]], depth: a[2] + b[2] + c[2], light: Math.max(0, (0.4 * nx - 0.6 * ny + 0.7 * nz) / length)});
    }
  }
  return seen.sort((one, other) => other.depth - one.depth);
}

const minus = (one, other) => one.map((value, axis) => value - other[axis]);
const cross = ([a, b, c], [d, e, f]) => [b * f - c * e, c * d - a * f, a * e - b * d];
