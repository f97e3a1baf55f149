package strickle.web;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.HexFormat;

/** SHA-256 of what the page gives away. */
final class Prints {

  private Prints() {}

  /** In hexadecimal digits, 64 of them. */
  static String hex(byte[] bytes) {
    return HexFormat.of().formatHex(sha256().digest(bytes));
  }

  /** As a Content-Security-Policy names an inline text (W3C, CSP Level 3, 2.3.1). */
  static String policy(String text) {
    byte[] hash = sha256().digest(text.getBytes(StandardCharsets.UTF_8));
    return "'sha256-" + Base64.getEncoder().encodeToString(hash) + "'";
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
