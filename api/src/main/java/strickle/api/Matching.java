package strickle.api;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import strickle.json.contract.Parameter;

/** Keeps one person from writing over what another has changed (RFC 9110, 13.1; RFC 6585, 3). */
final class Matching {

  static final String HEADER = "If-Match";

  static final Parameter PARAMETER =
      Parameter.header(
              HEADER,
              "The ETag that the thing had when it was read; without it the answer is 428, and 412"
                  + " when it has another one by now.",
              "\"r12\"")
          .needed();

  private Matching() {}

  /**
   * Refuses what would write over a change.
   *
   * @param call the request
   * @param tag the tag that the thing has now
   * @param changed what has been changed, for the refusal
   */
  static void check(Call call, String tag, Supplier<List<ChangedMeanwhile>> changed) {
    Optional<String> given = call.list(HEADER);
    if (given.isEmpty()) {
      throw new Refusal(
          Problem.of(
              Status.MATCH_NEEDED,
              "If-Match needed",
              "Give in If-Match the ETag that was read, so that nobody's change is lost."));
    }
    if (!Etag.isIn(given.get(), tag)) {
      throw refusal(given.get(), tag, changed);
    }
  }

  private static Refusal refusal(
      String given, String tag, Supplier<List<ChangedMeanwhile>> changed) {
    if (!Etag.isAny(given)) {
      return Refusal.malformed(HEADER, Call.shown(given), "the ETag that was read, in its quotes");
    }
    String now = "its ETag is " + tag + " now.";
    return new Refusal(
        Etag.known(given, tag).isPresent()
            ? Problem.of(Status.STALE, "Weak tag", "If-Match takes no weak tag (W/); " + now)
            : Problem.stale("It was changed by somebody else meanwhile; " + now, changed.get()));
  }

  /** The reply to a reading: without a body when the reader has it already. */
  static Reply reading(Call call, String tag, Supplier<Reply> reply) {
    return call.list("If-None-Match")
        .flatMap(header -> Etag.known(header, tag))
        .map(known -> Reply.empty(Status.UNCHANGED).with("ETag", known))
        .orElseGet(() -> reply.get().with("ETag", tag));
  }
}
