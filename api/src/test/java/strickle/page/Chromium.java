package strickle.page;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The system's own Chromium: where it is, and how it is started so that it asks nobody outside. */
final class Chromium {

  /** What names it when it is not on the PATH. */
  private static final String VARIABLE = "STRICKLE_CHROMIUM";

  private static final List<String> NAMES =
      List.of("chromium", "chromium-browser", "google-chrome-stable", "google-chrome");
  private static final List<String> ELSEWHERE =
      List.of(
          "/Applications/Chromium.app/Contents/MacOS/Chromium",
          "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome");

  /**
   * What would only take time: the address bar's lists, a page of its own for every window; and
   * what Playwright leaves out, as only the last list of these counts.
   */
  private static final List<String> WITHOUT =
      List.of(
          "WebUIOmniboxAimPopup",
          "WebUIOmniboxFullPopup",
          "WebUIOmniboxPopup",
          "AvoidUnnecessaryBeforeUnloadCheckSync",
          "BoundaryEventDispatchTracksNodeRemoval",
          "DestroyProfileOnBrowserClose",
          "DialMediaRouteProvider",
          "GlobalMediaControls",
          "HttpsUpgrades",
          "LensOverlay",
          "MediaRouter",
          "OptimizationHints",
          "PaintHolding",
          "ThirdPartyStoragePartitioning",
          "Translate");

  /** Root cannot be put into a sandbox; the rest keeps it from asking for news of its own. */
  static final List<String> OPTIONS =
      List.of(
          "--no-sandbox",
          "--disable-gpu",
          "--disable-quic",
          "--no-first-run",
          "--disable-background-networking",
          "--disable-component-update",
          "--disable-sync",
          "--disable-features=" + String.join(",", WITHOUT));

  private Chromium() {}

  /**
   * The program.
   *
   * @throws IllegalStateException with what would help, when there is none
   */
  static Path program() {
    return Optional.ofNullable(System.getenv(VARIABLE))
        .map(Path::of)
        .or(Chromium::onThePath)
        .orElseThrow(
            () ->
                new IllegalStateException(
                    "No Chromium is on the PATH ("
                        + String.join(", ", NAMES)
                        + "), and "
                        + VARIABLE
                        + " names none. On Debian: apt-get install chromium. Tests in a browser"
                        + " are left out by -Dtest.excludedGroups=long,browser"));
  }

  private static Optional<Path> onThePath() {
    Stream<Path> folders =
        Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator, -1))
            .filter(folder -> !folder.isEmpty())
            .map(Path::of);
    return Stream.concat(
            folders.flatMap(folder -> NAMES.stream().map(folder::resolve)),
            ELSEWHERE.stream().map(Path::of))
        .filter(Files::isExecutable)
        .findFirst();
  }
}
