package strickle.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import strickle.book.Book;
import strickle.book.Faulty;
import strickle.demo.Demo;
import strickle.demo.Size;

class BookPartsTest {

  private static final Meshes NONE = Meshes.in(Path.of("nowhere"));

  @Test
  void aBookTakenApartAndPutTogetherIsTheSameBook() {
    for (Size size : Size.values()) {
      Book book = Demo.book(size);
      assertEquals(book, BookParts.book(BookParts.of(book), NONE));
    }
  }

  @Test
  void everyThingOfABookIsOnePartAndNoTwoHaveTheSameName() {
    Book book = Demo.book(Size.MEDIUM);
    List<BookPart> parts = BookParts.of(book);
    Set<String> names = new HashSet<>();
    parts.forEach(part -> assertTrue(names.add(part.collection() + "/" + part.id()), part.id()));
    assertEquals(book.pieces().size(), count(parts, "pieces"));
    assertEquals(book.pins().size(), count(parts, "pins"));
    assertEquals(1, count(parts, "studio"));
  }

  @Test
  void partsThatMakeNoBookAreRefusedWithThePathsOfTheWholeBook() {
    List<BookPart> parts = new ArrayList<>(BookParts.of(Demo.book(Size.SMALL)));
    parts.removeIf(part -> part.collection().equals("mixes"));
    Faulty faulty = assertThrows(Faulty.class, () -> BookParts.book(parts, NONE));
    assertEquals("$.pieces[0].mix", faulty.faults().get(0).path());
  }

  private static long count(List<BookPart> parts, String collection) {
    return parts.stream().filter(part -> part.collection().equals(collection)).count();
  }
}
