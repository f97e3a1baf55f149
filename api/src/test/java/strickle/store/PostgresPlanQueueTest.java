package strickle.store;

class PostgresPlanQueueTest extends PlanQueueRules {

  @Override
  Database fresh() {
    return Database.postgresql(Postgres.freshDatabase());
  }
}
