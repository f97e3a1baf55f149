package strickle.bench;

import strickle.shop.Shop;

/**
 * A published problem.
 *
 * @param name what it is called
 * @param shop the problem itself; its lateness is what is to be made small
 * @param bound no schedule is better than that; 0 when nothing is proved
 * @param best the best known, for reports only
 */
record Instance(String name, Shop shop, long bound, long best) {}
