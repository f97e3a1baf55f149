package strickle.json.contract;

/**
 * A value that stands beside the body of a request.
 *
 * @param in where it stands
 * @param name its name
 * @param description what it means, with its unit and what holds without it
 * @param required whether it must be there
 * @param kind what it must be
 * @param example one that is right
 */
public record Parameter(
    In in, String name, String description, boolean required, Kind kind, String example) {

  /** Where a value stands. */
  public enum In {
    PATH,
    QUERY,
    HEADER
  }

  /** What a value must be. */
  public enum Kind {
    TEXT,
    WHOLE,
    NUMBER,
    FLAG,
    DATE
  }

  /** A part of the path. */
  public static Parameter path(String name, String description, String example) {
    return new Parameter(In.PATH, name, description, true, Kind.TEXT, example);
  }

  /** An optional value after the question mark. */
  public static Parameter query(String name, Kind kind, String description, String example) {
    return new Parameter(In.QUERY, name, description, false, kind, example);
  }

  /** An optional header. */
  public static Parameter header(String name, String description, String example) {
    return new Parameter(In.HEADER, name, description, false, Kind.TEXT, example);
  }

  /** The same, but it must be there. */
  public Parameter needed() {
    return new Parameter(in, name, description, true, kind, example);
  }
}
