package strickle.page;

import com.microsoft.playwright.options.ColorScheme;
import java.util.Locale;

/**
 * How a page is looked at.
 *
 * @param width of the window in CSS pixels: 390 is a phone in one hand, 1280 a small laptop
 * @param theme light or dark
 */
record Look(int width, ColorScheme theme) {

  static final Look WIDE = new Look(1280, ColorScheme.LIGHT);
  static final Look NARROW = new Look(390, ColorScheme.LIGHT);

  int height() {
    return width < 600 ? 844 : 900;
  }

  /** Whether it is touched rather than clicked. */
  boolean isTouched() {
    return width < 600;
  }

  @Override
  public String toString() {
    return width + "-" + theme.name().toLowerCase(Locale.ROOT);
  }
}
