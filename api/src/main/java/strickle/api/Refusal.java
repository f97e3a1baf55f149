package strickle.api;

import java.util.List;
import java.util.Map;
import strickle.book.Fault;

/** Thrown to refuse a request; nothing has been changed by it. */
public final class Refusal extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient Problem problem;
  private final transient Map<String, String> headers;

  /** A refusal with what to tell. */
  public Refusal(Problem problem) {
    this(problem, Map.of());
  }

  /** A refusal with what to tell, and a header. */
  Refusal(Problem problem, String header, String value) {
    this(problem, Map.of(header, value));
  }

  private Refusal(Problem problem, Map<String, String> headers) {
    super(problem.detail());
    this.problem = problem;
    this.headers = headers;
  }

  /** Headers that go with it. */
  Map<String, String> headers() {
    return headers;
  }

  /** What to tell. */
  public Problem problem() {
    return problem;
  }

  /** Refuses what is not there. */
  static Refusal notThere(String what) {
    return new Refusal(Problem.of(Status.NOT_THERE, "Not there", "There is no " + what + "."));
  }

  /** Refuses a value beside the body. */
  static Refusal malformed(String name, String found, String right) {
    return new Refusal(
        Problem.of(Status.MALFORMED, "Wrong value", List.of(new Fault(name, found, right))));
  }
}
