package strickle.shop;

/**
 * A job that has to wait for another. Only kinds with a single job and a family of their own may be
 * linked; the links must not go round in a circle.
 *
 * @param before index of the kind that comes first
 * @param after index of the kind that waits
 * @param minutes from the end of the first to the start of the second, at least; 0 or more
 */
public record Link(int before, int after, int minutes) {}
