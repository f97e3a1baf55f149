package strickle.store;

import java.time.Instant;

/**
 * A studio opened by its password.
 *
 * @param studio which
 * @param endsAt when the password is needed again
 */
public record Session(StudioName studio, Instant endsAt) {}
