package strickle.supply;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.OffsetDateTime;

/**
 * Something that begins before what it needs can be there.
 *
 * @param what the id of a task, or of an order to be packed
 * @param at when it begins
 * @param material the id of what is missing
 * @param missing how much is missing then, in its unit, to a tenth
 * @param arrives the first day it can be there
 */
public record TooEarly(
    String what, OffsetDateTime at, String material, BigDecimal missing, LocalDate arrives) {}
