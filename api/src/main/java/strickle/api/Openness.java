package strickle.api;

import java.util.List;
import strickle.book.Fault;
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
    String address = listening.address() + ", which others can reach, ";
    if (studios.all().isEmpty()) {
      throw new Faulty(List.of(new Fault("--address", address + "but no studio yet", HOW)));
    }
    List<StudioName> open = studios.withoutPassword();
    if (!open.isEmpty()) {
      String found = address + "and no password for " + open.get(0).name();
      throw new Faulty(List.of(new Fault("--address", found, HOW)));
    }
  }
}
