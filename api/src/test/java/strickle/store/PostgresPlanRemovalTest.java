package strickle.store;

import org.junit.jupiter.api.Tag;

@Tag("slow")
class PostgresPlanRemovalTest extends PlanRemovalRules {

  @Override
  Database fresh() {
    return Database.postgresql(Postgres.freshDatabase());
  }
}
