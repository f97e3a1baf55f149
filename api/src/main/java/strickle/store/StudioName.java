package strickle.store;

/**
 * A studio among several in one database.
 *
 * @param id a UUID; every statement on its data carries it
 * @param name by which people open it, unique
 */
public record StudioName(String id, String name) {}
