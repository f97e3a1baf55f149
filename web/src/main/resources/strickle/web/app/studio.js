/** The studio as the page knows it: its book, the plan in use and the plans there are. */

import {all, ask, get} from './service.js';
import {connection} from './connection.js';
import {sendAll, sendNow, withIds} from './sending.js';
import {outbox, withWaiting} from './outbox.js';
import {randomKey} from './keys.js';
import {Problem} from './problem.js';
import {Reading} from './reading.js';

/** How the made-up studio calls itself; a book of that name is the demo. */
export const DEMO_NAME = 'Gannet Row Studio';

const LOOK_EVERY = 15_000;

/** Events "change" whenever anything of it has changed. */
class Studio extends EventTarget {

  /** "loading", "none" (none yet), "closed" (a password opens it) or "open". */
  phase = 'loading';
  /** {id, name} of the open studio. */
  studio = null;
  /** The book, with all changes made here; null until it is there. */
  book = null;
  /** The plan the studio works by; null when there is none. */
  plan = null;
  /** Plans asked for of this studio's book, newest first, without their tasks. */
  plans = [];
  /** The id of the plan in use; empty when there is none, or it is not among the plans any more. */
  planInUse = '';
  /** What has happened to the plan in use. */
  progress = [];
  /** How many changes have not reached the service. */
  unsent = 0;
  /** Changes that waited and were refused after all, as {waiting, problem}; they wait on. */
  refusals = [];
  /** Why the studio could not be read; null when it could. */
  trouble = null;

  #reading = new Reading();

  /** Whether the open studio is the made-up one. */
  get isDemo() {
    return this.book?.studio.name === DEMO_NAME;
  }

  /** Whether a plan that was asked for is of this studio: the made-up one's are of it alone. */
  owns(plan) {
    return (plan.book === DEMO_NAME) === this.isDemo;
  }

  /** Whether the book has nothing to make yet. */
  get isEmpty() {
    return this.book !== null && this.book.pieces.length === 0 && this.book.orders.length === 0;
  }

  /** Finds out which studio is open and reads it; from then on it is looked at now and then. */
  async begin() {
    await this.load();
    connection.addEventListener('back', () => this.#settle());
    window.addEventListener('focus', () => this.refresh());
    window.addEventListener('storage', event => event.key === 'strickle.unsent' && this.#count());
    setInterval(() => document.visibilityState === 'visible' && this.refresh(), LOOK_EVERY);
  }

  /** The studio could not be read; the shell says so. */
  fail(problem) {
    console.error(problem);
    this.trouble = problem;
    this.#told();
  }

  /** Reads everything anew. */
  async load() {
    const {body} = await get('/api/studios');
    const open = body.items[0] ?? null;
    if (open?.id !== this.studio?.id) {
      Object.assign(this, {book: null, plan: null, plans: [], planInUse: '', progress: []});
      this.#reading.forget();
    }
    this.studio = open;
    if (!open) {
      this.phase = body.closed ? 'closed' : 'none';
      this.#told();
      return;
    }
    await this.#read();
    this.phase = 'open';
    this.#count();
    await this.#sendWaiting();
  }

  /** Reads what has changed since it was last read. */
  async refresh() {
    if (this.phase !== 'open' || !connection.isUp) {
      return;
    }
    try {
      await this.#read();
    } catch (failed) {
      if (!(failed instanceof Problem)) {
        throw failed;
      }
      await this.load();
    }
  }

  async #read() {
    this.#take(...await this.#reading.all(this.plan !== null));
  }

  #take(book, {items, inUse = ''}, [plan, progress]) {
    this.plan = plan === undefined ? this.plan : plan;
    this.progress = progress === undefined ? this.progress : withIds(progress);
    if (book !== undefined) {
      this.book = book;
      this.#apply();
    }
    const plans = items.filter(each => this.owns(each));
    const listed = inUse !== this.planInUse || JSON.stringify(plans) !== JSON.stringify(this.plans);
    [this.plans, this.planInUse] = [plans, inUse];
    if (listed || [book, plan, progress].some(part => part !== undefined)) {
      this.#told();
    }
  }

  /** One thing of the book, or undefined. */
  find(collection, id) {
    return this.book?.[collection]?.find(item => item.id === id);
  }

  /**
   * Puts a new or changed thing into the book. It shows at once. When the service is away it is kept
   * and sent later.
   *
   * @param {string} collection as "orders"; "studio" for the studio's own data
   * @param {object} mine what it shall be
   * @param {object} [base] what the change began from; left out for a new thing
   * @returns {Promise<"sent"|"kept">}
   * @throws {Problem} when it is refused, with its faults
   * @throws {Conflict} when somebody else has changed it since
   */
  put(collection, mine, base = null) {
    return this.#send({collection, id: mine.id ?? '', base, mine});
  }

  /** Takes a thing out of the book. */
  remove(collection, base) {
    return this.#send({collection, id: base.id ?? '', base, mine: null});
  }

  /**
   * Changes the book as a whole, in one step that can be undone: for pins, which have no id, and for
   * changes of several things at once. When somebody else was faster, it is done again on their book.
   *
   * @param {function(object): object} work makes another book of a book
   * @throws {Problem} when it is refused, with its faults
   */
  async changeBook(work) {
    for (let left = 5; ; left--) {
      const {body, tag} = await get('/api/book');
      try {
        await ask('PUT', '/api/book', {body: work(body), tag});
        break;
      } catch (failed) {
        if (!(failed instanceof Problem && failed.isStale && left > 0)) {
          throw failed;
        }
      }
    }
    await this.refresh();
  }

  async #send(change) {
    const waiting = {...structuredClone(change), key: randomKey(), studio: this.studio.id, at: new Date().toISOString()};
    outbox.keep(waiting);
    this.#apply();
    this.#count();
    try {
      const sent = await sendNow(waiting);
      if (sent === 'sent') {
        await this.refresh();
      }
      return sent;
    } catch (failed) {
      await this.#readBook();
      throw failed;
    } finally {
      this.#count();
    }
  }

  async #readBook() {
    this.#reading.forgetBook();
    await this.refresh();
  }

  // What waits shows as if it were there.
  #apply() {
    Object.assign(this, withWaiting(this, outbox.of(this.studio.id)));
  }

  // The service is back: what waited is sent, and what others have done meanwhile is read.
  async #settle() {
    if (this.phase === 'open' && !(await this.#sendWaiting())) {
      await this.refresh();
    }
  }

  // Whether something waited; then all has been read anew.
  async #sendWaiting() {
    if (outbox.of(this.studio.id).length === 0) {
      return false;
    }
    this.refusals = await sendAll(this.studio.id);
    await this.#readBook();
    this.#count();
    return true;
  }

  /**
   * Settles the first of the refused changes.
   *
   * @param {{base: object|null, mine: object|null}} [choice] what shall stand after a conflict; without
   *   it the change is given up
   */
  async settleRefusal(choice) {
    const {waiting} = this.refusals.shift();
    outbox.forget(waiting.key);
    if (choice) {
      await this.#send({collection: waiting.collection, id: waiting.id, ...choice});
    }
    await this.#readBook();
    this.#count();
  }

  #count() {
    this.unsent = this.studio ? outbox.of(this.studio.id).length : 0;
    this.#told();
  }

  /**
   * Does something to the studio as it was read last, such as going back to a snapshot.
   *
   * @param {string} path what is asked
   * @param {object} [body] with what
   * @throws {Problem} when it is refused, or somebody else has changed the studio since; it is read
   *   anew then
   */
  async act(path, body) {
    if (!this.#reading.bookTag) {
      await this.refresh();
    }
    try {
      await ask('POST', path, {tag: this.#reading.bookTag, body});
    } finally {
      await this.refresh();
    }
  }

  /** Takes the last change of the studio back, whoever made it. */
  async undo() {
    await this.act('/api/undo');
  }

  /** Puts in again what was taken back last. */
  async redo() {
    await this.act('/api/redo');
  }

  /** Makes the first studio: "demo" or "empty". */
  async create(begin, name, more = {}) {
    await ask('POST', '/api/studios', {body: {name, begin, ...more}});
    await this.load();
  }

  /** Every thing of a list beside the book, as "drying". */
  list(collection) {
    return all(`/api/${collection}`);
  }

  #told() {
    this.dispatchEvent(new Event('change'));
  }
}

export const studio = new Studio();
