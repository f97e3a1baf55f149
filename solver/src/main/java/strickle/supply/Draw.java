package strickle.supply;

import java.time.OffsetDateTime;

/**
 * Something taken from stock.
 *
 * @param material its id
 * @param quantity in the material's unit
 * @param at when: a pour or step begins, or an order is packed
 * @param what the id of the task, or of the order that is packed
 */
record Draw(String material, double quantity, OffsetDateTime at, String what) {}
