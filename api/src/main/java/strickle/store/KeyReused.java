package strickle.store;

/** Thrown when a key that named one creation is used for another. */
public final class KeyReused extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /** The key was used before, for something else. */
  public KeyReused(String key) {
    super(
        "The key " + key + " was used before, for another request; a new request needs a new key.");
  }
}
