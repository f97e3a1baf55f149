package strickle.store;

import java.util.Objects;

/**
 * One thing a studio holds.
 *
 * @param collection what kind of thing, such as {@code pieces}
 * @param id its id, unique within the collection
 * @param position its place among the things of the collection; gaps mean nothing
 * @param body its JSON
 */
public record Entry(String collection, String id, long position, String body) {

  /** Refuses a missing part. */
  public Entry {
    Objects.requireNonNull(collection, "collection");
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(body, "body");
  }
}
