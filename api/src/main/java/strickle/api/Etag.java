package strickle.api;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import strickle.store.Stand;
import strickle.store.StudioName;

/**
 * Entity tags (RFC 9110, 8.8.3): equal for equal content, strong.
 *
 * <p>What goes out packed has other bytes than what goes out as it is, and so a tag of its own: the
 * same with an ending. Whoever changes a thing has read it either way, so both are taken in
 * If-Match; weak tags alone, which the same thing would have in both, may not stand there.
 */
final class Etag {

  private static final int HEX_DIGITS = 32;
  private static final int STAND_DIGITS = 16;
  private static final Pattern OF_STAND = Pattern.compile("\"r([0-9]{1,18})-[0-9a-f]{16}[\"-]");
  private static final Pattern TAG = Pattern.compile("(W/)?(\"[\\x21\\x23-\\x7e\\x80-\\xff]*\")");
  private static final String ANY = "*";
  private static final String PACKED = "-gzip\"";

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

  /** The tag of the same thing packed. */
  static String packed(String tag) {
    return tag.substring(0, tag.length() - 1) + PACKED;
  }

  private static String plain(String tag) {
    return tag.endsWith(PACKED) ? tag.substring(0, tag.length() - PACKED.length()) + '"' : tag;
  }

  /** The revision in the first tag of a header that has one; 0 when none has. */
  static long revision(String header) {
    Matcher parts = OF_STAND.matcher(header);
    return parts.find() ? Long.parseLong(parts.group(1)) : 0;
  }

  /** Whether a tag is among those of an If-Match header, which weak ones never match (13.1.1). */
  static boolean isIn(String header, String tag) {
    return header.strip().equals(ANY)
        || tags(header)
            .filter(given -> given.group(1) == null)
            .anyMatch(given -> plain(given.group(2)).equals(tag));
  }

  /**
   * The tag of an If-None-Match header by which a reader knows what is there; weak ones match too
   * (13.1.2).
   */
  static Optional<String> known(String header, String tag) {
    return header.strip().equals(ANY)
        ? Optional.of(tag)
        : tags(header)
            .map(given -> given.group(2))
            .filter(given -> plain(given).equals(tag))
            .findFirst();
  }

  /** Whether a header of tags holds any at all. */
  static boolean isAny(String header) {
    return header.strip().equals(ANY) || tags(header).findAny().isPresent();
  }

  private static Stream<MatchResult> tags(String header) {
    return TAG.matcher(header).results();
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
