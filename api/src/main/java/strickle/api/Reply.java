package strickle.api;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** What an operation answers: a status, headers and perhaps a body. */
final class Reply {

  private static final String JSON = "application/json";
  private static final byte[] NOTHING = {};

  private final int status;
  private final String mediaType;
  private final byte[] body;
  private final Optional<Pouring> pouring;
  private final Map<String, String> headers;

  /** Writes a body that goes on for a while. */
  @FunctionalInterface
  interface Pouring {

    /**
     * Writes it, until there is no more to say.
     *
     * @throws IOException when whoever listened is gone
     */
    void into(OutputStream out) throws IOException;
  }

  private Reply(
      int status,
      String mediaType,
      byte[] body,
      Optional<Pouring> pouring,
      Map<String, String> headers) {
    this.status = status;
    this.mediaType = mediaType;
    this.body = body;
    this.pouring = pouring;
    this.headers = headers;
  }

  private Reply(int status, String mediaType, byte[] body, Map<String, String> headers) {
    this(status, mediaType, body, Optional.empty(), headers);
  }

  /** A JSON text. */
  static Reply json(int status, String json) {
    return json(status, JSON, json);
  }

  /** A JSON text of a media type of its own. */
  static Reply json(int status, String mediaType, String json) {
    return new Reply(status, mediaType, json.getBytes(StandardCharsets.UTF_8), Map.of());
  }

  /** A text of another kind. */
  static Reply text(String mediaType, String text) {
    return bytes(mediaType + ";charset=utf-8", text.getBytes(StandardCharsets.UTF_8));
  }

  /** Bytes; not to be changed afterwards. */
  static Reply bytes(String mediaType, byte[] body) {
    return new Reply(Status.OK, mediaType, body, Map.of());
  }

  /** A body that goes on for a while. */
  static Reply pouring(String mediaType, Pouring pouring) {
    return new Reply(Status.OK, mediaType, NOTHING, Optional.of(pouring), Map.of());
  }

  /** No body. */
  static Reply empty(int status) {
    return new Reply(status, "", NOTHING, Map.of());
  }

  /** The same with a header more. */
  Reply with(String name, String value) {
    Map<String, String> more = new LinkedHashMap<>(headers);
    more.put(name, value);
    return new Reply(status, mediaType, body, pouring, more);
  }

  /** The same with another body. */
  Reply withBody(byte[] other) {
    return new Reply(status, mediaType, other, headers);
  }

  /** The HTTP status. */
  int status() {
    return status;
  }

  /** The media type of the body; empty for no body. */
  String mediaType() {
    return mediaType;
  }

  /** The body's bytes; not to be changed. */
  byte[] body() {
    return body;
  }

  /** A body that goes on for a while, in place of one that is there. */
  Optional<Pouring> pouring() {
    return pouring;
  }

  /** Further headers by name. */
  Map<String, String> headers() {
    return headers;
  }
}
