/** What goes wrong when the service is asked. */

/** The service refused (RFC 9457): nothing was changed. */
export class Problem extends Error {

  /**
   * @param {number} status the HTTP status
   * @param {{title?: string, detail?: string, faults?: object[], changed?: object[]}} told
   */
  constructor(status, told = {}) {
    super(told.detail ?? told.title ?? `The service answered ${status}.`);
    this.name = 'Problem';
    this.status = status;
    this.title = told.title ?? '';
    /** Each fault: {path, found, right}; paths as "$.lines[0].quantity". */
    this.faults = told.faults ?? [];
    /** What others changed meanwhile: {collection, id, what?, who?, at?, fields}. */
    this.changed = told.changed ?? [];
  }

  /** Whether somebody else has changed the thing since it was read. */
  get isStale() {
    return this.status === 412;
  }

  /** Whether it was asked of a plan that no longer fits the book. */
  get isOfOlderPlan() {
    return this.status === 409 && this.title === 'The book has changed';
  }

  /** Whether a password is needed first. */
  get isClosed() {
    return this.status === 401;
  }
}

/** The service could not be reached, or went away before it answered. */
export class Unreachable extends Error {
  constructor(cause) {
    super('The service does not answer.', {cause});
    this.name = 'Unreachable';
  }
}

/** Somebody else has changed what is being changed here. */
export class Conflict extends Error {

  /**
   * @param {object} base what it was when the change began
   * @param {object|null} theirs what it is now; null when it is gone
   * @param {object|null} mine what it shall be; null when it shall go
   * @param {object[]} changed who changed what, where the service knows
   */
  constructor(base, theirs, mine, changed = []) {
    super('It was changed meanwhile.');
    this.name = 'Conflict';
    Object.assign(this, {base, theirs, mine, changed});
  }
}
