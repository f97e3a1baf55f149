package strickle.web;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.zip.GZIPOutputStream;

/** One file of the page: its name, what kind of thing it is, and its bytes. */
public final class PageFile {

  private static final String UTF_8 = ";charset=utf-8";

  private static final Map<String, String> KINDS =
      Map.of(
          "js", "text/javascript" + UTF_8,
          "css", "text/css" + UTF_8,
          "html", "text/html" + UTF_8,
          "svg", "image/svg+xml" + UTF_8);

  private final String name;
  private final byte[] bytes;
  private final String tag;
  private final AtomicReference<byte[]> packed = new AtomicReference<>();

  /**
   * A file.
   *
   * @param name with slashes, as {@code app/words.js}
   * @param bytes not to be changed afterwards
   */
  PageFile(String name, byte[] bytes) {
    this.name = name;
    this.bytes = bytes;
    this.tag = Prints.hex(bytes);
  }

  /** The media type of a name by its ending; nothing for what the page does not give away. */
  static Optional<String> kind(String name) {
    return Optional.ofNullable(KINDS.get(name.substring(name.lastIndexOf('.') + 1)));
  }

  /** Its name within the page. */
  public String name() {
    return name;
  }

  /** Its media type. */
  public String mediaType() {
    return kind(name).orElseThrow();
  }

  /** What it holds; not to be changed. */
  public byte[] bytes() {
    return bytes;
  }

  /** The SHA-256 of what it holds, 64 hexadecimal digits. */
  public String print() {
    return tag;
  }

  /** The same packed with gzip (RFC 1952), made when first asked for; not to be changed. */
  public byte[] packed() {
    return packed.updateAndGet(there -> there == null ? pack(bytes) : there);
  }

  private static byte[] pack(byte[] bytes) {
    ByteArrayOutputStream packed = new ByteArrayOutputStream(bytes.length / 2);
    try (GZIPOutputStream out = new GZIPOutputStream(packed)) {
      out.write(bytes);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return packed.toByteArray();
  }
}
