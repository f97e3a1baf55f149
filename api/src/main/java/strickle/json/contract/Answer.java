package strickle.json.contract;

import java.util.List;
import java.util.Optional;

/**
 * One way an operation may answer.
 *
 * @param status the HTTP status
 * @param description when it answers so
 * @param body what the body looks like; nothing for no body
 * @param headers the headers that come with it
 * @param example one that was really given, shortened; empty for none
 */
public record Answer(
    int status, String description, Optional<Shape> body, List<String> headers, String example) {

  /** An answer with a body. */
  public static Answer of(int status, String description, Shape body, String... headers) {
    return new Answer(status, description, Optional.of(body), List.of(headers), "");
  }

  /** An answer without a body. */
  public static Answer empty(int status, String description, String... headers) {
    return new Answer(status, description, Optional.empty(), List.of(headers), "");
  }

  /** The same with an example. */
  public Answer such(String given) {
    return new Answer(status, description, body, headers, given);
  }
}
