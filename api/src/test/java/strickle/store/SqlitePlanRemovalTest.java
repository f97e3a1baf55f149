package strickle.store;

import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;

@Tag("slow")
class SqlitePlanRemovalTest extends PlanRemovalRules {

  @TempDir Path folder;

  @Override
  Database fresh() {
    return Database.inFolder(folder);
  }
}
