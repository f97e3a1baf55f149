package strickle.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import strickle.book.Book;
import strickle.book.SampleBook;

class BenchCautionsTest {

  @Test
  void aBatchIsMixedAndItsPowdersAreWeighed() {
    Book book = SampleBook.example();
    List<Shown> shown = BenchCautions.ofBatch(book.mix("slate"), book::material, 2500);
    assertEquals(
        List.of(
            new Shown(Caution.WET_CEMENT, List.of("mix and pour it")),
            new Shown(Caution.DRY_DUST, List.of("weigh white blend", "weigh iron oxide black"))),
        shown);
  }

  @Test
  void liftingIsToldFromEightTenthsOfTheLimitOn() {
    double near = Cautions.NEAR * Lift.fromTheFloor().limitKg() * 1000;
    assertEquals(List.of(), BenchCautions.ofLoads(List.of(new Load("it", near * 0.999))));
    assertEquals(
        Caution.LIFTING,
        BenchCautions.ofLoads(List.of(new Load("it", near * 1.001))).get(0).caution());
  }

  @Test
  void aCoatIsHandledWithGlovesAndInFreshAir() {
    assertEquals(
        List.of(Caution.COATS, Caution.VENTILATION),
        BenchCautions.ofCoats().stream().map(Shown::caution).toList());
  }
}
