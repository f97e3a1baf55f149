package strickle.api;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What an operation answers.
 *
 * @param status the HTTP status
 * @param mediaType of the body; empty for no body
 * @param body the bytes; empty for none
 * @param headers further headers
 */
record Reply(int status, String mediaType, byte[] body, Map<String, String> headers) {

  private static final String JSON = "application/json";
  private static final byte[] NOTHING = {};

  /** A JSON text. */
  static Reply json(int status, String json) {
    return new Reply(status, JSON, json.getBytes(StandardCharsets.UTF_8), Map.of());
  }

  /** A text of another kind. */
  static Reply text(String mediaType, String text) {
    return bytes(mediaType + ";charset=utf-8", text.getBytes(StandardCharsets.UTF_8));
  }

  /** Bytes. */
  static Reply bytes(String mediaType, byte[] body) {
    return new Reply(Status.OK, mediaType, body, Map.of());
  }

  /** No body. */
  static Reply empty(int status) {
    return new Reply(status, "", NOTHING, Map.of());
  }

  /** The same with a header more. */
  Reply with(String name, String value) {
    Map<String, String> more = new LinkedHashMap<>(headers);
    more.put(name, value);
    return new Reply(status, mediaType, body, more);
  }
}
