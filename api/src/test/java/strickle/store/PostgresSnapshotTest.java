package strickle.store;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;

class PostgresSnapshotTest extends SnapshotRules {

  private final String url = Postgres.freshDatabase();
  private final List<Database> opened = new ArrayList<>();

  @Override
  Database fresh() {
    return Database.postgresql(url);
  }

  @Override
  Database again() {
    Database second = Database.postgresql(url);
    opened.add(second);
    return second;
  }

  @AfterEach
  void closeAgain() {
    opened.forEach(Database::close);
  }
}
