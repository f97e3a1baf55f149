package strickle.safety;

/**
 * Something that is carried.
 *
 * @param what what it is, such as "deep planter, filled"
 * @param grams its mass, 0 or more
 */
public record Load(String what, double grams) {}
