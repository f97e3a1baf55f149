package strickle.plan.audit;

import static strickle.plan.SamplePlan.at;
import static strickle.plan.SamplePlan.spell;
import static strickle.plan.audit.Reading.BOOK;
import static strickle.plan.audit.Reading.assertBreaks;
import static strickle.plan.audit.Reading.sample;

import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import strickle.book.Altered;
import strickle.plan.Spell;
import strickle.plan.Wait;

class TimesRuleTest {

  private static final ZoneOffset WINTER = ZoneOffset.ofHours(-6);

  @Test
  void theStartOfThePlanCarriesTheOffsetOfTheStudio() {
    OffsetDateTime utc = at("04-05T00:00").withOffsetSameInstant(ZoneOffset.UTC);
    assertBreaks(0, "from", BOOK, sample().with("from", utc));
  }

  @Test
  void aSpellCarriesTheOffsetOfTheStudioThatDay() {
    Spell winter =
        new Spell(at("04-05T09:00").withOffsetSameInstant(WINTER), spell("04-05T09:00", 31).end());
    assertBreaks(0, "task L1/pour", BOOK, sample().spells("L1/pour", winter));
  }

  @Test
  void aWaitCarriesTheOffsetOfTheStudio() {
    PlanDraft draft = sample();
    Wait first = draft.plan().waits().get(0);
    Wait winter = Altered.of(first, "to", first.to().withOffsetSameInstant(WINTER));
    List<Wait> waits = PlanDraft.plus(draft.plan().waits().subList(1, 16), winter);
    assertBreaks(0, "a wait of run L1-1", BOOK, draft.with("waits", waits));
  }

  @Test
  void whatIsReadyCarriesTheOffsetOfTheStudio() {
    OffsetDateTime winter = at("04-13T13:34").withOffsetSameInstant(WINTER);
    assertBreaks(0, "ready of run L1-1", BOOK, sample().ready("L1-1", winter));
    OffsetDateTime last = at("04-20T13:18").withOffsetSameInstant(WINTER);
    assertBreaks(0, "order O-104", BOOK, sample().order("ready", last));
    assertBreaks(0, "totals", BOOK, sample().total("lastReady", last));
  }

  @Test
  void aMinuteIsTheFinestTime() {
    assertBreaks(
        0, "ready of run L1-1", BOOK, sample().ready("L1-1", at("04-13T13:34").plusSeconds(1)));
    assertBreaks(0, "totals", BOOK, sample().total("lastReady", at("04-20T13:18").plusNanos(1)));
    Spell late = new Spell(at("04-05T09:00").plusSeconds(59), at("04-05T09:31").plusSeconds(59));
    PlanDraft draft = sample().spells("L1/pour", late);
    assertBreaks(0, BOOK, draft);
  }
}
