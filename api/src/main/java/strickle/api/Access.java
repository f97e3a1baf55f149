package strickle.api;

import io.javalin.http.Context;
import java.util.Optional;
import strickle.store.StudioStore;

/** Decides which studio a request is about, and whether who asks may. */
interface Access {

  /**
   * Lets a request in, or not, before anything of it is read that costs something.
   *
   * @return the studio it is about; nothing when there is none yet
   * @throws Refusal when no studio is open to who asks
   */
  Optional<StudioStore> admitted(Context context);

  /**
   * The studio of a request.
   *
   * @throws Refusal when there is none yet, or it is not open to who asks
   */
  StudioStore studio(Context context);
}
