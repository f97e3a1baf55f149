package strickle.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.Set;
import org.junit.jupiter.api.Test;
import strickle.book.Altered;
import strickle.book.Book;
import strickle.book.BookWith;
import strickle.book.Material;
import strickle.book.SampleBook;

/** The sample plan pours 1937.3 g of blend on 5, 6, 9 and 10 April 2027. */
class EarlyUseTest {

  private static final OffsetDateTime ORDERED = OffsetDateTime.parse("2027-04-05T07:30-05:00");
  private static final ZoneId ZONE = ZoneId.of("America/Chicago");

  private static Book book(int blendGrams, int leadDays) {
    Book book = SampleBook.example();
    Material[] materials =
        book.materials().stream()
            .map(
                one ->
                    one.id().equals("white-blend")
                        ? Altered.of(
                            Altered.of(one, "onHand", BigDecimal.valueOf(blendGrams)),
                            "leadDays",
                            leadDays)
                        : one)
            .toArray(Material[]::new);
    return BookWith.materials(book, materials);
  }

  private static Set<String> early(int blendGrams, int leadDays) {
    return EarlyUse.of(book(blendGrams, leadDays), SamplePlan.example(), ORDERED);
  }

  @Test
  void aStockThatLastsUntilTheRestIsThereIsNotMissed() {
    // 3874.6 g are gone when the third pour begins; ordered on the 5th, three days later it is
    // there.
    assertEquals(Set.of(), early(3875, 3));
    assertEquals(Set.of("white-blend"), early(3870, 3));
    assertEquals(Set.of("white-blend"), early(3875, 5));
    assertEquals(Set.of(), early(8000, 300));
  }

  @Test
  void whatComesTheSameDayIsThereWhenItIsOrdered() {
    assertEquals(Set.of(), early(0, 0));
    OffsetDateTime later = OffsetDateTime.parse("2027-04-05T09:01-05:00");
    assertEquals(Set.of("white-blend"), EarlyUse.of(book(0, 0), SamplePlan.example(), later));
  }

  @Test
  void aPackIsThereWhenTheDayBeginsThatLiesItsLeadDaysLater() {
    Material material = book(0, 3).material("white-blend");
    OffsetDateTime there = Arrival.of(material, ORDERED, ZONE);

    assertEquals(OffsetDateTime.parse("2027-04-08T00:00-05:00"), there);
    // Two hours past midnight UTC it is still the day before in Chicago.
    OffsetDateTime elsewhere = OffsetDateTime.parse("2027-04-05T02:00Z");
    assertEquals(
        OffsetDateTime.parse("2027-04-07T00:00-05:00"), Arrival.of(material, elsewhere, ZONE));
  }
}
