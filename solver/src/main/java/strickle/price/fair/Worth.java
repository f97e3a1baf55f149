package strickle.price.fair;

import java.math.BigDecimal;

/**
 * What a little more of something would earn, by the limits before planning.
 *
 * @param what an hour of work beyond its wage, a unit of a form, the forms of a mould, or a unit of
 *     money
 * @param of id of the form or the mould; empty for the others
 * @param has how much there is: hours, units, castings at a time, money
 * @param rate what a unit more would earn if pieces could be parted: the dual of the limit
 * @param gain what a whole unit more would earn
 */
public record Worth(Kind what, String of, BigDecimal has, BigDecimal rate, BigDecimal gain) {

  /** What there can be more of. */
  public enum Kind {
    /** An hour in which somebody is there. */
    HOUR,
    /** A unit of a form. */
    FORM,
    /** All the forms that a mould needs more than one kind of, for one more casting at a time. */
    MOULD,
    /** A unit of the book's currency. */
    MONEY
  }
}
