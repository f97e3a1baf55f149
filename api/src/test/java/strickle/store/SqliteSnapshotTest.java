package strickle.store;

import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;

class SqliteSnapshotTest extends SnapshotRules {

  @TempDir Path folder;

  @Override
  OpenedTwice fresh() {
    return OpenedTwice.sqlite(folder);
  }
}
