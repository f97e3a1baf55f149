package strickle.api;

/** The HTTP statuses (RFC 9110, 6585) the service answers with. */
final class Status {

  static final int OK = 200;
  static final int CREATED = 201;
  static final int ACCEPTED = 202;
  static final int DONE = 204;
  static final int UNCHANGED = 304;
  static final int MALFORMED = 400;
  static final int NOT_KNOWN = 401;
  static final int FORBIDDEN = 403;
  static final int NOT_THERE = 404;
  static final int TOO_SLOW = 408;
  static final int CONFLICT = 409;
  static final int STALE = 412;
  static final int TOO_LARGE = 413;
  static final int WRONG_KIND = 415;
  static final int FAULTY = 422;
  static final int MATCH_NEEDED = 428;
  static final int TOO_OFTEN = 429;
  static final int BUG = 500;
  static final int TROUBLE = 503;

  private Status() {}
}
