package strickle.safety;

/**
 * Something in a route that makes no sense as it is read, said so that a maker can judge it.
 *
 * @param path where in the book, such as {@code $.pieces[0].route[1]}
 * @param said what stands there
 * @param because why that may go wrong
 * @param rather what would be better
 * @param basis whose figures it goes by: the book's own with their place, or common practice
 * @param sure false when the words of the step, or the hours, leave it open
 */
public record Advice(
    String path, String said, String because, String rather, String basis, boolean sure) {

  /** One sentence after the other, the path before them. */
  @Override
  public String toString() {
    String open = sure ? "" : "perhaps: ";
    return path + ": " + open + said + ". " + because + " " + rather + " (Based on " + basis + ".)";
  }
}
