package strickle.api;

import java.util.List;
import strickle.book.Fault;

/**
 * A refusal as it is told to a program (RFC 9457).
 *
 * @param type names the kind of refusal, {@code about:blank} when the title says it all
 * @param title the kind of refusal in a few words
 * @param status the HTTP status
 * @param detail what is wrong, in sentences for a person
 * @param faults every single fault, with its place in what was sent
 * @param changed what others have changed meanwhile, when that is why
 */
public record Problem(
    String type,
    String title,
    int status,
    String detail,
    List<Fault> faults,
    List<ChangedMeanwhile> changed) {

  /** Its media type. */
  public static final String MEDIA_TYPE = "application/problem+json";

  private static final String PLAIN = "about:blank";

  /** A refusal that one sentence tells. */
  public static Problem of(int status, String title, String detail) {
    return new Problem(PLAIN, title, status, detail, List.of(), List.of());
  }

  /** A refusal of what was sent, fault by fault. */
  public static Problem of(int status, String title, List<Fault> faults) {
    String detail =
        faults.size() == 1
            ? faults.get(0).toString()
            : faults.size() + " faults, the first: " + faults.get(0);
    return new Problem(PLAIN, title, status, detail, List.copyOf(faults), List.of());
  }

  /** A refusal because others were there first. */
  public static Problem stale(String detail, List<ChangedMeanwhile> changed) {
    return new Problem(PLAIN, "Changed meanwhile", Status.STALE, detail, List.of(), changed);
  }
}
