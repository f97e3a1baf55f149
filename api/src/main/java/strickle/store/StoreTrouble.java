package strickle.store;

/** Thrown when the database cannot do its work, with a sentence that says what to do about it. */
public final class StoreTrouble extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final Kind kind;

  /** What kind of trouble it is. */
  public enum Kind {
    /** The disk is full. */
    FULL("The disk is full: nothing was changed. Make room, then try again."),
    /** The file or the folder may not be written. */
    READ_ONLY(
        "The studio's file or its folder may only be read: nothing was changed. Give the right to"
            + " write, then try again."),
    /** Somebody else holds it. */
    LOCKED(
        "The studio's file is held by another program: nothing was changed. Close the other"
            + " program, then try again."),
    /** The file is damaged. */
    CORRUPT(
        "The studio's file is damaged or is no studio's file. It was left as it is. Move it and"
            + " those beside it that end in -wal and -shm elsewhere, then put the newest copy from"
            + " the folder snapshots in its place."),
    /** The server does not answer. */
    UNREACHABLE("The database cannot be reached: nothing was changed. Try again in a moment."),
    /** The disk reports a fault of its own. */
    DEVICE("The disk could not read or write the studio's file: nothing was changed."),
    /** The server has no room left. */
    SERVER_FULL(
        "The database server has no room left: nothing was changed. Make room there, then try"
            + " again."),
    /** The server may only be read. */
    SERVER_READ_ONLY(
        "The database server may only be read: nothing was changed. Give the right to write, then"
            + " try again."),
    /** The server reports a fault of its own. */
    SERVER("The database server could not do it: nothing was changed. Its own log says why."),
    /** A value is none that the database keeps. */
    VALUE(
        "The database cannot keep a value that was sent: nothing was changed. Right would be text"
            + " without control characters and halves of characters, names of at most 200"
            + " characters, and numbers of a common size.");

    private final String sentence;

    Kind(String sentence) {
      this.sentence = sentence;
    }

    /** The trouble in a sentence or two, and what to do. */
    public String sentence() {
      return sentence;
    }
  }

  /** Trouble of a kind, with what the database said of it. */
  public StoreTrouble(Kind kind, String detail, Throwable cause) {
    super(kind.sentence() + " (" + detail + ")", cause);
    this.kind = kind;
  }

  /** The kind of trouble. */
  public Kind kind() {
    return kind;
  }
}
