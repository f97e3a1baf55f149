package strickle.store;

class PostgresSnapshotTest extends SnapshotRules {

  @Override
  OpenedTwice fresh() {
    return OpenedTwice.postgresql();
  }
}
