package strickle.json;

/**
 * One thing of a studio book by itself: a piece, an order, the studio's own data.
 *
 * @param collection the field of the book it stands in, such as {@code pieces}; {@link
 *     BookParts#STUDIO} for the studio's own data
 * @param id its id, unique within the collection
 * @param body the JSON of it, without needless spaces
 */
public record BookPart(String collection, String id, String body) {}
