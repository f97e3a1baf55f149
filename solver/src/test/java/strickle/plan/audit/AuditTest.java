package strickle.plan.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static strickle.plan.audit.Reading.BOOK;
import static strickle.plan.audit.Reading.assertValid;
import static strickle.plan.audit.Reading.sample;

import org.junit.jupiter.api.Test;

class AuditTest {

  @Test
  void aPlanLaidOutByHandIsValid() {
    assertValid(BOOK, sample());
  }

  @Test
  void settlingTheSampleChangesNothing() {
    assertEquals(sample().plan(), sample().settled().plan());
  }
}
