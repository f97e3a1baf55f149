package strickle.cli;

/**
 * Thrown when something outside stands in the way, such as a folder that cannot be written to. The
 * message is one line that says where, what was found and what would be right.
 */
final class Trouble extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /** Says what stands in the way. */
  Trouble(String message) {
    super(message);
  }
}
