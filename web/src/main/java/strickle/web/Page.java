package strickle.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The files of the page. */
public final class Page {

  private Page() {}

  /**
   * The style sheet that names every colour, size and distance, for light, dark and paper.
   *
   * @return CSS, never empty
   * @throws IllegalStateException if the sheet is missing from the jar
   * @throws UncheckedIOException if it cannot be read
   */
  public static String tokens() {
    return text("tokens.css");
  }

  private static String text(String name) {
    try (InputStream in = Page.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException(
            "The page's file " + name + " is missing beside " + Page.class.getName());
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException("The page's file " + name + " cannot be read", e);
    }
  }
}
