package strickle.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Where changes wait that have not reached the service: by studio, without room, and shown. */
@FunctionTest
class WaitingTest {

  @Test
  void whatWaitsIsKeptByStudioAndOneWithTheSameKeyTakesTheOthersPlace() {
    assertEquals(
        List.of(List.of("a1", "a2 anew"), List.of("b1"), List.of("a2 anew")),
        Functions.list(
            """
            async ({load}) => {
              const {outbox} = await load('app/outbox.js');
              outbox.keep({key: 'a1', studio: 'a', id: 'a1'});
              outbox.keep({key: 'b1', studio: 'b', id: 'b1'});
              outbox.keep({key: 'a2', studio: 'a', id: 'a2'});
              outbox.keep({key: 'a2', studio: 'a', id: 'a2 anew'});
              const told = ['a', 'b'].map(studio => outbox.of(studio).map(({id}) => id));
              outbox.forget('a1');
              const left = outbox.of('a').map(({id}) => id);
              ['a2', 'b1'].forEach(key => outbox.forget(key));
              return [...told, left];
            }
            """,
            null));
  }

  @Test
  void whatFindsNoRoomOnTheMachineWaitsAsLongAsThePageDoes() {
    assertEquals(
        List.of(List.of("1", "2"), List.of("2"), List.of()),
        Functions.list(
            """
            async ({load}) => {
              const {outbox} = await load('app/outbox.js');
              const {setItem} = Storage.prototype;
              const keys = () => outbox.of('full').map(({key}) => key);
              outbox.keep({key: '1', studio: 'full'});
              Storage.prototype.setItem = () => { throw new DOMException('', 'QuotaExceededError'); };
              try {
                outbox.keep({key: '2', studio: 'full'});
                const both = keys();
                outbox.forget('1');
                return [both, keys(), (outbox.forget('2'), keys())];
              } finally {
                Storage.prototype.setItem = setItem;
              }
            }
            """,
            null));
  }

  @Test
  void whatWaitsShowsAsIfItWereThere() {
    assertEquals(
        List.of("1 new name", "3 third", "Studio two", "p1", "p2"),
        Functions.list(
            """
            async ({load}) => {
              const {withWaiting} = await load('app/outbox.js');
              const there = {
                book: {studio: {name: 'one'}, forms: [{id: '1', name: 'first'}, {id: '2', name: 'second'}]},
                progress: [{id: 'p1'}],
              };
              const {book, progress} = withWaiting(there, [
                {collection: 'forms', id: '1', mine: {id: '1', name: 'new name'}},
                {collection: 'forms', id: '2', mine: null},
                {collection: 'forms', id: '3', mine: {id: '3', name: 'third'}},
                {collection: 'studio', id: '', mine: {name: 'two'}},
                {collection: 'progress', id: '', mine: {id: 'p2'}},
                {collection: 'nothing-of-the-book', id: '9', mine: {}},
              ]);
              return [...book.forms.map(({id, name}) => `${id} ${name}`), `Studio ${book.studio.name}`,
                ...progress.map(({id}) => id)];
            }
            """,
            null));
  }
}
