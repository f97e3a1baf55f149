package strickle.page;

import java.nio.file.Path;
import java.time.Clock;
import strickle.api.Listening;
import strickle.api.Service;
import strickle.store.Database;

/** A service that runs, here or in a process of its own. */
interface Serving {

  /** Its port on this machine. */
  int port();

  /** Ends it, as it is ended here: with order, or without a word. */
  void end();

  /** One in this process, which is ended with order; port 0 is any. */
  static Serving here(Path folder, Clock clock, int port) {
    Service service = Service.start(Database.inFolder(folder), Listening.here(port), clock, "test");
    return new Serving() {

      @Override
      public int port() {
        return service.port();
      }

      @Override
      public void end() {
        service.close();
      }
    };
  }
}
