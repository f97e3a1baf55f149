package strickle.cli;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import strickle.api.Password;
import strickle.api.Service;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.store.Database;
import strickle.store.StudioName;
import strickle.store.StudioStore;
import strickle.store.Studios;

/** Sets the password that opens a studio. */
final class StudioPassword {

  private final Studios studios;

  StudioPassword(Database database, Clock clock) {
    this.studios = new Studios(database, clock);
  }

  /**
   * Asks for it and keeps its hash.
   *
   * @param name of the studio, which is made if there is none of it; may be left out if there is
   *     only one
   * @return the studio
   * @throws Faulty when it is not clear which studio, or the password is too short
   */
  StudioName set(Optional<String> name) {
    String wanted = name.orElseGet(this::only);
    String hash = Password.hash(asked(wanted));
    Optional<StudioStore> known = studios.named(wanted);
    if (known.isEmpty()) {
      return Service.createEmpty(studios, wanted, hash);
    }
    studios.setPasswordHash(known.get().studio().id(), Optional.of(hash));
    return known.get().studio();
  }

  private static String asked(String studio) {
    return Secret.read("Password for " + studio)
        .orElseThrow(() -> fault("password", "nothing", "a line with it on standard input"));
  }

  private String only() {
    List<StudioName> all = studios.all();
    if (all.size() != 1) {
      throw fault("--studio", "nothing, and " + all.size() + " studios", "the name of one");
    }
    return all.get(0).name();
  }

  private static Faulty fault(String path, String found, String right) {
    return new Faulty(List.of(new Fault(path, found, right)));
  }
}
