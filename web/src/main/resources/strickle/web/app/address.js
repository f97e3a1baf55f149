/**
 * The address bar tells where one is: "/orders/O-12?sort=due" is the room "orders", the rest
 * ["O-12"] and the state {sort: "due"}. An event "change" whenever it has changed.
 */

class Address extends EventTarget {

  constructor() {
    super();
    window.addEventListener('popstate', () => this.#changed());
    document.addEventListener('click', event => this.#follow(event));
  }

  /** The room, or empty at the first address. */
  get room() {
    return location.pathname.split('/')[1];
  }

  /** What stands behind the room, part by part. */
  get rest() {
    return location.pathname.split('/').slice(2).filter(part => part).map(part => decodeURIComponent(part));
  }

  /** The values after the question mark. */
  get state() {
    return Object.fromEntries(new URLSearchParams(location.search));
  }

  /**
   * Goes to another address of the page.
   *
   * @param {string} to as {@link link} makes it
   * @param {{replace?: boolean}} [how] replace: "back" shall not lead here again
   */
  go(to, {replace = false} = {}) {
    const here = location.pathname + location.search;
    if (to !== here) {
      history[replace ? 'replaceState' : 'pushState'](null, '', to);
      this.#changed();
    }
  }

  /**
   * Puts values after the question mark, or takes out those that are empty; "back" leads to where one
   * was before, not to each of them.
   *
   * @param {Object<string, string|number|undefined>} values
   */
  setState(values) {
    this.go(link(location.pathname, {...this.state, ...values}), {replace: true});
  }

  #changed() {
    this.dispatchEvent(new Event('change'));
  }

  // Links of the page are followed without loading it again; new windows and files are the browser's.
  #follow(event) {
    const link = event.composedPath().find(target => target instanceof HTMLAnchorElement);
    if (!link || event.defaultPrevented || event.button !== 0 || event.metaKey || event.ctrlKey
      || event.shiftKey || event.altKey || link.target || link.hasAttribute('download')
      || link.origin !== location.origin || /^\/(api|page|health)(\/|$)/.test(link.pathname)
      || (link.hash && link.pathname === location.pathname)) {
      return;
    }
    event.preventDefault();
    this.go(link.pathname + link.search);
  }
}

/**
 * An address of the page.
 *
 * @param {string|string[]} path as "/orders", or its parts, which may hold anything: ["orders", id]
 * @param {Object<string, string|number|undefined>} [state] empty values are left out
 */
export function link(path, state = {}) {
  const place = Array.isArray(path) ? `/${path.map(encodeURIComponent).join('/')}` : path;
  const given = Object.entries(state).filter(([, value]) => value !== undefined && value !== null && value !== '');
  return given.length > 0 ? `${place}?${new URLSearchParams(given)}` : place;
}

export const address = new Address();
