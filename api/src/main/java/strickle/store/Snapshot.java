package strickle.store;

import java.time.Instant;

/**
 * A whole studio as it was at one moment, kept to go back to.
 *
 * @param id a UUID
 * @param at when it was taken
 * @param why such as "the day's first change"
 */
public record Snapshot(String id, Instant at, String why) {}
