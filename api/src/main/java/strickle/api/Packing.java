package strickle.api;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.zip.GZIPOutputStream;

/**
 * Packs what goes out (gzip) for whoever takes it so. Done here, and not by the HTTP library, so
 * that the tag is that of the bytes that go out.
 */
final class Packing {

  /** Less than that goes into one packet either way. */
  private static final int LEAST_BYTES = 1500;

  /** What is packed already gains nothing. */
  private static final List<String> GAINING =
      List.of("application/json", Problem.MEDIA_TYPE, "text/", "model/");

  private static final String CODING = "gzip";
  private static final String ANY = "*";

  private Packing() {}

  /**
   * A reply as it goes out.
   *
   * @param taken the Accept-Encoding header
   */
  static Reply of(Reply reply, Optional<String> taken) {
    boolean gains =
        reply.body().length >= LEAST_BYTES
            && GAINING.stream().anyMatch(reply.mediaType()::startsWith);
    return gains && isTaken(taken) ? packed(reply) : reply;
  }

  private static Reply packed(Reply reply) {
    Reply packed = reply.withBody(gzip(reply.body())).with("Content-Encoding", CODING);
    return Optional.ofNullable(reply.headers().get("ETag"))
        .map(tag -> packed.with("ETag", Etag.packed(tag)))
        .orElse(packed);
  }

  private static byte[] gzip(byte[] plain) {
    ByteArrayOutputStream packed = new ByteArrayOutputStream(plain.length / 4);
    try (OutputStream out = new GZIPOutputStream(packed)) {
      out.write(plain);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return packed.toByteArray();
  }

  /**
   * Whether somebody takes it packed (RFC 9110, 12.5.3).
   *
   * @param header the Accept-Encoding header
   */
  static boolean isTaken(Optional<String> header) {
    List<String> codings =
        header.stream()
            .flatMap(text -> Arrays.stream(text.toLowerCase(Locale.ROOT).split(",", -1)))
            .map(String::strip)
            .toList();
    return named(codings, CODING)
        .or(() -> named(codings, ANY))
        .map(Packing::isWanted)
        .orElse(false);
  }

  private static Optional<String> named(List<String> codings, String name) {
    return codings.stream()
        .filter(coding -> coding.split(";", 2)[0].strip().equals(name))
        .findFirst();
  }

  // A weight of 0, however it is written, is a no.
  private static boolean isWanted(String coding) {
    return !coding.matches("[^;]*;\\s*q\\s*=\\s*0(\\.0*)?\\s*");
  }
}
