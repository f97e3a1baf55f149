package strickle.api;

import io.javalin.http.Context;
import strickle.store.StudioStore;

/** Decides which studio a request is about, and whether who asks may. */
@FunctionalInterface
interface Access {

  /**
   * The studio of a request.
   *
   * @throws Refusal when there is none yet, or it is not open to who asks
   */
  StudioStore studio(Context context);
}
