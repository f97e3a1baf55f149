package strickle.store;

class PostgresStudioStoreTest extends StudioStoreRules {

  @Override
  OpenedTwice fresh() {
    return OpenedTwice.postgresql();
  }
}
