package strickle.api;

import io.javalin.http.Context;
import java.util.Optional;
import strickle.store.Session;
import strickle.store.StudioStore;
import strickle.store.Studios;

/**
 * Opens the studio of the session that a request shows; without one, the only studio of a database
 * if it has no password and nobody but this machine can reach the service.
 */
final class StudioAccess implements Access {

  private static final String OPEN_FIRST =
      "Open a studio first, by its name and password, at /api/session.";
  private static final String MAKE_ONE_FIRST =
      "There is no studio yet: make one at /api/studios, empty or with the demo's data.";
  private static final String NO_PASSWORD =
      " One of the studios has no password yet: on the machine of the service,"
          + " strickle serve --set-password --studio NAME gives it one.";

  private final Studios studios;
  private final boolean onlyHere;

  /**
   * Access to the studios of a database.
   *
   * @param onlyHere whether the service is only for this machine
   */
  StudioAccess(Studios studios, boolean onlyHere) {
    this.studios = studios;
    this.onlyHere = onlyHere;
  }

  @Override
  public Optional<StudioStore> admitted(Context context) {
    Optional<Session> session = SessionCookie.session(context, studios);
    if (session.isPresent()) {
      return studios.withId(session.get().studio().id());
    }
    Optional<StudioStore> only = only();
    if (only.isPresent() || (onlyHere && studios.all().isEmpty())) {
      return only;
    }
    // The first studio may have been made between the two questions: then it is found now.
    return Optional.of(
        only()
            .orElseThrow(
                () ->
                    new Refusal(Problem.of(Status.NOT_KNOWN, "Not opened", OPEN_FIRST + shut()))));
  }

  private Optional<StudioStore> only() {
    return onlyHere ? studios.onlyWithoutPassword() : Optional.empty();
  }

  @Override
  public StudioStore studio(Context context) {
    return admitted(context)
        .orElseThrow(
            () -> new Refusal(Problem.of(Status.CONFLICT, "No studio yet", MAKE_ONE_FIRST)));
  }

  // Of several, one without a password is for nobody: only whoever runs the service can help.
  private String shut() {
    boolean several = studios.all().size() > 1;
    return several && !studios.withoutPassword().isEmpty() ? NO_PASSWORD : "";
  }
}
