package strickle.api;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HostGuardTest {

  private final HostGuard guard = new HostGuard(8317, Set.of("Bench.local"), false);

  @ParameterizedTest
  @CsvSource(
      value = {
        "localhost:8317, none, none, none, true",
        "127.0.0.1:8317, none, none, none, true",
        "[::1]:8317, none, none, none, true",
        "LOCALHOST:8317, none, none, none, true",
        "bench.local:8317, none, none, none, true",
        "localhost:8317, http://localhost:8317, same-origin, cors, true",
        "localhost:8317, http://127.0.0.1:8317, none, none, true",
        "none, none, none, none, false",
        "localhost, none, none, none, false",
        "localhost:80, none, none, none, false",
        "localhost:8317.evil.example, none, none, none, false",
        "evil.example:8317, none, none, none, false",
        "evil.example:8317, http://evil.example:8317, same-origin, cors, false",
        "127.0.0.1.evil.example:8317, none, none, none, false",
        "localhost:8317@evil.example, none, none, none, false",
        "0.0.0.0:8317, none, none, none, false",
        "localhost:8317, http://evil.example, none, none, false",
        "localhost:8317, https://localhost:8317, none, none, false",
        "localhost:8317, http://localhost:8318, none, none, false",
        "localhost:8317, null, none, none, false",
        "localhost:8317, http://localhost:8317/, none, none, false",
        "localhost:8317, http://user@localhost:8317, none, none, false",
        "localhost:8317, file://, none, none, false",
        "localhost:8317, none, cross-site, cors, false",
        "localhost:8317, none, same-site, cors, false",
        "localhost:8317, none, cross-site, navigate, true",
        "localhost:8317, none, cross-site, no-cors, false",
      },
      nullValues = "none")
  void onlyItsOwnNamesAndPagesMayAsk(
      String host, String origin, String site, String mode, boolean may) {
    Optional<String> refusal =
        guard.refusal(
            Optional.ofNullable(host),
            Optional.ofNullable(origin),
            Optional.ofNullable(site),
            Optional.ofNullable(mode),
            true);
    assertEquals(may, refusal.isEmpty(), refusal.toString());
  }

  @ParameterizedTest
  @CsvSource({"navigate", "cors", "no-cors"})
  void nothingIsChangedFromAnotherSite(String mode) {
    assertEquals(
        true,
        guard
            .refusal(
                Optional.of("localhost:8317"),
                Optional.empty(),
                Optional.of("cross-site"),
                Optional.of(mode),
                false)
            .isPresent());
  }
}
