package strickle.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What has happened, while it waits for the service: it has no id yet. */
@FunctionTest
class WaitingNotesTest {

  @Test
  void whatHappenedAndWaitsShowsOnceHoweverOftenItIsLookedAt() {
    List<?> shown =
        Functions.list(
            """
            async ({load}) => {
              const {withWaiting} = await load('app/outbox.js');
              const begun = {kind: 'poured', lot: 'L1', start: '2027-03-01T09:00'};
              const done = {...begun, end: '2027-03-01T09:30'};
              const note = (base, mine) => ({collection: 'progress', id: '', base, mine});
              const there = {book: null, progress: [{id: '1', kind: 'away'}]};
              const once = withWaiting(there, [note(null, begun)]);
              const twice = withWaiting(once, [note(null, begun), note(begun, done)]);
              return twice.progress.map(({kind, end}) => `${kind} ${end ?? ''}`);
            }
            """,
            List.of());
    assertEquals(List.of("away ", "poured 2027-03-01T09:30"), shown);
  }
}
