package strickle.store;

import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;

class SqliteStudioStoreTest extends StudioStoreRules {

  @TempDir Path folder;

  @Override
  OpenedTwice fresh() {
    return OpenedTwice.sqlite(folder);
  }
}
