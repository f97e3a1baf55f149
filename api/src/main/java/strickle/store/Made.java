package strickle.store;

/**
 * What a creation leaves behind.
 *
 * @param entries what the studio holds then
 * @param reply what to answer, now and when the same is asked again
 */
public record Made(Entries entries, String reply) {}
