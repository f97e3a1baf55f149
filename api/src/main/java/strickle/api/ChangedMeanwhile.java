package strickle.api;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * One thing somebody has changed since one last looked.
 *
 * @param collection what kind of thing
 * @param id its id
 * @param what what was done, in a few words
 * @param who who did it
 * @param at when
 * @param fields the fields that differ, where both are known
 */
public record ChangedMeanwhile(
    String collection,
    String id,
    Optional<String> what,
    Optional<String> who,
    Optional<Instant> at,
    List<String> fields) {}
