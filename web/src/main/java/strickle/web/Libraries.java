package strickle.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;

/**
 * The libraries of the page, out of their WebJars: only the files named here, whatever else the
 * jars hold, under names without a version.
 */
final class Libraries {

  /** Where they stand within the page. */
  static final String FOLDER = "lib/";

  private static final Map<String, List<String>> FILES =
      Map.of(
          "lit",
          List.of("index.js"),
          "lit-html",
          List.of(
              "async-directive.js",
              "directive-helpers.js",
              "directive.js",
              "is-server.js",
              "lit-html.js",
              "static.js",
              "directives/cache.js",
              "directives/choose.js",
              "directives/class-map.js",
              "directives/guard.js",
              "directives/if-defined.js",
              "directives/join.js",
              "directives/keyed.js",
              "directives/live.js",
              "directives/map.js",
              "directives/private-async-helpers.js",
              "directives/range.js",
              "directives/ref.js",
              "directives/repeat.js",
              "directives/style-map.js",
              "directives/until.js",
              "directives/when.js"),
          "lit-element",
          List.of("lit-element.js"),
          "lit__reactive-element",
          List.of("reactive-element.js", "css-tag.js", "reactive-controller.js"),
          "uplot",
          List.of("dist/uPlot.esm.js", "dist/uPlot.min.css"));

  private Libraries() {}

  /**
   * Their files by name.
   *
   * @throws UncheckedIOException if one cannot be read
   */
  static Map<String, byte[]> read() {
    Map<String, byte[]> found = new TreeMap<>();
    FILES.forEach(
        (library, names) -> {
          String root = "/META-INF/resources/webjars/" + library + "/" + version(library) + "/";
          names.forEach(name -> found.put(FOLDER + library + "/" + name, bytes(root + name)));
        });
    return found;
  }

  // The version is pinned in the build; here it is read from what the build took.
  private static String version(String library) {
    Properties properties = new Properties();
    try (InputStream in = open("/META-INF/maven/org.webjars.npm/" + library + "/pom.properties")) {
      properties.load(in);
    } catch (IOException broken) {
      throw new UncheckedIOException(library + " cannot be read", broken);
    }
    return properties.getProperty("version");
  }

  private static byte[] bytes(String resource) {
    try (InputStream in = open(resource)) {
      return in.readAllBytes();
    } catch (IOException broken) {
      throw new UncheckedIOException(resource + " cannot be read", broken);
    }
  }

  private static InputStream open(String resource) {
    InputStream in = Libraries.class.getResourceAsStream(resource);
    if (in == null) {
      throw new IllegalStateException(
          "The page's library " + resource + " is not on the class path");
    }
    return in;
  }
}
