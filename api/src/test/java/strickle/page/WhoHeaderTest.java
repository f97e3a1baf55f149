package strickle.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** The page says who changes something in letters that a header can hold. */
@FunctionTest
class WhoHeaderTest {

  private static final String SENT =
      """
      async ({load}, name) => {
        const {settings} = await load('app/settings.js');
        const {ask} = await load('app/service.js');
        const real = window.fetch;
        let sent;
        window.fetch = async (path, {headers}) => {
          sent = headers['Strickle-Who'] ?? 'nothing';
          return new Response('{}', {headers: {'Content-Type': 'application/json'}});
        };
        try {
          settings.who = name;
          await ask('PUT', '/api/studio', {body: {}, tag: '"1"'});
        } finally {
          window.fetch = real;
          settings.who = '';
        }
        return sent;
      }
      """;

  @Test
  void aNameIsSentPercentEncoded() {
    assertEquals("Maren%20Holt", Functions.call(SENT, "Maren Holt"));
    assertEquals("Ma%C5%99enka%20%E4%BA%94", Functions.call(SENT, "Mařenka 五"));
    assertEquals("100%20%25", Functions.call(SENT, "100 %"));
    assertEquals("nothing", Functions.call(SENT, ""));
    assertEquals(
        "x".repeat(79) + "%EF%BF%BD", Functions.call(SENT, "x".repeat(79) + "🏺"), "cut in half");
  }
}
