package strickle.store;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.io.TempDir;

class SqliteSnapshotTest extends SnapshotRules {

  @TempDir Path folder;

  private final List<Database> opened = new ArrayList<>();

  @Override
  Database fresh() {
    return Database.inFolder(folder);
  }

  @Override
  Database again() {
    // The folder belongs to the first; a second process would be refused, a second pool is not.
    Database second = Database.besideAnother(folder);
    opened.add(second);
    return second;
  }

  @AfterEach
  void closeAgain() {
    opened.forEach(Database::close);
  }
}
