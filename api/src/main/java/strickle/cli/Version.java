package strickle.cli;

/** The version of this program; a test holds it against that of the build. */
final class Version {

  /** Numbers as semantic versioning has them. */
  static final String NUMBER = "0.1.0";

  /** What {@code --version} prints. */
  static final String TEXT = "strickle " + NUMBER;

  private Version() {}
}
