package strickle.paper;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.BitSet;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** The fonts that are put into every document, and which signs they have. */
final class Fonts {

  /** The name the style sheets call them by. */
  static final String FAMILY = "sheet";

  private static final byte[] REGULAR = read("fonts/DejaVuSansCondensed.ttf");
  private static final byte[] BOLD = read("fonts/DejaVuSansCondensed-Bold.ttf");
  private static final BitSet SIGNS = signs();

  /** Stands for a sign that is not there. */
  private static final int BOX = '▯';

  /** The fonts have nothing beyond the first supplementary plane. */
  private static final int LAST_SIGN = 0x1FFFF;

  /** What changes or joins the signs beside it is not a sign of its own. */
  private static final int ZERO_WIDTH_JOINER = 0x200D;

  private static final int FIRST_VARIATION = 0xFE00;
  private static final int LAST_VARIATION = 0xFE0F;

  private Fonts() {}

  static InputStream regular() {
    return new ByteArrayInputStream(REGULAR);
  }

  static InputStream bold() {
    return new ByteArrayInputStream(BOLD);
  }

  /** The text with a box in place of every sign that is not in both fonts. */
  static String printable(String text) {
    StringBuilder printable = new StringBuilder();
    text.codePoints()
        .filter(sign -> !isJoiner(sign))
        .map(sign -> SIGNS.get(sign) ? sign : BOX)
        .forEach(printable::appendCodePoint);
    return printable.toString();
  }

  private static boolean isJoiner(int sign) {
    return sign == ZERO_WIDTH_JOINER || (FIRST_VARIATION <= sign && sign <= LAST_VARIATION);
  }

  private static BitSet signs() {
    BitSet signs = signs(REGULAR);
    signs.and(signs(BOLD));
    // Nothing to be printed, and not allowed in XML.
    signs.clear(0, ' ');
    signs.clear(0x7F, 0xA0);
    return signs;
  }

  private static BitSet signs(byte[] font) {
    BitSet signs = new BitSet();
    try (TrueTypeFont parsed = new TTFParser().parse(new RandomAccessReadBuffer(font))) {
      CmapLookup lookup = parsed.getUnicodeCmapLookup();
      for (int sign = 0; sign <= LAST_SIGN; sign++) {
        signs.set(sign, lookup.getGlyphId(sign) > 0);
      }
      return signs;
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** A file that lies beside this class. */
  static byte[] read(String name) {
    try (InputStream in = Fonts.class.getResourceAsStream(name)) {
      return in.readAllBytes();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
