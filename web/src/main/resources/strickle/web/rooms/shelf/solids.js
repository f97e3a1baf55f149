/** The solids a mould's room can be put together from, and how each is sketched. */

/** By name, the measures in millimetres with what a new one begins with. */
export const SOLIDS = {
  'box': {lengthMm: 100, widthMm: 100, heightMm: 60},
  'cylinder': {radiusMm: 50, heightMm: 80},
  'cone-frustum': {bottomRadiusMm: 50, topRadiusMm: 60, heightMm: 80},
  'pyramid-frustum': {bottomLengthMm: 80, bottomWidthMm: 80, topLengthMm: 100, topWidthMm: 100, heightMm: 60},
  'spherical-cap': {sphereRadiusMm: 60, heightMm: 40},
  'hemisphere': {radiusMm: 50},
  'torus': {ringRadiusMm: 60, tubeRadiusMm: 15},
  'ellipsoid': {semiAMm: 60, semiBMm: 40, semiCMm: 30},
};

/** A new solid of a kind. */
export const newSolid = (solid, subtract = false) => ({solid, ...SOLIDS[solid], ...(subtract ? {subtract: true} : {})});

/**
 * Half widths and height of a solid as seen from the side: [bottom, top, height, rounding], in mm; the
 * rounding says how its side bends.
 */
export function profile(solid) {
  return {
    'box': () => [solid.lengthMm / 2, solid.lengthMm / 2, solid.heightMm, ''],
    'cylinder': () => [solid.radiusMm, solid.radiusMm, solid.heightMm, ''],
    'cone-frustum': () => [solid.bottomRadiusMm, solid.topRadiusMm, solid.heightMm, ''],
    'pyramid-frustum': () => [solid.bottomLengthMm / 2, solid.topLengthMm / 2, solid.heightMm, ''],
    'spherical-cap': () => [capRadius(solid), 0, solid.heightMm, 'dome'],
    'hemisphere': () => [solid.radiusMm, 0, solid.radiusMm, 'dome'],
    'torus': () => [solid.ringRadiusMm + solid.tubeRadiusMm, solid.ringRadiusMm + solid.tubeRadiusMm, 2 * solid.tubeRadiusMm, 'ring'],
    'ellipsoid': () => [solid.semiAMm, solid.semiAMm, 2 * solid.semiCMm, 'egg'],
  }[solid.solid]?.() ?? [0, 0, 0, ''];
}

// The rim of a cap of height h from a sphere of radius r: √(h (2r − h)).
function capRadius({sphereRadiusMm: radius, heightMm: height}) {
  return Math.sqrt(Math.max(0, height * (2 * radius - height)));
}
