package strickle.api;

import io.javalin.http.HttpResponseException;
import java.io.UncheckedIOException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import strickle.book.Faulty;
import strickle.json.Message;
import strickle.store.KeyReused;
import strickle.store.QueueFull;
import strickle.store.StoreTrouble;

/** Makes a refusal of whatever was thrown. */
final class Problems {

  private static final Logger LOG = LoggerFactory.getLogger(Problems.class);

  private Problems() {}

  /** The refusal to answer with. */
  static Problem of(Exception thrown) {
    return switch (thrown) {
      case Refusal refusal -> refusal.problem();
      case Faulty faulty -> Problem.of(Status.FAULTY, "Not right", faulty.faults());
      case KeyReused reused -> Problem.of(Status.FAULTY, "Key used before", reused.getMessage());
      case QueueFull full -> Problem.of(Status.TOO_OFTEN, "Too many wait", full.getMessage());
      case StoreTrouble trouble -> told(trouble);
      case HttpResponseException http ->
          Problem.of(http.getStatus(), title(http.getStatus()), http.getMessage());
      case UncheckedIOException brokenOff ->
          Problem.of(Status.MALFORMED, "Broken off", "The request was broken off.");
      default -> bug(thrown);
    };
  }

  /** The reply that tells a refusal. */
  static Reply reply(Problem problem) {
    return Reply.json(problem.status(), Problem.MEDIA_TYPE, Message.write(problem));
  }

  private static Problem told(StoreTrouble trouble) {
    // What the database says of it may hold names and paths; its kind and origin do not.
    LOG.error("store trouble {}", trouble.kind(), trouble);
    if (trouble.kind() == StoreTrouble.Kind.VALUE) {
      return Problem.of(Status.FAULTY, "Not right", trouble.kind().sentence());
    }
    return Problem.of(Status.TROUBLE, "The store is in trouble", trouble.kind().sentence());
  }

  private static Problem bug(Exception thrown) {
    LOG.error("unexpected", thrown);
    return Problem.of(
        Status.BUG, "A fault of the program", "The program has a fault; nothing was changed.");
  }

  private static String title(int status) {
    return switch (status) {
      case Status.NOT_THERE -> "Not there";
      case 405 -> "Not this method";
      case Status.TOO_LARGE -> "Too large";
      default -> "Refused";
    };
  }
}
