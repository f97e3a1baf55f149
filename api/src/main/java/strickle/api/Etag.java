package strickle.api;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import strickle.store.Stand;
import strickle.store.StudioName;

/** Entity tags (RFC 9110, 8.8.3): equal for equal content, strong. */
final class Etag {

  private static final int HEX_DIGITS = 32;
  private static final int STAND_DIGITS = 16;
  private static final Pattern OF_STAND = Pattern.compile("\"r([0-9]{1,18})-[0-9a-f]{16}\"");
  private static final String ANY = "*";

  private Etag() {}

  /** The tag of a text. */
  static String of(String text) {
    return '"' + sha256(text).substring(0, HEX_DIGITS) + '"';
  }

  /**
   * The tag of a studio's book: its revision, which studio it is, and the mark of its last change.
   * A browser that knew another studio under the same address must not take its book for this one;
   * nor that of a file for that of an older one in its place, which counts the same revisions anew.
   */
  static String of(StudioName studio, Stand stand) {
    String print = sha256(studio.id() + "\n" + stand.mark()).substring(0, STAND_DIGITS);
    return "\"r" + stand.revision() + "-" + print + '"';
  }

  /** The revision in a tag made of one; 0 when it is none. */
  static long revision(String tag) {
    Matcher parts = OF_STAND.matcher(tag);
    return parts.matches() ? Long.parseLong(parts.group(1)) : 0;
  }

  /** Whether a tag is among those of an If-Match or If-None-Match header. */
  static boolean isIn(String header, String tag) {
    return Arrays.stream(header.split(",", -1))
        .map(String::strip)
        .anyMatch(given -> given.equals(ANY) || given.equals(tag));
  }

  /** SHA-256 of a text in hexadecimal digits. */
  static String sha256(String text) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      return HexFormat.of().formatHex(digest.digest(text.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
