package strickle.json;

/**
 * A value that is JSON already, for records that carry what others have written.
 *
 * @param text one JSON object
 */
public record RawJson(String text) {}
