package strickle.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The larger part of another view is drawn a frame after what says that it was asked for. */
@FunctionTest
class BehindTest {

  /** A component that draws a view and what is in it, and notes both. */
  private static final String HOST =
      """
      const {Behind} = await load('parts/behind.js');
      const seen = [];
      const host = {
        view: 'list',
        studio: 1,
        addController() {},
        requestUpdate() {
          const {view, studio} = this;
          seen.push(`${view} shows ${behind.drawn(view, () => `${view} ${studio}`)}`);
        },
      };
      const behind = new Behind(host);
      const soon = () => new Promise(done => requestAnimationFrame(() => setTimeout(() => setTimeout(done))));
      """;

  private static List<?> seen(String body) {
    return Functions.list("async ({load}) => {" + HOST + body + "return seen; }", null);
  }

  @Test
  void anotherViewComesAFrameLaterAndWhatStoodThereStaysUntilThen() {
    assertEquals(
        List.of("list shows list 1", "board shows list 1", "board shows board 1"),
        seen("host.requestUpdate(); host.view = 'board'; host.requestUpdate(); await soon();"));
  }

  @Test
  void theSameViewNeverWaits() {
    assertEquals(
        List.of("list shows list 1", "list shows list 2"),
        seen("host.requestUpdate(); host.studio = 2; host.requestUpdate(); await soon();"));
  }

  @Test
  void whoChangesTheirMindWithinTheFrameSeesTheLastViewAskedFor() {
    assertEquals(
        List.of(
            "list shows list 1", "board shows list 1", "card shows list 1", "card shows card 1"),
        seen(
            """
            host.requestUpdate();
            for (const view of ['board', 'card']) {
              host.view = view;
              host.requestUpdate();
            }
            await soon();
            await soon();
            """));
  }

  @Test
  void onPaperNothingIsAwaited() {
    assertEquals(
        List.of("list shows list 1", "board shows list 1", "board shows board 1"),
        seen(
            """
            behind.hostConnected();
            host.requestUpdate();
            host.view = 'board';
            host.requestUpdate();
            dispatchEvent(new Event('beforeprint'));
            behind.hostDisconnected();
            """));
  }

  @Test
  void whatComesAgainAfterItWasTakenAwayIsDrawnWhole() {
    assertEquals(
        List.of("list shows list 1", "board shows board 1"),
        seen(
            """
            host.requestUpdate();
            behind.hostDisconnected();
            host.view = 'board';
            host.requestUpdate();
            """));
  }
}
