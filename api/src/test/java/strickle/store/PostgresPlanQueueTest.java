package strickle.store;

import org.junit.jupiter.api.Tag;

@Tag("slow")
class PostgresPlanQueueTest extends PlanQueueRules {

  @Override
  Database fresh() {
    return Database.postgresql(Postgres.freshDatabase());
  }
}
