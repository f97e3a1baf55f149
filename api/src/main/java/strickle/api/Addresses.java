package strickle.api;

import java.nio.charset.StandardCharsets;
import java.util.HexFormat;

/** Makes addresses of names (RFC 3986). */
final class Addresses {

  /** What stands for itself in a segment of a path: unreserved, and what parts nothing there. */
  private static final String PLAIN =
      "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-._~!$&'()*+,=:@";

  private static final HexFormat HEX = HexFormat.of().withUpperCase();

  private Addresses() {}

  /** The address of a thing below another. */
  static String below(String root, String name) {
    StringBuilder address = new StringBuilder(root).append('/');
    for (byte one : name.getBytes(StandardCharsets.UTF_8)) {
      if (one >= 0 && PLAIN.indexOf(one) >= 0) {
        address.append((char) one);
      } else {
        address.append('%').append(HEX.toHexDigits(one));
      }
    }
    return address.toString();
  }
}
