package strickle.shop;

/** A way from the orders that have been tried to the next. */
interface Walk {

  /** Tries one order more; the trials remember the best. */
  void step();
}
