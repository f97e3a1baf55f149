package strickle.api;

import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Decides by the names in a request whether it may have been made by the page or a program of the
 * person at this machine. The Host header decides first: a hostile page that has rebound its own
 * name to this machine looks like the same origin to everything else.
 */
final class HostGuard {

  private static final Set<String> OWN_SITES = Set.of("same-origin", "none");

  private static final int HTTP = 80;
  private static final int HTTPS = 443;

  private final Set<String> hosts = new HashSet<>();
  private final Set<String> origins = new HashSet<>();

  /**
   * A guard for one port.
   *
   * @param port the port the service listens on
   * @param names further host names it may be called by, without a port
   * @param behindTls whether it is called by these names over https, on the usual port of that too
   */
  HostGuard(int port, Set<String> names, boolean behindTls) {
    Set.of("localhost", "127.0.0.1", "[::1]").forEach(name -> allow("http", name, port, HTTP));
    for (String name : names) {
      String host = name.toLowerCase(Locale.ROOT);
      if (behindTls) {
        allow("https", host, port, HTTPS);
        allow("https", host, HTTPS, HTTPS);
      } else {
        allow("http", host, port, HTTP);
      }
    }
  }

  private void allow(String scheme, String name, int port, int usualPort) {
    allow(scheme, name + ":" + port);
    if (port == usualPort) {
      allow(scheme, name);
    }
  }

  private void allow(String scheme, String host) {
    hosts.add(host);
    origins.add(scheme + "://" + host);
  }

  /**
   * Why a request is refused; nothing when it may pass.
   *
   * @param host the Host header
   * @param origin the Origin header
   * @param site the Sec-Fetch-Site header
   * @param mode the Sec-Fetch-Mode header
   * @param reading whether the method only reads
   */
  Optional<String> refusal(
      Optional<String> host,
      Optional<String> origin,
      Optional<String> site,
      Optional<String> mode,
      boolean reading) {
    if (host.isEmpty() || !hosts.contains(host.get().toLowerCase(Locale.ROOT))) {
      return Optional.of("This service answers to its own names only.");
    }
    if (origin.isPresent() && !isOwn(origin.get())) {
      return Optional.of("Another page may not ask this service.");
    }
    if (site.isPresent() && !OWN_SITES.contains(site.get()) && !isFollowedLink(mode, reading)) {
      return Optional.of("Another page may not ask this service.");
    }
    return Optional.empty();
  }

  // A link on another page may lead here: it shows the page and changes nothing.
  private static boolean isFollowedLink(Optional<String> mode, boolean reading) {
    return reading && mode.filter("navigate"::equals).isPresent();
  }

  // "null" is the origin of a sandboxed page.
  private boolean isOwn(String origin) {
    return origins.contains(origin.toLowerCase(Locale.ROOT));
  }
}
