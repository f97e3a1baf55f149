package strickle.store;

/**
 * Asks that something be created once, however often the asking is repeated.
 *
 * @param key the asker's own name for this creation, 1 to 200 characters
 * @param requestHash the same for every repetition of the same request, 64 characters at most
 */
public record Once(String key, String requestHash) {}
