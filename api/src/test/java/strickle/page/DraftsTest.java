package strickle.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/**
 * What was typed and not saved is kept by studio and form, and nothing that is broken stops a form.
 */
@FunctionTest
class DraftsTest {

  @Test
  void aDraftIsKeptUnderItsNameInItsStudioUntilItIsForgotten() {
    assertEquals(
        Arrays.asList("half a word", null, null, null, "half a word"),
        Functions.list(
            """
            async ({load}) => {
              const {drafts} = await load('parts/drafts.js');
              const {studio} = await load('app/studio.js');
              const read = name => drafts.read(name)?.name ?? null;
              studio.studio = {id: 'one'};
              drafts.keep('forms/a', {name: 'half a word'});
              drafts.keep('forms/c', {name: 'gone'});
              drafts.forget('forms/c');
              const there = [read('forms/a'), read('forms/b'), read('forms/c')];
              studio.studio = {id: 'two'};
              const elsewhere = read('forms/a');
              studio.studio = {id: 'one'};
              const again = read('forms/a');
              drafts.forget('forms/a');
              studio.studio = null;
              return [...there, elsewhere, again];
            }
            """,
            null));
  }

  @Test
  void aDraftThatCannotBeReadIsNone() {
    assertEquals(
        Arrays.asList(null, null),
        Functions.list(
            """
            async ({load}) => {
              const {drafts} = await load('parts/drafts.js');
              localStorage.setItem('strickle.draft./broken', '{"name": "ha');
              const {getItem} = Storage.prototype;
              const broken = drafts.read('broken');
              Storage.prototype.getItem = () => { throw new DOMException('', 'SecurityError'); };
              try {
                return [broken, drafts.read('closed')];
              } finally {
                Storage.prototype.getItem = getItem;
                localStorage.removeItem('strickle.draft./broken');
              }
            }
            """,
            null));
  }

  @Test
  void whatFindsNoRoomStopsNoForm() {
    assertEquals(
        null,
        Functions.call(
            """
            async ({load}) => {
              const {drafts} = await load('parts/drafts.js');
              const {setItem} = Storage.prototype;
              Storage.prototype.setItem = () => { throw new DOMException('', 'QuotaExceededError'); };
              try {
                drafts.keep('full', {name: 'x'});
                return drafts.read('full');
              } finally {
                Storage.prototype.setItem = setItem;
              }
            }
            """,
            null));
  }

  @Test
  void changesOfOneThingInDifferentFieldsArePutTogetherAndInTheSameFieldTold() {
    assertEquals(
        "{\"merged\":{\"a\":2,\"b\":3,\"list\":[1,2]},\"clashes\":[]}"
            + "{\"merged\":{\"a\":9,\"b\":1},\"clashes\":[\"a\"]}"
            + "{\"merged\":{\"a\":5,\"b\":1},\"clashes\":[]}"
            + "{\"merged\":{\"b\":1},\"clashes\":[]}",
        Functions.call(
            """
            async ({load}) => {
              const {merge} = await load('app/same.js');
              return [
                merge({a: 1, b: 1}, {a: 2, b: 1}, {a: 1, b: 3, list: [1, 2]}),
                merge({a: 1, b: 1}, {a: 2, b: 1}, {a: 9, b: 1}),
                merge({a: 1, b: 1}, {a: 5, b: 1}, {a: 5, b: 1}),
                merge({a: 1, b: 1}, {a: 1, b: 1}, {b: 1}),
              ].map(each => JSON.stringify(each)).join('');
            }
            """,
            null));
  }

  @Test
  void thingsAreTheSameWhateverTheOrderOfTheirFields() {
    assertEquals(
        Arrays.asList(true, false, false, false, true),
        Functions.list(
            """
            async ({load}) => {
              const {same} = await load('app/same.js');
              return [
                same({a: 1, b: {c: [1, 2]}}, {b: {c: [1, 2]}, a: 1}), same({a: [1, 2]}, {a: [2, 1]}),
                same([], {}), same({a: null}, {a: 0}), same({a: undefined}, {}),
              ];
            }
            """,
            null));
  }
}
