package strickle.price;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import strickle.book.Book;
import strickle.book.BookWith;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.Mould;
import strickle.book.SampleBook;
import strickle.book.ShapePart;
import strickle.book.Solid;

class WeighableTest {

  private static final PriceRequest TOO_MUCH = request("99");

  private static PriceRequest request(String marginPercent) {
    return new PriceRequest(new BigDecimal(marginPercent), BigDecimal.ZERO);
  }

  private static Mould hollow(String id) {
    Mould m = SampleBook.planterDeep();
    Solid box = new Solid.Box(100, 100, 100);
    return new Mould(
        id,
        m.name(),
        m.forms(),
        m.cavities(),
        OptionalDouble.empty(),
        List.of(new ShapePart(box, false), new ShapePart(box, true)),
        Optional.empty(),
        m.wastePercent(),
        m.prepMinutes(),
        m.pourMinutes(),
        m.demouldMinutes(),
        m.setHours(),
        m.setAtMostHours(),
        m.core(),
        m.consumes());
  }

  @Test
  void aMouldThatLeavesNoVolumeIsToldTogetherWithTheMargin() {
    Book book = BookWith.moulds(SampleBook.example(), hollow("planter-deep"));

    Faulty faulty = assertThrows(Faulty.class, () -> Pricing.standard(book, TOO_MUCH));

    assertEquals(
        List.of(".marginPercent", "$.moulds[0].shape"),
        faulty.faults().stream().map(Fault::path).toList());
  }

  @Test
  void aMouldThatNoPieceUsesKeepsNothingFromBeingPriced() {
    Book book = BookWith.moulds(SampleBook.example(), SampleBook.planterDeep(), hollow("spare"));

    assertEquals(
        Pricing.standard(SampleBook.example(), request("30")),
        Pricing.standard(book, request("30")));
  }
}
