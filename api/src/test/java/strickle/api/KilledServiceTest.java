package strickle.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import strickle.demo.Demo;
import strickle.demo.Size;
import strickle.json.PlanFile;
import strickle.plan.audit.Audit;
import strickle.store.Database;
import strickle.store.Postgres;

/** No plan that somebody has asked for is lost, whatever becomes of the process. */
@Timeout(value = 180, unit = TimeUnit.SECONDS)
@Tag("slow")
class KilledServiceTest {

  private static final String STUDIO = "{\"name\": \"Ash Lane\", \"begin\": \"demo\"}";
  private static final String FOR_SECONDS = "{\"from\": \"2027-03-01T00:00\", \"seconds\": 5}";
  private static final String QUICK = "{\"from\": \"2027-03-01T00:00\", \"schedules\": 20}";

  @Test
  void ofTwoServicesOnOneDatabaseTheOtherFinishesWhatAKilledOneWasAt() {
    String database = Postgres.freshDatabase();
    OtherProcess killed = OtherProcess.start(database);
    try (Web its = Web.at(killed.port())) {
      its.send("POST", "/api/studios", STUDIO);
      String running = begun(its);
      String waiting = its.asked("/api/plans", QUICK);
      try (Web other = Web.on(Database.postgresql(database))) {
        killed.kill();
        bothAreMade(other, running, waiting);
        System.out.println(
            "1 of 2 services on one database killed in mid-plan: the other made its 2 plans");
      }
    } finally {
      killed.kill();
    }
  }

  @Test
  void twoServicesOnOneDatabaseShareThePlans() {
    String database = Postgres.freshDatabase();
    try (Web one = Web.on(Database.postgresql(database));
        Web other = Web.on(Database.postgresql(database))) {
      one.send("POST", "/api/studios", STUDIO);
      String first = begun(one);
      String second = one.asked("/api/plans", FOR_SECONDS);
      until(other, second, "\"state\": \"running\"");
      assertTrue(one.get(first).body().contains("\"running\""), "both at once");
      assertEquals(202, other.send("POST", first + "/stop", "").statusCode());
      assertEquals(202, one.send("POST", second + "/stop", "").statusCode());
      assertTrue(other.over(first).contains("\"stopped\""));
      assertTrue(one.over(second).contains("\"stopped\""));
    }
  }

  @Test
  void whatAKilledServiceWasAtIsMadeAtTheNextStart(@TempDir Path folder) {
    OtherProcess killed = OtherProcess.start(folder.toString());
    try (Web its = Web.at(killed.port())) {
      its.send("POST", "/api/studios", STUDIO);
      String running = begun(its);
      String waiting = its.asked("/api/plans", QUICK);
      killed.kill();
      try (Web next = Web.empty(folder)) {
        bothAreMade(next, running, waiting);
        System.out.println("1 service on a file killed in mid-plan: the next made its 2 plans");
      }
    } finally {
      killed.kill();
    }
  }

  /** Asks for a plan and waits until it is being laid out. */
  private static String begun(Web web) {
    String place = web.asked("/api/plans", FOR_SECONDS);
    until(web, place, "\"state\": \"running\"");
    return place;
  }

  private static void bothAreMade(Web web, String... places) {
    for (String place : places) {
      String end = web.over(place);
      assertTrue(end.contains("\"state\":\"done\""), end);
      String plan = web.get(place + "/result").body();
      assertEquals(List.of(), Audit.of(Demo.book(Size.MEDIUM), PlanFile.parse(plan)));
    }
  }

  private static void until(Web web, String place, String words) {
    while (!web.get(place).body().contains(words)) {
      Thread.onSpinWait();
    }
  }
}
