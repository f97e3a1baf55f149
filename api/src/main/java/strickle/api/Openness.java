package strickle.api;

import java.util.List;
import strickle.book.Faulty;
import strickle.store.StudioName;
import strickle.store.Studios;

/** Keeps a studio without a password from being served to others than this machine. */
final class Openness {

  private static final String HOW = "set a password first, with --set-password";

  private Openness() {}

  /**
   * Refuses when somebody elsewhere could come in without a password.
   *
   * @throws Faulty when there is no studio yet, or one has no password
   */
  static void refuseOpen(Studios studios, Listening listening) {
    if (listening.isOnlyForThisMachine()) {
      return;
    }
    if (studios.all().isEmpty()) {
      throw new Faulty(List.of(listening.lettingIn("but no studio yet", HOW)));
    }
    List<StudioName> open = studios.withoutPassword();
    if (!open.isEmpty()) {
      String found = "and no password for " + open.get(0).name();
      throw new Faulty(List.of(listening.lettingIn(found, HOW)));
    }
  }
}
