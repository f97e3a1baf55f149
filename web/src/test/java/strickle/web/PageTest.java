package strickle.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The colours can be read. Source: W3C, Web Content Accessibility Guidelines (WCAG) 2.2, success
 * criteria 1.4.3 (words 4.5:1) and 1.4.11 (edges 3:1) and the definitions of contrast ratio and
 * relative luminance.
 */
class PageTest {

  private static final String LIGHT = "";
  private static final String DARK = "(prefers-color-scheme: dark)";
  private static final String PAPER = "print";

  private static final List<String> WORDS =
      List.of("slate", "slate-2", "terracotta", "moss", "ochre", "oxide");

  private static final List<String> SURFACES =
      List.of(
          "lime", "lime-2", "closed", "terracotta-wash", "moss-wash", "ochre-wash", "oxide-wash");

  private final String css = Page.tokens();

  @ParameterizedTest
  @ValueSource(strings = {LIGHT, DARK, PAPER})
  void everyWordReadsOnEverySurface(String theme) {
    Palette palette = Palette.of(css, theme);
    List<String> faint =
        WORDS.stream()
            .flatMap(word -> SURFACES.stream().flatMap(on -> below(4.5, palette, word, on)))
            .toList();
    assertEquals(List.of(), faint);
  }

  @ParameterizedTest
  @ValueSource(strings = {LIGHT, DARK, PAPER})
  void theActionAndTheRailReadToo(String theme) {
    Palette palette = Palette.of(css, theme);
    List<String> faint =
        Stream.concat(
                below(4.5, palette, "on-terracotta", "terracotta"),
                below(4.5, palette, "on-shell", "shell"))
            .toList();
    assertEquals(List.of(), faint);
  }

  @ParameterizedTest
  @ValueSource(strings = {LIGHT, DARK, PAPER})
  void whatCanBePressedHasAnEdgeThatShows(String theme) {
    Palette palette = Palette.of(css, theme);
    List<String> faint =
        SURFACES.stream().limit(3).flatMap(surface -> below(3, palette, "edge", surface)).toList();
    assertEquals(List.of(), faint);
  }

  @Test
  void anyColourOfAMixTakesOneOfTheTwoLabels() {
    Palette palette = Palette.of(css, LIGHT);
    double light = Palette.luminance(palette.value("label-light")) + 0.05;
    double dark = Palette.luminance(palette.value("label-dark")) + 0.05;
    // The worst bar lies between the two, where both read alike: the root of their whole contrast.
    assertTrue(Math.sqrt(light / dark) >= 4.5, "worst " + Math.sqrt(light / dark));
  }

  @Test
  void paperIsBlackOnWhite() {
    Palette paper = Palette.of(css, PAPER);
    assertEquals(Set.of("#000000"), values(paper, WORDS));
    assertEquals(Set.of("#ffffff"), values(paper, SURFACES));
  }

  @Test
  void everyColourHasItsDarkAndItsPaper() {
    Set<String> coloured = new TreeSet<>();
    Palette.own(css, LIGHT).forEach((name, value) -> addIfColour(coloured, name, value));
    coloured.removeIf(name -> name.startsWith("label-"));
    assertEquals(coloured, Palette.own(css, DARK).keySet());
    assertEquals(coloured, Palette.own(css, PAPER).keySet());
  }

  @Test
  void contrastOfBlackAndWhiteIsTwentyOne() {
    Palette plain = new Palette(Map.of("black", "#000000", "white", "#ffffff"));
    assertEquals(21, plain.contrast("black", "white"), 1e-9);
    assertEquals(1, plain.contrast("white", "white"), 1e-9);
  }

  private static Stream<String> below(double least, Palette palette, String word, String surface) {
    double contrast = palette.contrast(word, surface);
    return contrast >= least
        ? Stream.empty()
        : Stream.of("--" + word + " on --" + surface + " only " + contrast);
  }

  private static Set<String> values(Palette palette, List<String> tokens) {
    return new TreeSet<>(tokens.stream().map(palette::value).toList());
  }

  private static void addIfColour(Set<String> names, String name, String value) {
    if (value.startsWith("#")) {
      names.add(name);
    }
  }
}
