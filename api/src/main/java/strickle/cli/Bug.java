package strickle.cli;

/** Thrown when Strickle catches itself in a mistake. */
final class Bug extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /** Says what is wrong, in one line. */
  Bug(String message) {
    super(message);
  }
}
