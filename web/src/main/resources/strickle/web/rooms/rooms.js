/**
 * The rooms there are. Each lies in a folder of its name, with a module of its name that defines the
 * element "s-room-NAME"; its words are a group of its name. A room is loaded when it is first entered.
 */

/** In the order of the rail. */
export const ROOMS = [
  'today', 'week', 'orders', 'fairs', 'prices', 'bench', 'shelf', 'shopping', 'what-if', 'history',
];

/** Those that stand at the foot of a narrow screen; the others are behind "More". */
export const AT_HAND = ['today', 'week', 'orders', 'bench'];

const OTHERS = ['start', 'settings'];

/** Whether there is such a room. */
export function isRoom(name) {
  return ROOMS.includes(name) || OTHERS.includes(name);
}

/**
 * Loads a room.
 *
 * @param {string} name
 * @returns {Promise<string>} the name of its element
 */
export async function loadRoom(name) {
  await import(`./${name}/${name}.js`);
  return `s-room-${name}`;
}
