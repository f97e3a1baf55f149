package strickle.api;

import java.util.Optional;
import strickle.json.contract.Parameter;
import strickle.store.Once;

/** Lets whoever is not sure whether a creation has arrived ask for it again. */
final class Idempotency {

  private static final String KEY = "Idempotency-Key";
  private static final int LONGEST = 200;

  static final Parameter PARAMETER =
      Parameter.header(
          KEY,
          "A name of one's own for this creation, 1 to 200 characters: repeated with the same key,"
              + " it creates once and gives the same answer, for seven days.",
          "7f2c1a");

  private Idempotency() {}

  /**
   * The key of a request; nothing when it has none.
   *
   * @param path what is created, and where
   * @param body the body of the request
   * @throws Refusal when it is blank or too long
   */
  static Optional<Once> of(Call call, String path, String body) {
    return call.header(KEY).map(key -> new Once(checked(key), Etag.sha256(path + "\n" + body)));
  }

  private static String checked(String key) {
    if (key.isBlank() || key.length() > LONGEST) {
      throw Refusal.malformed(KEY, key.length() + " characters", "1 to " + LONGEST + " of them");
    }
    return key;
  }
}
