package strickle.api;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.Optional;
import strickle.json.contract.Parameter;

/**
 * Who asks, as they call themselves, for the journal. A header holds no letters beyond Latin, so
 * that its value is UTF-8 percent-encoded (RFC 3986, 2.1); what stands for itself may stay as it
 * is.
 */
final class Who {

  private static final String HEADER = "Strickle-Who";
  private static final String SOMEBODY = "the studio";
  private static final int LONGEST = 80;
  private static final int HEX = 2;

  static final Parameter PARAMETER =
      Parameter.header(
          HEADER,
          "Who changes it, for the journal: a name of up to 80 characters as percent-encoded UTF-8"
              + " (RFC 3986), in which plain letters and spaces may stay as they are; \""
              + SOMEBODY
              + "\" without it.",
          "Ma%C5%99enka");

  private Who() {}

  /**
   * The name in a request.
   *
   * @throws Refusal when it is no name as the contract has it
   */
  static String of(Call call) {
    return call.header(HEADER)
        .map(written -> read(written).orElseThrow(() -> wrong(written)))
        .map(String::strip)
        .filter(name -> !name.isEmpty())
        .orElse(SOMEBODY);
  }

  private static Refusal wrong(String written) {
    String right =
        "a name of up to " + LONGEST + " characters, as percent-encoded UTF-8: %25 for a %";
    return Refusal.malformed(HEADER, Call.shown(written), right);
  }

  private static Optional<String> read(String written) {
    return decoded(written)
        .filter(name -> name.codePointCount(0, name.length()) <= LONGEST)
        .filter(name -> name.codePoints().noneMatch(Character::isISOControl));
  }

  private static Optional<String> decoded(String written) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    int at = 0;
    while (at < written.length()) {
      if (written.charAt(at) != '%') {
        int letter = written.codePointAt(at);
        bytes.writeBytes(Character.toString(letter).getBytes(StandardCharsets.UTF_8));
        at += Character.charCount(letter);
      } else if (isHex(written, at + 1)) {
        bytes.write(HexFormat.fromHexDigits(written, at + 1, at + 1 + HEX));
        at += 1 + HEX;
      } else {
        return Optional.empty();
      }
    }
    return text(bytes.toByteArray());
  }

  private static boolean isHex(String text, int from) {
    return from + HEX <= text.length()
        && HexFormat.isHexDigit(text.charAt(from))
        && HexFormat.isHexDigit(text.charAt(from + 1));
  }

  private static Optional<String> text(byte[] bytes) {
    try {
      return Optional.of(
          StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString());
    } catch (CharacterCodingException broken) {
      return Optional.empty();
    }
  }
}
