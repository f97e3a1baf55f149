package strickle.store;

import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Remembers creations that were asked for with a key, so that asking twice creates once. */
final class Creations {

  /** How long a creation is remembered. */
  private static final int DAYS = 7;

  private final String studio;
  private final Clock clock;

  /** The creations in a studio, by its id. */
  Creations(String studio, Clock clock) {
    this.studio = studio;
    this.clock = clock;
  }

  /**
   * What was replied when this was asked for before; nothing when it was not.
   *
   * @throws KeyReused when the key stands for another request
   */
  Optional<String> replied(Handle handle, Once once) {
    CreationTable.forget(handle, studio, clock.instant().minus(DAYS, ChronoUnit.DAYS));
    Optional<CreationTable.Creation> before = CreationTable.find(handle, studio, once.key());
    if (before.isPresent() && !before.get().requestHash().equals(once.requestHash())) {
      throw new KeyReused(once.key());
    }
    return before.map(CreationTable.Creation::reply);
  }

  /** Remembers what is replied. */
  void remember(Handle handle, Once once, String reply) {
    CreationTable.add(handle, studio, once, reply, clock.instant());
  }
}
