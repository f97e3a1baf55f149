package strickle.store;

import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;

class SqlitePlanQueueTest extends PlanQueueRules {

  @TempDir Path folder;

  @Override
  Database fresh() {
    return Database.inFolder(folder);
  }
}
