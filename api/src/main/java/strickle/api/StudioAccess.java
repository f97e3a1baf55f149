package strickle.api;

import io.javalin.http.Context;
import java.util.List;
import strickle.store.StudioName;
import strickle.store.StudioStore;
import strickle.store.Studios;

/** Opens the only studio of a database that needs no password. */
final class StudioAccess implements Access {

  private final Studios studios;

  /** Access to the studios of a database. */
  StudioAccess(Studios studios) {
    this.studios = studios;
  }

  @Override
  public StudioStore studio(Context context) {
    List<StudioName> all = studios.all();
    if (all.isEmpty()) {
      throw new Refusal(
          Problem.of(
              Status.CONFLICT,
              "No studio yet",
              "There is no studio yet: make one at /api/studios, empty or with the demo's data."));
    }
    return studios.withId(all.get(0).id()).orElseThrow();
  }
}
