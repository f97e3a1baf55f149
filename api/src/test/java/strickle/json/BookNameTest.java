package strickle.json;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import strickle.book.Book;
import strickle.demo.Demo;
import strickle.demo.Size;
import tools.jackson.databind.node.StringNode;

class BookNameTest {

  @Test
  void theNameIsInTheBeginningOfAStudioFileHoweverItIsEscaped() {
    assertEquals("Gannet Row Studio", named("Gannet Row Studio"));
    String worst = "\u0001\"\\".repeat(60) + "Ä";
    assertEquals(worst, BookName.of("{\"book\": {\"studio\": {\"name\": " + quoted(worst) + "}}}"));
  }

  @Test
  void whereThereIsNoneItIsEmpty() {
    for (String text : List.of("", "{\"book\": {\"studio\": {\"name\": \"Gan", "[\"name\"]", "x")) {
      assertEquals("", BookName.of(text));
    }
  }

  private static String named(String name) {
    Book book = Demo.book(Size.MEDIUM);
    assertEquals(name, book.studio().name());
    String file = StudioFile.write(BookParts.of(book));
    return BookName.of(file.substring(0, BookName.LENGTH));
  }

  private static String quoted(String text) {
    return StringNode.valueOf(text).toString();
  }
}
